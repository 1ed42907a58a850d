using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads a <c>cart.json</c>.</summary>
public static class ManifestReader
{
    /// <summary>The region's name on platforms that have only one.</summary>
    public const string OnlyRegion = "rom";

    /// <summary>Reads a manifest from its text.</summary>
    /// <param name="file">Its name as it is shown in findings.</param>
    /// <param name="text">Its bytes.</param>
    /// <param name="overrides">What is laid over it.</param>
    /// <param name="log">Receives everything that is wrong.</param>
    /// <returns>Null when a key the build cannot do without is missing or the text is unreadable.</returns>
    public static CartManifest? Read(string file, byte[] text, ManifestOverrides overrides, FindingLog log)
    {
        if (ManifestDocument.Read(file, text, overrides, log) is not { } document)
        {
            return null;
        }

        var root = document.Root;
        KeyCheck.Run(root, ManifestKeys.Rows.Select(static row => row.Pattern), log);
        var cart = ReadCart(root["cart"], log);
        var slots = SlotReader.Read(root["slots"], log);
        var programs = ReadPrograms(root["programs"], slots is not null, log);
        var regions = ReadRegions(root, log);
        var header = ReadHeader(root["header"], log);
        var board = ReadBoard(root["board"], log);
        var images = ReadImages(root["images"], log);
        return cart is null ? null : new CartManifest(file, cart, programs, regions, header, board, images)
        {
            ConflictTables = ConflictTableReader.Read(root["conflictTables"], log),
            Slots = slots,
            Run = RunReader.Read(root["run"], log),
            Place = document.Place,
        };
    }

    private const string DefaultFolder = "dist";

    private static CartIdentity? ReadCart(ManifestSection section, FindingLog log)
    {
        var name = section.Text("name", log, required: true);
        var platform = section.Text("platform", log, required: true);
        if (name is not null && FileNameRule.Problem(name.Text) is { } problem)
        {
            log.Add(ManifestFindings.UnsafeName, name.Place, $"`{name.Text}` cannot be the stem of a file name: {problem}.");
        }

        return name is null || platform is null ? null
            : new CartIdentity(name, platform, section.Text("title", log), section.Text("revision", log));
    }

    private static ImmutableArray<ProgramEntry> ReadPrograms(ManifestSection section, bool hasSlots, FindingLog log)
    {
        var programs = section.Sections.Select(item => ReadProgram(item, log)).OfType<ProgramEntry>().ToImmutableArray();
        if (section.IsAbsent && !hasSlots)
        {
            log.Add(ManifestFindings.MissingKey, section.Place, "The manifest names no programs.", "`programs`: a list of files and where their bytes go");
        }

        return programs;
    }

    private static ManifestValue? ReadFile(ManifestSection item, FindingLog log)
    {
        var file = item.Text("file", log, required: true);
        if (file?.Text.Contains('\0', StringComparison.Ordinal) != true)
        {
            return file;
        }

        log.Add(ManifestFindings.BadValue, file.Place, $"`{file.Place.Key}` holds a zero character, which no path can have.", remedy: "Write the path without it.");
        return null;
    }

    private static ProgramEntry? ReadProgram(ManifestSection item, FindingLog log)
    {
        var file = ReadFile(item, log);
        var offset = item.Text("offset", log);
        var address = item.Text("address", log);
        var unit = item.Number("addressUnit", log) ?? 1;
        var named = item.Text("as", log);
        ImmutableArray<ManifestValue> places = [.. new[] { offset, address, named }.OfType<ManifestValue>()];
        if (places.Length > 1)
        {
            log.Add(ManifestFindings.BadValue, places[1].Place, "Several keys say where this program goes.", "one of `offset`, `address` and `as`");
        }

        if (unit is not (1 or 2))
        {
            log.Add(ManifestFindings.BadValue, item["addressUnit"].Place, $"An address cannot count {unit} bytes.", "1 or 2");
            unit = 1;
        }

        return file is null ? null : new ProgramEntry(file, item.Place)
        {
            Format = item.Choice("format", ManifestWords.ProgramFormats, log),
            Region = item.Text("region", log),
            Offset = offset,
            Address = address,
            As = named,
            Order = item.Choice("order", ManifestWords.ImageOrders, log),
            Skip = item.Size("skip", log) ?? 0,
            Length = item.Size("length", log),
            AddressUnit = (int)unit,
            LoadVirtual = item.Choice("load", LoadWords, log) ?? false,
        };
    }

    private static readonly Dictionary<string, bool> LoadWords = new(StringComparer.OrdinalIgnoreCase) { ["physical"] = false, ["virtual"] = true };

    private static ImmutableSortedDictionary<string, RegionSettings> ReadRegions(ManifestSection root, FindingLog log)
    {
        var regions = ImmutableSortedDictionary.CreateBuilder<string, RegionSettings>(StringComparer.OrdinalIgnoreCase);
        if (!root[OnlyRegion].IsAbsent)
        {
            regions[OnlyRegion] = ReadRegion(OnlyRegion, root[OnlyRegion], log);
        }

        foreach (var section in root["regions"].Sections)
        {
            regions[section.Name] = ReadRegion(section.Name, section, log);
        }

        return regions.ToImmutable();
    }

    private static RegionSettings ReadRegion(string name, ManifestSection section, FindingLog log)
    {
        var fits = section.Text("size", log) is not { } size || string.Equals(size.Text, "fit", StringComparison.OrdinalIgnoreCase);
        return new RegionSettings(name, section.Place, fits ? null : section.Size("size", log), section["size"].Place, section.Byte("fill", log));
    }

    private static HeaderSettings ReadHeader(ManifestSection section, FindingLog log)
    {
        var values = HeaderSettings.None.Values.ToBuilder();
        foreach (var name in section.Names)
        {
            if (!string.Equals(name, "keep", StringComparison.OrdinalIgnoreCase) && section.Text(name, log) is { } value)
            {
                values[name] = value;
            }
        }

        return new HeaderSettings(values.ToImmutable(), ReadKeep(section["keep"], section, log));
    }

    private static HeaderKeep ReadKeep(ManifestSection keep, ManifestSection header, FindingLog log) =>
        keep.IsAbsent ? HeaderKeep.Unsaid
        : keep.Value is { Text.Length: > 0 } ? new HeaderKeep(header.Truth("keep", log), [])
        : new HeaderKeep(null, header.Texts("keep", log));

    private static BoardSettings ReadBoard(ManifestSection section, FindingLog log)
    {
        var chips = ImmutableSortedDictionary.CreateBuilder<string, ChipSettings>(StringComparer.OrdinalIgnoreCase);
        foreach (var chip in section["chips"].Sections)
        {
            chips[chip.Name] = new ChipSettings(
                chip.Name, chip.Place, chip.Text("part", log), chip.Size("capacity", log), chip.Choice("wordOrder", ManifestWords.WordOrders, log))
            {
                Width = chip.Text("width", log),
                Supply = chip.Text("supply", log),
                Sectors = chip.Text("sectors", log),
                Package = chip.Text("package", log),
                AccessNs = chip.Fraction("accessNs", log),
                OutputEnableNs = chip.Fraction("outputEnableNs", log),
            };
        }

        return new BoardSettings(section.Text("use", log), section, chips.ToImmutable());
    }

    private static ImageSettings ReadImages(ManifestSection section, FindingLog log)
    {
        var folder = section.Text("folder", log)?.Text ?? DefaultFolder;
        var place = section["folder"].Place;
        if (LeadsOutside(folder))
        {
            log.Add(ManifestFindings.PathOutside, place, $"The output folder `{folder}` is not below the manifest's folder.");
            folder = DefaultFolder;
        }

        var formats = section.Choices("formats", ManifestWords.ImageFormats, log);
        return new ImageSettings(folder, place, formats.IsEmpty ? [ImageFormat.Raw] : formats, section.Choice("wordOrder", ManifestWords.WordOrders, log) ?? WordOrder.Bus)
        {
            RomLength = section.Size("romLength", log),
            RomLengthPlace = section["romLength"].Place,
        };
    }

    // A drive letter or a leading slash of another system is outside too, whatever system this is.
    private static bool LeadsOutside(string folder) =>
        folder.Length == 0
        || Path.IsPathRooted(folder)
        || folder[0] is '/' or '\\'
        || folder.Contains(':', StringComparison.Ordinal)
        || folder.Any(char.IsControl)
        || folder.Split('/', '\\').Contains("..");
}
