using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Chips;

/// <summary>Which signal of a family of parts is on which pin of a package.</summary>
/// <remarks>
/// Signals are written as data sheets do: <c>A0</c> and up, <c>D0</c> and up, <c>CE#</c> (<c>#</c> is active low), <c>NC</c> for a pin that is
/// connected to nothing, <c>DU</c> for one that must not be connected. A pin of two meanings has both: <c>D15/A-1</c>, <c>OE#/VPP</c>.
/// </remarks>
public sealed record PinOut
{
    /// <summary>Package and family, for example <c>DIP32-39SF040</c>; unique in a catalogue.</summary>
    public required string Name { get; init; }

    /// <summary>What it rests on.</summary>
    public required PinOutStatus Status { get; init; }

    /// <summary>Where it was seen or worked out from, or <c>from memory</c>.</summary>
    public required string Source { get; init; }

    /// <summary>The signals in the order of the pins, that of pin 1 first.</summary>
    public required ImmutableArray<string> Signals { get; init; }

    /// <summary>Remarks on single pins, by the number of the pin.</summary>
    public required ImmutableSortedDictionary<int, string> Notes { get; init; }

    /// <summary>The package: <c>DIP32</c>.</summary>
    public string Package => Name[..Name.IndexOf('-', StringComparison.Ordinal)];

    /// <summary>A sentence of caution where nothing was seen in a data sheet; null where it was.</summary>
    public string? Caution => Status switch
    {
        PinOutStatus.FromMemory => "pin-out from memory: check the data sheet",
        PinOutStatus.Derived => $"pin-out worked out ({Source}): check the data sheet",
        PinOutStatus.Library => $"pin-out from a third party ({Source}): check the data sheet",
        _ => null,
    };

    /// <summary>Number of pins.</summary>
    public int PinCount => Signals.Length;

    /// <summary>The signal on a pin.</summary>
    /// <param name="pin">Number of the pin, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The package has no such pin.</exception>
    public string SignalAt(int pin)
    {
        CheckPin(pin);
        return Signals[pin - 1];
    }

    /// <summary>The pin of a signal, for example <c>A12</c>, <c>A-1</c> or <c>OE#</c>; null when the part has no such signal.</summary>
    /// <param name="signal">A whole name, or one of the two of a shared pin. Of supply and ground, the first pin is given.</param>
    public int? PinOf(string signal)
    {
        var whole = Signals.IndexOf(signal, 0, StringComparer.OrdinalIgnoreCase);
        if (whole < 0)
        {
            whole = IndexOfShared(signal);
        }

        return whole < 0 ? null : whole + 1;
    }

    /// <summary>The pin of a data line.</summary>
    /// <param name="line">Number of the line: 0 to 7, or to 15 on a part of 16 lines.</param>
    public int? PinOfData(int line) => PinOf(string.Create(CultureInfo.InvariantCulture, $"D{line}"));

    /// <summary>The pin that carries one bit of the chip's address; null when the part has no such line.</summary>
    /// <param name="bit">Number of the bit, from 0, of an address that counts units of <paramref name="width"/>.</param>
    /// <param name="width">Data lines in use: 8 for an address in bytes, 16 for one in words.</param>
    /// <remarks>In byte mode the lowest bit is on <c>A-1</c>, or, on parts whose <c>A0</c> is the byte address, on <c>A0</c>.</remarks>
    public int? PinOfAddress(int bit, int width)
    {
        var isWide = PinOfData(15) is not null;
        var line = !isWide ? bit
            : HasByteAddress ? bit + (width == 16 ? 1 : 0)
            : bit - (width == 8 ? 1 : 0);
        return PinOf(string.Create(CultureInfo.InvariantCulture, $"A{line}"));
    }

    /// <summary>The pins beside a pin on its own side of the package, which solder could bridge; in ascending order.</summary>
    /// <param name="pin">Number of the pin, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The package has no such pin.</exception>
    public ImmutableArray<int> Neighbours(int pin)
    {
        CheckPin(pin);
        var (before, after) = (pin == 1 ? PinCount : pin - 1, pin == PinCount ? 1 : pin + 1);
        var side = PackageSides.Of(this, pin);
        return [.. new[] { before, after }.Where(other => PackageSides.Of(this, other) == side).Order()];
    }

    // 28FxxxJ3 and kin: the lowest of their numbered lines is the byte address, used in byte mode only.
    private bool HasByteAddress => PinOf("BYTE#") is not null && PinOf("A-1") is null;

    private int IndexOfShared(string signal)
    {
        for (var index = 0; index < Signals.Length; index++)
        {
            var name = Signals[index];
            var slash = name.IndexOf('/', StringComparison.Ordinal);
            if (slash > 0 && (Same(name.AsSpan(0, slash), signal) || Same(name.AsSpan(slash + 1), signal)))
            {
                return index;
            }
        }

        return -1;
    }

    private static bool Same(ReadOnlySpan<char> left, string right) => left.Equals(right, StringComparison.OrdinalIgnoreCase);

    private void CheckPin(int pin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pin, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pin, PinCount);
    }
}
