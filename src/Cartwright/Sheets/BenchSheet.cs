using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Boards;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Slots;

namespace Cartwright.Sheets;

/// <summary>The page of one build for the workbench: what goes where, by what it is known, what to mind, and what to tick.</summary>
public static class BenchSheet
{
    private const string Box = "\u2610";

    // Bytes at each end of a chip file that a programmer's display can be held against.
    private const int BytesShown = 8;

    /// <summary>Writes the page.</summary>
    /// <param name="build">A build with its ROM.</param>
    /// <param name="files">Its files with their digests.</param>
    /// <returns>HTML that prints on one or two pages; the same build gives the same page.</returns>
    public static string Write(CartBuild build, ImmutableArray<WrittenFile> files)
    {
        var cart = build.Manifest!.Cart;
        var page = new HtmlPage($"{cart.Name} bench sheet");
        page.Heading(1, cart.Title?.Text ?? cart.Name.Text);
        page.Table(["cart", "platform", "revision", "board"],
            [[cart.Name.Text, $"{build.Platform!.Facts.Name}, {build.Cart!.Layout.Variant}", cart.Revision?.Text ?? "", Words(build.Board)]]);
        WriteChips(page, files);
        WriteWiring(page, build.Chips);
        WriteSlots(page, build.Slots);
        page.Heading(2, "Files");
        page.Table(["file", "bytes", "CRC-32", "SHA-256"], files.Where(static file => file.File.Kind != OutputKind.Record)
            .Select(static file => new[] { file.File.Name, file.Digest.Size.ToString(CultureInfo.InvariantCulture), file.Digest.Crc32Text, file.Digest.Sha256 }));
        WriteChecksums(page, build);
        page.Heading(2, "To mind");
        page.List(BenchCautions.Of(build));
        page.Heading(2, "To tick");
        page.Table(["done", "step", "remarks"], Steps(build).Select(static step => new[] { Box, step, "" }));
        return page.ToString();
    }

    private static string Words(Board? board) => board is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{board.Id}: {board.BusWidth} data lines, {board.BusVolts} V");

    private static void WriteChips(HtmlPage page, ImmutableArray<WrittenFile> files)
    {
        var chips = files.Where(static file => file.File.Chip is not null).ToList();
        if (chips.Count == 0)
        {
            return;
        }

        page.Heading(2, "Chips");
        page.Table(["site", "part", "file", "size", "word 0", "first bytes", "last bytes", "16-bit sum", "supply", "written with"], chips.Select(static row => Cells(row.File.Chip!, row)));
    }

    private static string[] Cells(ChipImage chip, WrittenFile file) =>
    [
        chip.Site.Name,
        chip.PartName ?? "(none named)",
        file.File.Name,
        ByteSize.Words(chip.Capacity),
        chip.WordText(0),
        Convert.ToHexString(chip.Bytes.Span[..Math.Min(BytesShown, chip.Capacity)]),
        Convert.ToHexString(chip.Bytes.Span[^Math.Min(BytesShown, chip.Capacity)..]),
        file.Digest.Sum16Text,
        chip.Part is { } part ? part.Supply.Text + " V" : "",
        chip.Part?.Programming is { NeedsHighVoltage: true } programming ? programming.ProgrammingVoltage + " V" : "",
    ];

    private static void WriteWiring(HtmlPage page, ImmutableArray<ChipImage> chips)
    {
        var clauses = chips.SelectMany(static chip => SiteWiring.Clauses(chip.Site).Select(clause => $"{chip.Site.Name}: {clause}.")).ToList();
        if (clauses.Count > 0)
        {
            page.Heading(2, "Wiring");
            page.List(clauses);
        }
    }

    private static void WriteSlots(HtmlPage page, SlotPlan? plan)
    {
        if (plan is null)
        {
            return;
        }

        page.Heading(2, "Slots");
        page.Table(["slot", "title", "region", "from", "to", "CRC-32"], plan.Slots.Select(static slot => new[]
        {
            slot.Index.ToString(CultureInfo.InvariantCulture), slot.Title, slot.Region, Number.Hex(slot.Start, 6), Number.Hex(slot.End - 1, 6), slot.Digest.Crc32Text,
        }));
        if (!plan.Positions.IsEmpty)
        {
            page.Paragraph("Switches: open is high through its pull-up, closed is low. Change them with the power off.");
            page.Table(["switches", "shows"], plan.Positions.Select(static position => new[] { string.Join(", ", position.IsHigh.Select(static (isHigh, index) => $"{index + 1} {(isHigh ? "open" : "closed")}")), position.Shown }));
        }
    }

    private static void WriteChecksums(HtmlPage page, CartBuild build)
    {
        var rows = build.Cart!.Headers.SelectMany(static header => header.Checksums).Select(static entry => new[] { entry.Row.Name, entry.Row.Format(entry.Stored), entry.Row.Rule }).ToList();
        if (rows.Count > 0)
        {
            page.Heading(2, "Checksums in the header");
            page.Table(["checksum", "value", "rule"], rows);
        }
    }

    private static IEnumerable<string> Steps(CartBuild build)
    {
        foreach (var chip in build.Chips)
        {
            yield return $"{chip.Site.Name}: marking and identity are those of the {chip.PartName ?? "chip"}; it is blank";
            yield return $"{chip.Site.Name}: written, and read back equal in the writer";
        }

        yield return "Fitted the right way round; joints looked at; supply and ground not shorted";
        yield return "Read back through the edge connector, equal";
        yield return "Starts; sound, controls and save tried";
        yield return "Label and ledger written";
    }
}
