using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Cartwright.Boards;
using Cartwright.Chips;

namespace Cartwright.Images;

/// <summary>Finds the parts that could carry a site's share of a ROM, and says what each of them takes.</summary>
/// <param name="board">The board.</param>
/// <param name="site">The site.</param>
/// <param name="socket">The pin-out the site's copper is made for; null when it is not known.</param>
public sealed class PartFitter(Board board, Site site, PinOut? socket)
{
    // Inputs of a chip that is only read, and the level each must have. Source: common practice; BYTE# follows the width.
    private static readonly (string Signal, string Level)[] Ties =
        [("WE#", "high"), ("PGM#", "high"), ("RESET#", "high"), ("RP#", "high"), ("WP#", "high"), ("WP#/ACC", "high"), ("CE2", "high"), ("VPP", "as the data sheet says for reading")];

    /// <summary>The parts, those for the board's voltage first, then by capacity.</summary>
    /// <param name="parts">The parts to choose from, in the order of the catalogue.</param>
    /// <param name="needed">Bytes the chip must hold.</param>
    public ImmutableArray<PartFit> Among(IEnumerable<Part> parts, long needed)
    {
        var wanted = parts.ToHashSet();
        return [.. PartCatalog.BuiltIn.CouldHold(needed, site.Width, board.BusVolts).Where(wanted.Contains).Select(part => new PartFit(part, Needs(part, needed)))];
    }

    private ImmutableArray<string> Needs(Part part, long needed)
    {
        var needs = ImmutableArray.CreateBuilder<string>();
        if (part.CapacityBytes > needed)
        {
            needs.Add($"a file filled `{BoardReader.Word(site.Fill)}`");
        }

        var pinOut = PinOutOf(part);
        needs.AddRange(AddressLines(part, pinOut, needed));
        if (pinOut is not null)
        {
            needs.AddRange(Inputs(pinOut));
        }

        if (!part.Supply.Covers(board.BusVolts))
        {
            needs.Add(board.BusVolts > part.Supply.MaxVolts
                ? $"a supply of {part.Supply.Text} V and {(part.ToleratesFiveVolts ? "a look whether the console takes what it drives" : "level shifting on every line")}"
                : $"a higher supply, {part.Supply.Text} V, than the board brings");
        }

        if (socket is not null)
        {
            needs.AddRange(Moved(part, pinOut, socket));
        }

        return needs.ToImmutable();
    }

    // Address lines of the chip that the site's own lines do not reach.
    private IEnumerable<string> AddressLines(Part part, PinOut? pinOut, long needed)
    {
        var reach = (long)BitOperations.RoundUpToPowerOf2((ulong)(site.Largest ?? needed));
        var unit = site.Width / 8;
        var (first, last) = (BitOperations.Log2((ulong)(reach / unit)), BitOperations.Log2((ulong)(part.CapacityBytes / unit)) - 1);
        if (first > last)
        {
            yield break;
        }

        var level = site.Fill switch
        {
            ChipFill.Erased => "tied low",
            ChipFill.Top => "tied high",
            _ => "tied low or high",
        };
        var lines = first == last ? Line(part, pinOut, first) : $"{Line(part, pinOut, first)} to {Line(part, pinOut, last)}";
        yield return $"{lines} {level}{(site.Largest is null ? ", unless the board drives them" : "")}";
    }

    // Without a pin-out: in byte mode the chip's lines count words from A0 on, below which lies A-1.
    private string Line(Part part, PinOut? pinOut, int bit) =>
        pinOut?.PinOfAddress(bit, site.Width) is { } pin
            ? pinOut.SignalAt(pin)
            : string.Create(CultureInfo.InvariantCulture, $"A{(part.DataBus == PartDataBus.Selectable && site.Width == 8 ? bit - 1 : bit)}");

    private IEnumerable<string> Inputs(PinOut pinOut)
    {
        foreach (var (signal, level) in Ties)
        {
            if (pinOut.Signals.Contains(signal))
            {
                yield return $"{signal} {level}";
            }
        }

        if (pinOut.PinOf("BYTE#") is not null)
        {
            yield return $"BYTE# {(site.Width == 16 ? "high" : "low")}";
        }
    }

    private PinOut? PinOutOf(Part part)
    {
        var pinOuts = PinOutCatalog.BuiltIn.Of(part);
        return (socket is null ? null : pinOuts.FirstOrDefault(pinOut => pinOut.Package == socket.Package)) ?? pinOuts.FirstOrDefault();
    }

    private static IEnumerable<string> Moved(Part part, PinOut? pinOut, PinOut socket)
    {
        if (pinOut?.Package != socket.Package)
        {
            yield return pinOut is null
                ? $"a look at its data sheet: its pin-out is not known here, and the site is made for {socket.Package}"
                : $"an adapter: it comes in {string.Join(", ", PinOutCatalog.BuiltIn.Of(part).Select(static own => own.Package))}, and the site is made for {socket.Package}";
            yield break;
        }

        var moved = Enumerable.Range(1, socket.PinCount)
            .Where(pin => !IsIdle(pinOut.SignalAt(pin)) && pinOut.SignalAt(pin) != socket.SignalAt(pin))
            .Select(pin => string.Create(CultureInfo.InvariantCulture, $"pin {pin} {socket.SignalAt(pin)} is its {pinOut.SignalAt(pin)}"))
            .ToList();
        if (moved.Count > 0)
        {
            yield return $"an adapter, or lifted pins: {string.Join(", ", moved)}{(pinOut.Caution is { } caution ? $" ({caution})" : "")}";
        }
    }

    private static bool IsIdle(string signal) => signal is "NC" or "DU";
}
