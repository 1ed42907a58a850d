using System.Globalization;
using Cartwright.Boards;

namespace Cartwright.Proofs;

/// <summary>Translates the lines of a verdict between chip and bus, as the board joins them.</summary>
public sealed class LineNames
{
    private readonly Site? _site;
    private readonly SiteLines? _lines;
    private readonly bool _isBus;

    private LineNames(Site? site, SiteLines? lines, bool isBus) => (_site, _lines, _isBus) = (site, lines, isBus);

    /// <summary>Of a chip whose board is not known.</summary>
    public static LineNames OfLooseChip { get; } = new(null, null, isBus: false);

    /// <summary>Of a chip read by itself, whose board is known.</summary>
    /// <param name="site">Its site.</param>
    /// <param name="capacity">Bytes of the chip.</param>
    public static LineNames OfChip(Site site, int capacity) => new(site, LinesOf(site, capacity), isBus: false);

    /// <summary>Of a chip read through its board: a verdict's lines are then those of the bus, counted in words of the chip.</summary>
    /// <param name="site">Its site.</param>
    /// <param name="capacity">Bytes of the chip.</param>
    public static LineNames ThroughBoard(Site site, int capacity) => new(site, LinesOf(site, capacity), isBus: true);

    /// <summary>The names of a line of a verdict.</summary>
    /// <param name="line">The line: <c>A12</c>, <c>D3</c>.</param>
    public LineName Of(string line)
    {
        if (_site is null || !int.TryParse(line.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return new LineName(line, null);
        }

        var (chip, bus) = line[0] == 'D' ? Data(number) : Address(number);
        return new LineName(Named(line[0], chip), bus is { } met ? Named(line[0], met) : null);
    }

    private (int Chip, int? Bus) Address(int number)
    {
        var order = _lines?.Order;
        var (chip, slot) = order is null || number >= order.Count ? (number, number) : _isBus ? (order[number], number) : (number, order.Inverse()[number]);
        // A lane's bytes are every second or fourth one of the bus, so its A0 is the bus's A1 or A2.
        return _site!.Ties.ContainsKey(chip) || _site.Latched.Contains(chip) ? (chip, null) : (chip, slot + int.Log2(_site.Stride * _site.Width / 8));
    }

    private (int Chip, int? Bus) Data(int number)
    {
        var order = _site!.DataLines;
        var (chip, slot) = order is null || number >= order.Count ? (number, number) : _isBus ? (order[number], number) : (number, order.Inverse()[number]);
        return (chip, slot + (_site.Lane == Lane.Word ? 0 : 8 * (_site.Lane - Lane.Low)));
    }

    // A chip of a size that has not all lines of the site's list keeps its own names.
    private static SiteLines? LinesOf(Site site, int capacity) => SiteLines.Fit(site, capacity) ? new SiteLines(site, capacity) : null;

    private static string Named(char bus, int line) => string.Create(CultureInfo.InvariantCulture, $"{bus}{line}");
}
