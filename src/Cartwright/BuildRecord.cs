using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Manifests;

namespace Cartwright;

/// <summary>Writes the record: what one build made, from what. The same build gives the same bytes.</summary>
public static class BuildRecord
{
    /// <summary>Version of the record's form; it rises when a reader of the old form could go wrong.</summary>
    public const int Form = 1;

    // How many words at each end of a chip are shown, for a glance at the programmer's display.
    private const int WordsShown = 4;

    /// <summary>Writes the record.</summary>
    /// <param name="build">The build.</param>
    /// <param name="files">Its files with their digests.</param>
    /// <returns>UTF-8 JSON with a line end at its end.</returns>
    public static byte[] Write(CartBuild build, ImmutableArray<WrittenFile> files)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            json.WriteNumber("record", Form);
            json.WriteString("cartwright", LibraryVersion.Text);
            WriteCart(json, build);
            WriteInputs(json, build);
            WriteRegions(json, build);
            SlotRecord.Write(json, build.Slots);
            WriteHeader(json, build);
            WriteChecksums(json, build);
            WriteBoard(json, build);
            WriteChips(json, build);
            WriteFiles(json, files);
            WriteFindings(json, build);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteCart(Utf8JsonWriter json, CartBuild build)
    {
        var cart = build.Manifest!.Cart;
        json.WriteStartObject("cart");
        json.WriteString("name", cart.Name.Text);
        json.WriteString("platform", build.Platform!.Facts.Id);
        json.WriteString("layout", build.Cart!.Layout.Variant);
        json.WriteString("title", cart.Title?.Text);
        json.WriteString("revision", cart.Revision?.Text);
        json.WriteEndObject();
        json.WriteStartObject("settings");
        foreach (var (key, value) in build.Settings)
        {
            json.WriteString(key, IsProgramPath(key) && Path.IsPathRooted(value) ? Path.GetFileName(value) : value);
        }

        json.WriteEndObject();
    }

    // A machine's own folders say nothing about what was shipped.
    private static bool IsProgramPath(string key) =>
        key.StartsWith("programs:", StringComparison.OrdinalIgnoreCase) && key.EndsWith(":file", StringComparison.OrdinalIgnoreCase);

    private static void WriteInputs(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("inputs");
        foreach (var input in build.Inputs.DistinctBy(static input => (input.File, input.Digest)))
        {
            json.WriteStartObject();
            json.WriteString("file", input.File);
            json.WriteString("format", input.Format ?? "manifest");
            WriteDigest(json, input.Digest);
            json.WriteStartArray("placed");
            foreach (var segment in build.Cart!.Rom.Regions.SelectMany(static region => region.Coverage).Where(segment => segment.Program == input.File))
            {
                json.WriteStartObject();
                json.WriteString("region", segment.Region);
                json.WriteString("offset", Number.Hex(segment.Offset, 6));
                json.WriteNumber("length", segment.Length);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRegions(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("regions");
        foreach (var region in build.Cart!.Rom.Regions)
        {
            json.WriteStartObject();
            json.WriteString("region", region.Name);
            json.WriteNumber("size", region.Length);
            json.WriteNumber("programs", region.Coverage.Sum(static segment => (long)segment.Length));
            json.WriteString("fill", Number.Hex(region.Fill, 2));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteHeader(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("header");
        foreach (var header in build.Cart!.Headers)
        {
            foreach (var entry in header.Entries)
            {
                json.WriteStartObject();
                json.WriteString("field", entry.Field.Name);
                json.WriteString("in", header.Table.Region ?? "container");
                json.WriteString("offset", Number.Hex(entry.Offset, 6));
                json.WriteString("bytes", Convert.ToHexString(entry.Raw.AsSpan()));
                json.WriteString("value", entry.Text);
                json.WriteString("from", Origin(entry.Origin));
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    private static void WriteChecksums(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("checksums");
        foreach (var header in build.Cart!.Headers)
        {
            foreach (var entry in header.Checksums)
            {
                json.WriteStartObject();
                json.WriteString("checksum", entry.Row.Name);
                json.WriteString("in", header.Table.Region ?? "container");
                json.WriteString("offset", Number.Hex(entry.Offset, 6));
                json.WriteString("stored", entry.Row.Format(entry.Stored));
                json.WriteString("computed", entry.Row.Format(entry.Computed));
                json.WriteString("rule", entry.Row.Rule);
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    internal static void WriteBoard(Utf8JsonWriter json, CartBuild build)
    {
        if (build.Board is not { } board)
        {
            json.WriteNull("board");
            return;
        }

        json.WriteStartObject("board");
        json.WriteString("board", board.Id);
        json.WriteString("description", board.Description);
        json.WriteNumber("busWidth", board.BusWidth);
        json.WriteString("byteOrder", BoardReader.Word(board.ByteOrder));
        json.WriteNumber("busVolts", board.BusVolts);
        json.WriteEndObject();
    }

    internal static void WriteChips(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("chips");
        foreach (var chip in build.Chips)
        {
            var site = chip.Site;
            json.WriteStartObject();
            json.WriteString("site", site.Name);
            json.WriteString("part", chip.PartName);
            if (chip.Part is { } part)
            {
                json.WriteString("partStatus", PartWords.Statuses.Print(part.Evidence.Status));
                json.WriteString("supply", part.Supply.Text);
                json.WriteString("programmingVolts", part.Programming.ProgrammingVoltage);
                json.WriteString("sectors", part.Sectors.Layout);
            }

            json.WriteNumber("capacity", chip.Capacity);
            json.WriteString("region", site.Region);
            json.WriteString("start", Number.Hex(site.Start, 6));
            if (site.Every is { } every)
            {
                json.WriteNumber("every", every);
            }

            json.WriteString("lane", BoardReader.Word(site.Lane));
            json.WriteNumber("width", site.Width);
            json.WriteNumber("contents", chip.ContentLength);
            json.WriteString("fill", BoardReader.Word(site.Fill));
            WriteWiring(json, site);
            json.WriteString("wordOrder", ManifestWords.Word(chip.WordOrder));
            WriteWords(json, "firstWords", chip, 0);
            WriteWords(json, "lastWords", chip, chip.WordCount - WordsShown);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteWiring(Utf8JsonWriter json, Site site)
    {
        if (site.DataLines is { } data)
        {
            json.WriteString("dataLines", DataLineOrders.NameOf(data) ?? data.ToString());
        }

        if (!site.AddressLines.IsEmpty)
        {
            json.WriteString("addressLines", SiteWiring.Lines('A', site.AddressLines));
        }

        foreach (var (line, tie) in site.Ties)
        {
            json.WriteString(FormattableString.Invariant($"A{line}"), BoardReader.Word(tie));
        }

        if (site.RestAt is { } at)
        {
            json.WriteString("restAt", Number.Hex(at, 6));
        }

        if (site is { Blocks: { } blocks, BlockStep: { } step })
        {
            json.WriteNumber("blocks", blocks);
            json.WriteNumber("blockStep", step);
        }
    }

    private static void WriteWords(Utf8JsonWriter json, string name, ChipImage chip, int start)
    {
        json.WriteStartArray(name);
        for (var i = Math.Max(0, start); i < Math.Min(chip.WordCount, Math.Max(0, start) + WordsShown); i++)
        {
            json.WriteStringValue(chip.WordText(i));
        }

        json.WriteEndArray();
    }

    internal static void WriteFiles(Utf8JsonWriter json, ImmutableArray<WrittenFile> files)
    {
        json.WriteStartArray("files");
        foreach (var (file, digest) in files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            json.WriteString("kind", file.Kind == OutputKind.Rom ? "rom" : "chip");
            if (file.Chip is { } chip)
            {
                json.WriteString("site", chip.Site.Name);
            }

            json.WriteString("format", ManifestWords.Word(file.Format));
            WriteDigest(json, digest);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFindings(Utf8JsonWriter json, CartBuild build)
    {
        json.WriteStartArray("findings");
        foreach (var finding in build.Findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", FindingText.Word(finding.Severity));
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal static void WriteDigest(Utf8JsonWriter json, FileDigest digest)
    {
        json.WriteNumber("size", digest.Size);
        json.WriteString("crc32", digest.Crc32Text);
        json.WriteString("sha256", digest.Sha256);
        json.WriteString("sum16", digest.Sum16Text);
    }

    private static string Origin(EntryOrigin origin) => origin switch
    {
        EntryOrigin.Manifest => "header",
        EntryOrigin.Cart => "cart",
        EntryOrigin.WorkedOut => "worked out",
        EntryOrigin.Default => "default",
        _ => "program",
    };

}
