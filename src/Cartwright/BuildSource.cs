using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Programs;
using Cartwright.Roms;

namespace Cartwright;

/// <summary>Fetches a build's inputs: the manifest, and the programs it names.</summary>
internal sealed class BuildSource(BuildRequest request)
{
    private byte[] _manifest = [];

    private string Folder => Path.GetDirectoryName(Path.GetFullPath(request.ManifestPath))!;

    public CartManifest? ReadManifest(FindingLog log)
    {
        var path = request.ManifestPath;
        if (!File.Exists(path))
        {
            log.Add(ManifestFindings.Missing, new SourcePlace(path), $"There is no manifest {path}.");
            return null;
        }

        if (ProgramInput.Read(path, path, new SourcePlace(path), log) is not { } text)
        {
            return null;
        }

        _manifest = text;
        return ManifestReader.Read(path, text, request.Overrides, log);
    }

    public BuildInput ManifestInput(CartManifest manifest) => new(Path.GetFileName(manifest.File), null, FileDigest.Of(_manifest), []);

    /// <summary>Where the user named the output folder.</summary>
    public SourcePlace OutputPlace(CartManifest manifest) => request.OutputFolder is { Length: > 0 } ? new SourcePlace("--out") : manifest.Images.FolderPlace;

    /// <summary>The output folder; a finding when a link in the manifest's path leads elsewhere.</summary>
    public string OutputFolder(CartManifest manifest, FindingLog log)
    {
        if (request.OutputFolder is { Length: > 0 } stated)
        {
            return Path.GetFullPath(stated);
        }

        var folder = Path.Combine(Folder, manifest.Images.Folder);
        var step = Folder;
        foreach (var name in manifest.Images.Folder.Split('/', '\\'))
        {
            step = Path.Combine(step, name);
            if (new DirectoryInfo(step).LinkTarget is { } target)
            {
                log.Add(ManifestFindings.PathOutside, manifest.Images.FolderPlace, $"The output folder `{manifest.Images.Folder}` goes through a link: `{name}` leads to {target}.");
                break;
            }
        }

        return folder;
    }

    public ImmutableArray<BuildInput> ReadPrograms(CartManifest manifest, SegmentPlacer placer, FindingLog log) =>
        [.. manifest.Programs.Select(entry => ReadProgram(entry, placer, log)).OfType<BuildInput>()];

    private BuildInput? ReadProgram(ProgramEntry entry, SegmentPlacer placer, FindingLog log)
    {
        var name = entry.File.Text;
        if (ProgramInput.Read(Path.Combine(Folder, name), name, entry.File.Place, log) is not { } bytes
            || Cut(entry, bytes, log) is not { } part)
        {
            return null;
        }

        var options = new ProgramReadOptions { AddressUnit = entry.AddressUnit, ElfLoad = entry.LoadVirtual ? ElfLoad.Virtual : ElfLoad.Physical };
        if (ProgramReader.Read(name, part, entry.Format, options, log) is not { } program)
        {
            return null;
        }

        var shown = Path.IsPathRooted(name) ? Path.GetFileName(name) : name.Replace('\\', '/');
        return new BuildInput(shown, ManifestWords.Word(program.Format), FileDigest.Of(bytes), placer.Place(entry, program));
    }

    private static ReadOnlyMemory<byte>? Cut(ProgramEntry entry, byte[] bytes, FindingLog log)
    {
        var rest = bytes.Length - entry.Skip;
        var length = entry.Length ?? rest;
        if (rest >= 0 && length <= rest)
        {
            return bytes.AsMemory((int)entry.Skip, (int)length);
        }

        log.Add(RomFindings.SliceOutside, entry.Place, $"{entry.File} has {ByteSize.Describe(bytes.Length)}, and " + (rest < 0
            ? $"`skip` leaves out the first {ByteSize.Describe(entry.Skip)}."
            : $"`length` takes {ByteSize.Describe(length)} after the first {ByteSize.Describe(entry.Skip)}: {ByteSize.Words(length - rest)} too many."));
        return null;
    }
}
