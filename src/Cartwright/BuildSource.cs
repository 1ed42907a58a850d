using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Platforms;
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

    public BuildInput ManifestInput(CartManifest manifest) => new(Path.GetFileName(manifest.File), null, _manifest, []);

    /// <summary>Where the user named the output folder.</summary>
    public SourcePlace OutputPlace(CartManifest manifest) => request.OutputFolder is { Length: > 0 } ? new SourcePlace("--out") : manifest.Images.FolderPlace;

    /// <summary>The output folder; a finding when a link in the manifest's path leads elsewhere.</summary>
    public string OutputFolder(CartManifest manifest, FindingLog log)
    {
        if (request.OutputFolder is { Length: > 0 } stated)
        {
            return Path.GetFullPath(stated);
        }

        var step = Folder;
        foreach (var name in manifest.Images.Folder.Split('/', '\\'))
        {
            step = Path.GetFullPath(Path.Combine(step, name));
            if (new DirectoryInfo(step).LinkTarget is { } target)
            {
                log.Add(ManifestFindings.PathOutside, manifest.Images.FolderPlace, $"The output folder `{manifest.Images.Folder}` goes through a link: `{name}` leads to {target}.");
            }
        }

        return step;
    }

    public ImmutableArray<BuildInput> ReadPrograms(CartManifest manifest, Platform platform, SegmentPlacer placer, FindingLog log) =>
        [.. manifest.Programs.Select(entry => ReadProgram(entry, platform, placer, log)).OfType<BuildInput>()];

    public byte[]? ReadGame(SlotGame game, FindingLog log) => ProgramInput.Read(Path.Combine(Folder, game.File.Text), game.File.Text, game.File.Place, log);

    private BuildInput? ReadProgram(ProgramEntry entry, Platform platform, SegmentPlacer placer, FindingLog log)
    {
        var name = entry.File.Text;
        if (ProgramInput.Read(Path.Combine(Folder, name), name, entry.File.Place, log) is not { } bytes
            || Cut(entry, bytes, log) is not { } part)
        {
            return null;
        }

        var options = new ProgramReadOptions { AddressUnit = entry.AddressUnit, ElfLoad = entry.LoadVirtual ? ElfLoad.Virtual : ElfLoad.Physical };
        if (Reorder(entry, platform, part, log) is not { } ordered || ProgramReader.Read(name, ordered, entry.Format, options, log) is not { } program)
        {
            return null;
        }

        return new BuildInput(entry.ShownName, ManifestWords.Word(program.Format), bytes, placer.Place(entry, program));
    }

    // Only a raw binary is in an order at all: the other formats say where each byte goes.
    private static ReadOnlyMemory<byte>? Reorder(ProgramEntry entry, Platform platform, ReadOnlyMemory<byte> bytes, FindingLog log)
    {
        if (entry.Format is { } format && format != ProgramFormat.Raw)
        {
            return bytes;
        }

        var order = entry.Order ?? platform.OrderOf(bytes.Span);
        if (order == ImageOrder.Console)
        {
            return bytes;
        }

        if (bytes.Length % ImageOrders.Unit(order) != 0)
        {
            log.Add(RomFindings.UnevenOrder, entry.Place, $"{entry.File} has {ByteSize.Describe(bytes.Length)}, and the order `{ManifestWords.Word(order)}` exchanges blocks of {ByteSize.Describe(ImageOrders.Unit(order))}.");
            return null;
        }

        if (entry.Order is null)
        {
            log.Add(RomFindings.Reordered, entry.Place, $"{entry.File} is `{ManifestWords.Word(order)}`; its bytes were brought to the console's order.");
        }

        var console = new byte[bytes.Length];
        ImageOrders.ToConsole(order, bytes.Span, console);
        return console;
    }

    private static ReadOnlyMemory<byte>? Cut(ProgramEntry entry, byte[] bytes, FindingLog log)
    {
        var rest = bytes.Length - entry.Skip;
        var length = entry.Length ?? rest;
        var isNothing = length == 0 && bytes.Length > 0;
        if (!isNothing && rest >= 0 && length <= rest)
        {
            return bytes.AsMemory((int)entry.Skip, (int)length);
        }

        log.Add(RomFindings.SliceOutside, entry.Place, $"{entry.ShownName} has {ByteSize.Describe(bytes.Length)}, and " + (rest < 0
            ? $"`skip` leaves out the first {ByteSize.Describe(entry.Skip)}."
            : isNothing ? "nothing of it is taken."
            : $"`length` takes {ByteSize.Describe(length)} after the first {ByteSize.Describe(entry.Skip)}: {ByteSize.Words(length - rest)} too many."));
        return null;
    }
}
