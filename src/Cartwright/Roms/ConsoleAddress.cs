using System.Globalization;

namespace Cartwright.Roms;

/// <summary>An address as the console sees it.</summary>
/// <param name="Bank">The bank, where it was given apart: the 3 of <c>03:4000</c>; null when it was not.</param>
/// <param name="Address">The address: 16 bits after a bank, the whole number otherwise.</param>
public readonly record struct ConsoleAddress(long? Bank, long Address)
{
    // Beyond every console's bus, and small enough that a program's length can be added.
    private const long Largest = 0xFFFF_FFFF_FFFF;

    /// <summary>Reads <c>$C08000</c>, <c>0xC08000</c>, a decimal number, or <c>03:4000</c> (both hexadecimal, <c>$</c> allowed).</summary>
    /// <param name="text">The text.</param>
    /// <param name="address">The address.</param>
    public static bool TryParse(string text, out ConsoleAddress address)
    {
        address = default;
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            var read = Manifests.Number.TryParse(text, out long number) && number <= Largest;
            address = new ConsoleAddress(null, number);
            return read;
        }

        if (!TryHex(text.AsSpan(0, colon), out var bank) || !TryHex(text.AsSpan(colon + 1), out var within))
        {
            return false;
        }

        address = new ConsoleAddress(bank, within);
        return true;
    }

    /// <inheritdoc/>
    public override string ToString() => Bank is { } bank
        ? string.Create(CultureInfo.InvariantCulture, $"{bank:X2}:{Address:X4}")
        : string.Create(CultureInfo.InvariantCulture, $"${Address:X4}");

    private static bool TryHex(ReadOnlySpan<char> text, out long value) =>
        long.TryParse(text.Trim().TrimStart('$'), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value) && value is >= 0 and <= Largest;
}
