using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Boards;

namespace Cartwright.Cli;

/// <summary>Shows which line of the bus meets which line of a chip, both ways.</summary>
internal static class LineTable
{
    public static bool IsNeeded(Site site) => site.DataLines is not null || !site.AddressLines.IsEmpty || !site.Ties.IsEmpty || !site.Latched.IsEmpty;

    /// <summary>A row for each line that is named: from the bus to the chip, and from the chip to the bus.</summary>
    public static ImmutableArray<string[]> Rows(Site site) =>
    [
        ["bus", "chip", "", "chip", "bus"],
        .. Address(site).Concat(Data(site)).Select(static row => new[] { row.Bus, row.Chip, "", row.Back, row.From }),
        .. site.Ties.Select(static tie => new[] { "", "", "", $"A{tie.Key}", BoardReader.Word(tie.Value) is "open" ? "open" : "tied " + BoardReader.Word(tie.Value) }),
        .. site.Latched.Select(static line => new[] { "", "", "", $"A{line}", "bank latch" }),
    ];

    public static void WriteJson(Utf8JsonWriter json, Site site)
    {
        if (!IsNeeded(site))
        {
            return;
        }

        json.WriteStartObject("lines");
        foreach (var (bus, chip, _, _) in Address(site).Concat(Data(site)))
        {
            json.WriteString(bus, chip);
        }

        json.WriteEndObject();
        json.WriteStartObject("ties");
        foreach (var (line, tie) in site.Ties)
        {
            json.WriteString($"A{line}", BoardReader.Word(tie));
        }

        json.WriteEndObject();
    }

    // A lane's bytes are every second one of the bus, so its A0 is the bus's A1.
    private static IEnumerable<(string Bus, string Chip, string Back, string From)> Address(Site site)
    {
        var skip = int.Log2(site.Stride * site.Width / 8);
        return site.AddressLines.Select((chip, bus) => ($"A{bus + skip}", $"A{chip}", $"A{bus}", site.AddressLines.IndexOf(bus) is >= 0 and var from ? $"A{from + skip}" : "not driven"));
    }

    private static IEnumerable<(string Bus, string Chip, string Back, string From)> Data(Site site)
    {
        if (site.DataLines is not { } order)
        {
            return [];
        }

        var skip = site.Lane == Lane.High ? 8 : 0;
        var inverse = order.Inverse();
        return Enumerable.Range(0, order.Count).Select(line => ($"D{line + skip}", $"D{order[line]}", $"D{line}", $"D{inverse[line] + skip}"));
    }
}
