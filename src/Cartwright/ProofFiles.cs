using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright;

/// <summary>Reads the files of a proof besides the expected one.</summary>
/// <param name="task">What is to be proved.</param>
/// <param name="expected">What the cartridge should hold.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class ProofFiles(ProofTask task, ExpectedCart expected, FindingLog log)
{
    private const int MostReads = 128;

    /// <summary>The read-backs by unit, in the order in which the units are named first.</summary>
    public ImmutableArray<(string? Unit, ImmutableArray<ReadBack> Reads)> Reads()
    {
        var units = task.Reads.GroupBy(static read => read.Unit).ToList();
        if (units.Count == 0)
        {
            log.Add(ProofFindings.NoReads, new SourcePlace(task.Expected), "There is nothing to hold against the image.");
        }

        foreach (var unit in units.Where(static unit => unit.Count() > MostReads))
        {
            log.Add(ProofFindings.TooMany, new SourcePlace(unit.First().File), string.Create(CultureInfo.InvariantCulture, $"There are {unit.Count()} read-backs of one chip."));
        }

        return log.HasErrors ? [] : [.. units.Select(unit => (unit.Key, unit.Select(Read).OfType<ReadBack>().ToImmutableArray()))];
    }

    /// <summary>What is known besides.</summary>
    public ProofSettings Settings() => new()
    {
        World = task.World,
        OldContent = task.Old is null ? null : ImageFile.Read(task.Old, log),
        Releases = Named(task.Releases),
        OtherChips = Named(task.OtherChips),
    };

    /// <summary>Images of other sites that are no part of the build.</summary>
    public ImmutableArray<NamedImage> OtherSites() => Named(task.OtherSites);

    /// <summary>Whether an image that is combined with a chip's is as long as that; a finding where it is not.</summary>
    public void CheckLengths(ProofSettings settings, ImmutableArray<ProofSubject> subjects)
    {
        var others = settings.OtherChips.Select(static image => (image.Name, image.Bytes)).ToList();
        if (settings.OldContent is { } old)
        {
            others.Add((task.Old!, old));
        }

        foreach (var (name, bytes) in others)
        {
            foreach (var subject in subjects.Where(subject => subject.Expected.Length != bytes.Length))
            {
                log.Add(ProofFindings.OtherImageLength, new SourcePlace(name), $"{name} has {ByteSize.Describe(bytes.Length)}, and the image of {subject.Site} has {ByteSize.Describe(subject.Expected.Length)}.");
            }
        }
    }

    private ReadBack? Read(ProofRead read)
    {
        var path = Path.GetFullPath(read.File);
        if (expected.Sites.Select(static site => site.File).Append(task.Expected).Any(own => own is not null && Path.GetFullPath(own) == path))
        {
            log.Add(ProofFindings.ReadIsExpected, new SourcePlace(read.File), $"{read.File} is what the build has made, and is given as its own read-back.");
            return null;
        }

        return ImageFile.Read(read.File, log) is { } bytes && (IsAsLong(bytes.Length) || ExpectedFile.IsBinary(read.File, bytes, log))
            ? new ReadBack(bytes, read.Insertion, read.Programming) : null;
    }

    // A text as long as the chip may well be what was burnt into it.
    private bool IsAsLong(int length) => length > 0 && (expected.Sites.Any(site => site.Bytes.Length == length) || expected.Regions.Any(region => region.Bytes.Length == length));

    private ImmutableArray<NamedImage> Named(ImmutableArray<string> files) =>
        [.. files.Select(file => ImageFile.Read(file, log) is { } bytes ? new NamedImage(Path.GetFileName(file), bytes) : null).OfType<NamedImage>()];
}
