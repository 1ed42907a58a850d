using System.Globalization;
using System.Text;

namespace Cartwright.TestImages;

/// <summary>A bank's number as text: <c>BANK 0003/0008</c>, counted from 0, and how many there are.</summary>
public static class BankTag
{
    /// <summary>Most banks that a tag can number.</summary>
    public const int MostBanks = 1 << 16;

    /// <summary>Bytes of a tag.</summary>
    public const int Length = 16;

    /// <summary>Writes the tag.</summary>
    /// <param name="bank">The bank's number.</param>
    /// <param name="banks">Number of banks.</param>
    /// <param name="target">Where it goes.</param>
    public static void Write(int bank, int banks, Span<byte> target) =>
        _ = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"BANK {bank:X4}/{banks:X4}").PadRight(Length), target);
}
