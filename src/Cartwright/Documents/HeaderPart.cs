using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>The headers on a platform's page: every table of every layout, rows that are alike said once.</summary>
internal static class HeaderPart
{
    /// <summary>Writes the headers.</summary>
    /// <param name="page">Receives them.</param>
    /// <param name="platform">The platform.</param>
    public static void Write(MarkdownPage page, Platform platform)
    {
        var tables = platform.Layouts.SelectMany(static layout => layout.Headers.Select(table => new Variant<HeaderTable>(layout.Variant, table)));
        foreach (var alike in tables.GroupBy(static table => (table.Value.Title, table.Value.Region)))
        {
            WriteTable(page, platform, [.. alike]);
        }
    }

    private static void WriteTable(MarkdownPage page, Platform platform, ImmutableArray<Variant<HeaderTable>> tables)
    {
        var first = tables[0].Value;
        var fixedStart = first.Region is null ? 0 : Start(tables);
        page.Heading(2, "Header: " + first.Title);
        page.Paragraph(Place(tables) + OnlyWith(tables, platform.Layouts.Length) + (fixedStart is null ? " Offsets count from the header's first byte." : ""));
        var fields = Rows(tables, static table => table.Fields, static field => field.Name)
            .OrderBy(static row => row[0].Value.Offset).ToList();
        page.AlignedTable(["field", "offset", "bytes", "when not stated"], fields.Select(row => ImmutableArray.Create(
            row[0].Value.Name,
            VariantText.Join(row, field => Offset(field.Offset, fixedStart)),
            VariantText.Join(row, Bytes),
            VariantText.Join(row, field => LeftOut(field, first.Region is null)))));
        foreach (var row in fields)
        {
            WriteField(page, row, tables.Length);
        }

        foreach (var row in Rows(tables, static table => table.Checksums, static checksum => checksum.Name))
        {
            WriteChecksum(page, row, fixedStart, tables.Length);
        }
    }

    // One row a name; a name with several rows in one table has as many here.
    private static IEnumerable<ImmutableArray<Variant<T>>> Rows<T>(
        ImmutableArray<Variant<HeaderTable>> tables, Func<HeaderTable, ImmutableArray<T>> rows, Func<T, string> name) =>
        tables
            .SelectMany(table => rows(table.Value)
                .GroupBy(name, StringComparer.Ordinal)
                .SelectMany(same => same.Select((row, number) => (same.Key, number, Row: new Variant<T>(table.Layout, row)))))
            .GroupBy(static item => (item.Key, item.number), static item => item.Row)
            .Select(static same => same.ToImmutableArray());

    private static void WriteField(MarkdownPage page, ImmutableArray<Variant<HeaderField>> row, int tables)
    {
        var first = row[0].Value;
        var condition = first.When is null ? "" : " Only in some headers, as the fields before it say.";
        page.Heading(3, first.Name);
        page.Paragraph(VariantText.Join(row, static field => field.Meaning) + condition + OnlyWith(row, tables));
        var values = VariantText.Distinct(row, static field => field.Codec.Expected + string.Join(' ', field.Codec.Names));
        page.List(values.Select(static pair => $"Value{pair.Variants}: {Value(pair.Item.Codec)}.").Concat(VariantText.Lines("Source", row, static field => field.Source + ".")));
        foreach (var (field, variants) in values)
        {
            WordList.Write(page, "Words" + variants, field.Codec.Names, numbers: field.Codec is NumberCodec);
        }
    }

    private static void WriteChecksum(MarkdownPage page, ImmutableArray<Variant<ChecksumRow>> row, int? start, int tables)
    {
        page.Heading(3, $"Checksum {row[0].Value.Name}");
        page.List(
        [
            .. VariantText.Lines("Rule", row, static checksum => checksum.Rule + "."),
            $"Stored: {VariantText.Join(row, checksum => $"{Offset(checksum.Offset, start)}, {ByteSize.Words(checksum.Length)}{Order(checksum)}")}.",
            $"Other checksums it covers: {VariantText.Join(row, static checksum => checksum.Covers.IsEmpty ? "none" : string.Join(", ", checksum.Covers.Select(Code)))}.",
            row[0].Value.Enforced ? "Enforced: the console refuses a wrong value." : "Enforced: not by the console; games and readers may check it.",
            .. VariantText.Lines("Source", row, static checksum => checksum.Source + "."),
        ]);
        if (OnlyWith(row, tables) is { Length: > 0 } only)
        {
            page.Paragraph(only.Trim());
        }
    }

    private static string Place(ImmutableArray<Variant<HeaderTable>> tables)
    {
        var first = tables[0].Value;
        var size = string.Create(CultureInfo.InvariantCulture, $"{first.Length} bytes ({Number.Hex(first.Length, 2)})");
        return first.Region is null
            ? $"A container of {size}: it stands outside the ROM, in front of it in the exchange file, and no chip holds it."
            : $"{size} of the region {Code(first.Region)}, from {VariantText.Join(tables, static table => Anchor(table.Anchor))} on.";
    }

    private static string Anchor(HeaderAnchor anchor) => anchor switch
    {
        { FromEnd: true } => $"{Number.Hex(anchor.Offset, 4)} before its end",
        { Tail: > 0 } => $"{Number.Hex(anchor.Offset, 4)} (in a shorter region {Number.Hex(anchor.Tail, 4)} before its end)",
        _ => Number.Hex(anchor.Offset, 4),
    };

    private static string OnlyWith<T>(ImmutableArray<Variant<T>> items, int all) =>
        items.Length == all ? "" : $" Only with {string.Join(", ", items.Select(static item => item.Layout))}.";

    private static int? Start(ImmutableArray<Variant<HeaderTable>> tables) =>
        tables.Select(static table => table.Value.Anchor).Distinct().ToList() is [{ FromEnd: false } anchor] ? anchor.Offset : null;

    private static string Offset(int offset, int? start) => start is { } first ? Number.Hex(first + offset, 4) : "+" + Number.Hex(offset, 2);

    private static string Order(ChecksumRow checksum) => checksum.Length == 1 ? "" : checksum.Order == ByteOrder.BigEndian ? ", high byte first" : ", low byte first";
}
