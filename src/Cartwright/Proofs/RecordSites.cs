using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Headers;
using Cartwright.Ordering;

namespace Cartwright.Proofs;

/// <summary>Reads board and sites out of a record.</summary>
internal static class RecordSites
{
    /// <summary>The board, its sites as the record describes them; null where the record has none.</summary>
    /// <exception cref="FormatException">The record is damaged.</exception>
    public static Board? Board(JsonElement record, ImmutableArray<Site> sites)
    {
        if (!record.TryGetProperty("board", out var board) || board.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var id = Text(board, "board") ?? throw new FormatException("the board has no name");
        var width = Number(board, "busWidth");
        return new Board(id, null, width is 8 or 16 or 32 ? width : throw new FormatException($"its bus has {width.ToString(CultureInfo.InvariantCulture)} data lines"), Word<ByteOrder>(board, "byteOrder", BoardReader.Word), 5, sites);
    }

    /// <summary>The site of one chip.</summary>
    /// <param name="chip">What the record says of it.</param>
    /// <param name="busWidth">Data lines of the board's bus.</param>
    /// <exception cref="FormatException">The record is damaged.</exception>
    public static Site Site(JsonElement chip, int busWidth)
    {
        var name = Text(chip, "site") ?? throw new FormatException("a chip has no site");
        var width = Number(chip, "width");
        if (width is not (8 or 16))
        {
            throw new FormatException($"{name} has {width.ToString(CultureInfo.InvariantCulture)} data lines");
        }

        var lane = Word<Lane>(chip, "lane", BoardReader.Word);
        var lanes = busWidth / 8;
        var length = (long)Number(chip, "contents") * (lane == Lane.Word ? 1 : lanes);
        var every = Positive(chip, "every");
        return new Site(name, Text(chip, "region") ?? "", width, lane, Offset(chip, "start") ?? 0, every is null ? length : null, Word<ChipFill>(chip, "fill", BoardReader.Word))
        {
            Every = every,
            LaneCount = lanes,
            DataLines = DataLines(Text(chip, "dataLines"), width),
            AddressLines = Lines(Text(chip, "addressLines")),
            Ties = Ties(chip),
            RestAt = Offset(chip, "restAt"),
            Blocks = Positive(chip, "blocks"),
            BlockStep = Positive(chip, "blockStep"),
        };
    }

    public static string? Text(JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    public static int Number(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) && number >= 0
            ? number : throw new FormatException($"`{name}` is missing, or no number");

    private static int? Positive(JsonElement element, string name) =>
        !element.TryGetProperty(name, out _) ? null : Number(element, name) is > 0 and var number ? number : throw new FormatException($"`{name}` is 0");

    private static long? Offset(JsonElement element, string name) =>
        Text(element, name) is not { } text ? null : Manifests.Number.TryParse(text, out long value) && value >= 0 ? value : throw new FormatException($"`{name}` is no number");

    private static T Word<T>(JsonElement element, string name, Func<T, string> word)
        where T : struct, Enum
    {
        var text = Text(element, name);
        foreach (var value in Enum.GetValues<T>())
        {
            if (word(value) == text)
            {
                return value;
            }
        }

        throw new FormatException($"`{text}` is no `{name}`");
    }

    private static LineOrder? DataLines(string? text, int width)
    {
        if (text is null)
        {
            return null;
        }

        if (DataLineOrders.Find(text, width) is { } named)
        {
            return named.IsStraight ? null : named;
        }

        var lines = Lines(text);
        return LineOrder.IsOrder(lines.AsSpan()) && lines.Length == width ? new LineOrder(lines.AsSpan()) : throw new FormatException($"`{text}` is no order of data lines");
    }

    private static ImmutableArray<int> Lines(string? text)
    {
        if (text is null)
        {
            return [];
        }

        var lines = text.Split(", ").Select(Line).ToImmutableArray();
        return lines.Distinct().Count() == lines.Length ? lines : throw new FormatException($"`{text}` names a line twice");
    }

    private static int Line(string name) =>
        name.Length > 1 && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var line) && line < LineOrder.MostLines
            ? line : throw new FormatException($"`{name}` is no line");

    // What a line of the chip meets is told under the line's own name.
    private static ImmutableSortedDictionary<int, LineTie> Ties(JsonElement chip)
    {
        var ties = ImmutableSortedDictionary.CreateBuilder<int, LineTie>();
        foreach (var member in chip.EnumerateObject().Where(static member => member.Name is ['A', >= '0' and <= '9', ..]))
        {
            ties[Line(member.Name)] = Word<LineTie>(chip, member.Name, BoardReader.Word);
        }

        return ties.ToImmutable();
    }
}
