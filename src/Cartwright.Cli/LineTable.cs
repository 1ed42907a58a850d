using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Chips;

namespace Cartwright.Cli;

/// <summary>Shows which line of the bus meets which line of a chip, both ways, and on which pin.</summary>
/// <param name="site">The site.</param>
/// <param name="part">The part fitted there; null when it is not known.</param>
/// <param name="pinOuts">The pin-outs it may have; empty when none is known.</param>
internal sealed class LineTable(Site site, Part? part, ImmutableArray<PinOut> pinOuts)
{
    /// <summary>True when lines do not run straight, or their pins can be told.</summary>
    public bool IsNeeded => part is not null || site.DataLines is not null || !site.AddressLines.IsEmpty || !site.Ties.IsEmpty || !site.Latched.IsEmpty;

    /// <summary>A row for each line that is named, or that the part has: from the bus to the chip, and from the chip, with its pins, to the bus.</summary>
    public ImmutableArray<string[]> Rows
    {
        get
        {
            var driven = Address().Concat(Data()).ToList();
            var others = site.Ties.Keys.Concat(site.Latched).Select(static line => $"A{line}").Except(driven.Select(static row => row.Back));
            List<(string Bus, string Chip, string Back, string From)> lines = [.. driven, .. others.Select(line => ("", "", line, NotDriven(line)))];
            var pins = Pins([.. lines.Select(static row => row.Back)]);
            return
            [
                ["bus", "chip", "", "chip", .. pins.Select(static column => column.Title), "bus"],
                .. lines.Select((row, index) => (string[])[row.Bus, row.Chip, "", row.Back, .. pins.Select(column => column.Pins[index]), row.From]),
            ];
        }
    }

    /// <summary>What the pins rest on, where that is no data sheet.</summary>
    public IEnumerable<string> Cautions => pinOuts.Select(static pinOut => pinOut.Caution).OfType<string>().Distinct();

    public void WriteJson(Utf8JsonWriter json)
    {
        if (!IsNeeded)
        {
            return;
        }

        json.WriteStartObject("lines");
        foreach (var (bus, chip, _, _) in Address().Concat(Data()))
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
        WritePins(json);
    }

    private void WritePins(Utf8JsonWriter json)
    {
        json.WriteStartObject("pins");
        foreach (var pinOut in pinOuts)
        {
            json.WriteStartObject(pinOut.Name);
            foreach (var (_, chip, _, _) in Address().Concat(Data()))
            {
                if (PinOf(pinOut, chip) is { } pin)
                {
                    json.WriteNumber(chip, pin);
                }
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    // A lane's bytes are every second one of the bus, so its A0 is the bus's A1.
    private IEnumerable<(string Bus, string Chip, string Back, string From)> Address()
    {
        var skip = int.Log2(site.Stride * site.Width / 8);
        var driven = Driven;
        var met = driven.ToDictionary(static row => row.Chip, static row => row.Bus);
        return driven.Select(row => ($"A{row.Bus + skip}", $"A{row.Chip}", $"A{row.Bus}", met.TryGetValue(row.Bus, out var from) ? $"A{from + skip}" : NotDriven($"A{row.Bus}")));
    }

    private string NotDriven(string line)
    {
        var number = int.Parse(line.AsSpan(1), CultureInfo.InvariantCulture);
        return site.Latched.Contains(number) ? "bank latch"
            : !site.Ties.TryGetValue(number, out var tie) ? "not driven"
            : tie == LineTie.Open ? "open" : "tied " + BoardReader.Word(tie);
    }

    // Of a part all lines that the site can drive; else those the board's description names.
    private ImmutableArray<(int Bus, int Chip)> Driven
    {
        get
        {
            if (part is null || !SiteLines.Fit(site, (int)part.CapacityBytes))
            {
                return [.. site.AddressLines.Select(static (chip, bus) => (bus, chip))];
            }

            var lines = new SiteLines(site, (int)part.CapacityBytes);
            var most = site.Largest is { } largest ? int.Min(lines.Count, lines.DrivenBy((int)largest)) : lines.Count;
            return [.. Enumerable.Range(0, most).Select(bus => (bus, Chip: lines.Order[bus])).Where(row => !site.Ties.ContainsKey(row.Chip) && !site.Latched.Contains(row.Chip))];
        }
    }

    private IEnumerable<(string Bus, string Chip, string Back, string From)> Data()
    {
        if (site.DataLines is null && part is null)
        {
            return [];
        }

        var skip = site.Lane == Lane.Word ? 0 : 8 * (site.Lane - Lane.Low);
        var inverse = site.DataLines?.Inverse();
        return Enumerable.Range(0, site.Width).Select(line => ($"D{line + skip}", $"D{site.DataLines?[line] ?? line}", $"D{line}", $"D{(inverse?[line] ?? line) + skip}"));
    }

    // One column for packages that agree: most do, as their sockets are the same.
    private ImmutableArray<(string Title, ImmutableArray<string> Pins)> Pins(ImmutableArray<string> lines) =>
    [
        .. pinOuts.Select(pinOut => (pinOut.Package, Pins: lines.Select(line => PinOf(pinOut, line) is { } pin ? Words(pinOut, pin, line) : "").ToImmutableArray()))
            .GroupBy(static row => string.Join(' ', row.Pins))
            .Select(static same => ("pin of " + string.Join(", ", same.Select(static row => row.Package).Distinct()), same.First().Pins)),
    ];

    // In byte mode a wide chip's lines go by other names.
    private static string Words(PinOut pinOut, int pin, string line) =>
        string.Create(CultureInfo.InvariantCulture, $"{pin}{(pinOut.SignalAt(pin) == line ? "" : $" ({pinOut.SignalAt(pin)})")}");

    private int? PinOf(PinOut pinOut, string line)
    {
        var number = int.Parse(line.AsSpan(1), CultureInfo.InvariantCulture);
        return line[0] == 'D' ? pinOut.PinOfData(number) : pinOut.PinOfAddress(number, site.Width);
    }
}
