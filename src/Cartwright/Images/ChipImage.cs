using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Images;

/// <summary>The exact bytes for one chip, as long as the chip is large.</summary>
/// <param name="Site">The site.</param>
/// <param name="Part">The part; null when none is named or the catalogue lacks it.</param>
/// <param name="PartName">The part's name as it is shown; null when none is named.</param>
/// <param name="Bytes">The bytes in the order of the chip file.</param>
/// <param name="ContentLength">Bytes that come from the ROM, with the gaps between its parts where the site leaves any; the rest fills the chip up.</param>
/// <param name="WordOrder">Order of the two bytes of each word in the file.</param>
/// <param name="BusOrder">Which byte of a 16-bit bus carries the even address.</param>
public sealed record ChipImage(
    Site Site,
    Part? Part,
    string? PartName,
    ReadOnlyMemory<byte> Bytes,
    long ContentLength,
    WordOrder WordOrder,
    ByteOrder BusOrder)
{
    /// <summary>Capacity of the chip in bytes.</summary>
    public int Capacity => Bytes.Length;

    /// <summary>Number of words: bytes on an 8-bit chip, pairs of bytes on a 16-bit one.</summary>
    public int WordCount => Bytes.Length / BytesAWord;

    /// <summary>A word as the chip presents it: D7-D0, or D15-D0.</summary>
    /// <param name="index">The word's address on the chip.</param>
    public int Word(int index)
    {
        var bytes = Bytes.Span.Slice(index * BytesAWord, BytesAWord);
        var firstIsLow = WordOrder == WordOrder.Programmer || BusOrder == ByteOrder.LittleEndian;
        return bytes.Length == 1 ? bytes[0]
            : firstIsLow ? bytes[0] | (bytes[1] << 8)
            : (bytes[0] << 8) | bytes[1];
    }

    /// <summary>Writes a word with as many hexadecimal digits as the chip has data lines for.</summary>
    /// <param name="index">The word's address on the chip.</param>
    public string WordText(int index) => Word(index).ToString(BytesAWord == 1 ? "X2" : "X4", System.Globalization.CultureInfo.InvariantCulture);

    private int BytesAWord => Site.Width / 8;
}
