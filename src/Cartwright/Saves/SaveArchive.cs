using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>A folder of kept saves. Files come into it together with the index that names them; none is ever replaced.</summary>
/// <param name="folder">The folder.</param>
public sealed class SaveArchive(string folder)
{
    /// <summary>Keeps one save.</summary>
    /// <param name="read">What was read back.</param>
    /// <param name="log">Receives what is wrong; with an error nothing is written.</param>
    /// <returns>The generation; null when it was not kept.</returns>
    public SaveGeneration? Keep(SaveRead read, FindingLog log)
    {
        Check(read, log);
        if (log.HasErrors)
        {
            return null;
        }

        using var output = OutputFolder.Open(folder, new SourcePlace(folder), log);
        return output is not null && GenerationIndex.Read(folder, log) is { } kept ? Keep(output, kept, read, log) : null;
    }

    /// <summary>The kept saves, each looked at whether it is still what was kept.</summary>
    /// <param name="log">Receives what is wrong.</param>
    public ImmutableArray<SaveGeneration> List(FindingLog log)
    {
        if (!Directory.Exists(folder))
        {
            log.Add(KeepFindings.NoFolder, new SourcePlace(folder), $"There is no folder {folder}.");
            return [];
        }

        var kept = GenerationIndex.Read(folder, log) ?? [];
        foreach (var file in kept.SelectMany(static generation => generation.Files))
        {
            Check(file, log);
        }

        return kept;
    }

    private static void Check(SaveRead read, FindingLog log)
    {
        var place = new SourcePlace(read.File);
        if (FileNameRule.Problem(read.Unit) is { } problem)
        {
            log.Add(KeepFindings.BadUnit, new SourcePlace("--unit"), $"`{read.Unit}` cannot name a unit: {problem}.", "letters, digits, hyphens and underscores");
        }

        _ = SaveFileChecks.IsUsable(read.File, read.First, log);
        switch (read.Agreement)
        {
            case ReadAgreement.One:
                log.Add(KeepFindings.OneRead, place, "There is one read only.");
                break;
            case ReadAgreement.Different:
                log.Add(KeepFindings.ReadsDiffer, place, $"The two reads differ: {SaveComparison.Of(read.First, read.Second, SaveComparison.UsualBlock).Summary}. Both are kept.");
                break;
            default:
                break;
        }
    }

    private void Check(KeptFile file, FindingLog log)
    {
        var path = Path.Combine(folder, file.Name);
        try
        {
            if (!File.Exists(path))
            {
                log.Add(KeepFindings.Missing, new SourcePlace(path), $"The kept file {file.Name} is not there.");
            }
            else if (new FileInfo(path).Length != file.Bytes || FileDigest.Of(File.ReadAllBytes(path)).Sha256 != file.Sha256)
            {
                log.Add(KeepFindings.Changed, new SourcePlace(path), $"The file {file.Name} is not what was kept.", $"{ByteSize.Describe(file.Bytes)} with the SHA-256 {file.Sha256}");
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(KeepFindings.Missing, new SourcePlace(path), $"The kept file {file.Name} cannot be read: {fault.Message}");
        }
    }

    private SaveGeneration? Keep(OutputFolder output, ImmutableArray<SaveGeneration> kept, SaveRead read, FindingLog log)
    {
        var earlier = kept.Where(generation => string.Equals(generation.Unit, read.Unit, StringComparison.OrdinalIgnoreCase)).ToList();
        var number = earlier.Select(static generation => generation.Number).DefaultIfEmpty().Max() + 1;
        var files = Files(read, string.Create(CultureInfo.InvariantCulture, $"{read.Unit}.{number:D4}.{GenerationIndex.Text(read.Date)}"));
        var made = new SaveGeneration(read.Unit, number, read.Date, read.IsDateGiven, read.Agreement,
            [.. files.Select(Kept)]);
        foreach (var path in files.Select(file => Path.Combine(folder, file.Name)).Where(Path.Exists))
        {
            log.Add(KeepFindings.InTheWay, new SourcePlace(path), $"There is {path} already, and the index does not name it.");
        }

        if (earlier.Find(generation => generation.Files[0].Sha256 == made.Files[0].Sha256) is { } same)
        {
            log.Add(KeepFindings.SameAsEarlier, new SourcePlace(read.File), $"The save is that of generation {same.Number} of {GenerationIndex.Text(same.Date)}, byte for byte.");
        }

        return log.HasErrors || !Commit(output, [.. files, new OutputFile(GenerationIndex.FileName, OutputKind.Record, ImageFormat.Raw, [GenerationIndex.Write([.. kept, made])])], log) ? null : made;
    }

    private static ImmutableArray<OutputFile> Files(SaveRead read, string stem) =>
    [
        NewFile($"{stem}.sav", read.First),
        .. read.Agreement == ReadAgreement.Different ? new[] { NewFile($"{stem}.second.sav", read.Second) } : [],
    ];

    private static KeptFile Kept(OutputFile file)
    {
        var digest = file.Digest();
        return new KeptFile(file.Name, digest.Size, digest.Sha256);
    }

    private static OutputFile NewFile(string name, ReadOnlyMemory<byte> bytes) => new(name, OutputKind.Rom, ImageFormat.Raw, [bytes]);

    private bool Commit(OutputFolder output, ImmutableArray<OutputFile> files, FindingLog log)
    {
        try
        {
            foreach (var file in files)
            {
                output.Stage(file);
            }

            output.Commit();
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(OutputFindings.WriteFailed, new SourcePlace(folder), $"The save could not be kept in {folder}: {fault.Message}");
            return false;
        }
    }
}
