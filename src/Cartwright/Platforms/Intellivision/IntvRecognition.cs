using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Ordering;

namespace Cartwright.Platforms.Intellivision;

/// <summary>Knows an Intellivision ROM by its container, or by the block at its start.</summary>
internal static class IntvRecognition
{
    private const int PointerWords = IntvHeader.Pointers / IntvHeader.WordLength;
    private const int StartWord = 4;
    private const int TitleWord = 0xA;
    private const int FirstYear = 0x46;
    private const int LastYear = 0xC7;
    private const int LargestFile = 0x20000;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file, string words, string container) =>
        TransferContainer.IsBegun(file) ? Container(TransferContainer.IsWhole(file), file[1], container)
        : Block(file, isSwapped: false) is { } title ? Raw(title, ImageOrder.Console, words)
        : Block(file, isSwapped: true) is { } swapped ? Raw(swapped, ImageOrder.ByteSwapped, words)
        : null;

    /// <summary>Whether a program's words have their bytes exchanged.</summary>
    public static bool IsSwapped(ReadOnlySpan<byte> program) => Block(program, isSwapped: false) is null && Block(program, isSwapped: true) is not null;

    private static RecognitionClaim Container(bool isWhole, int segments, string variant) =>
        new(isWhole ? Certainty.Exact : Certainty.Candidate, string.Create(CultureInfo.InvariantCulture, $"A8 {segments:X2} {(byte)~segments:X2} at 0x0000, {(isWhole ? "and all checks of the container are right" : "but the checks of the container are not right")}"))
        {
            Variant = variant,
        };

    private static RecognitionClaim Raw(int title, ImageOrder order, string variant) =>
        new(Certainty.Structural, string.Create(CultureInfo.InvariantCulture, $"pointers at 0x0000 to a start in the ROM and to a year and a title at ${title:X4}{(order == ImageOrder.Console ? "" : ", once the bytes of each word are exchanged")}"))
        {
            Order = order,
            Variant = variant,
        };

    // The title's address; null when the file does not begin with a block that makes sense.
    private static int? Block(ReadOnlySpan<byte> file, bool isSwapped)
    {
        var words = file.Length / IntvHeader.WordLength;
        if (file.Length < IntvHeader.Length || file.Length > LargestFile || file.Length % IntvHeader.WordLength != 0)
        {
            return null;
        }

        for (var i = 0; i < PointerWords; i++)
        {
            if (Word(file, i, isSwapped) > 0xFF)
            {
                return null;
            }
        }

        var start = Pointer(file, StartWord, isSwapped);
        var title = Pointer(file, TitleWord, isSwapped);
        return start >= IntvHeader.RomStart && start < IntvHeader.RomStart + words && title >= IntvHeader.RomStart && IsTitle(file, title - IntvHeader.RomStart, isSwapped) ? title : null;
    }

    private static bool IsTitle(ReadOnlySpan<byte> file, int at, bool isSwapped)
    {
        var words = file.Length / IntvHeader.WordLength;
        if (at >= words || Word(file, at, isSwapped) is < FirstYear or > LastYear)
        {
            return false;
        }

        var letter = at + 1;
        while (letter < words && Word(file, letter, isSwapped) is >= 0x20 and <= 0x7E)
        {
            letter++;
        }

        return letter > at + 1 && letter < words && Word(file, letter, isSwapped) == 0;
    }

    private static int Pointer(ReadOnlySpan<byte> file, int word, bool isSwapped) => Word(file, word, isSwapped) | (Word(file, word + 1, isSwapped) << 8);

    private static int Word(ReadOnlySpan<byte> file, int word, bool isSwapped)
    {
        var bytes = file[(word * IntvHeader.WordLength)..];
        return isSwapped ? BinaryPrimitives.ReadUInt16LittleEndian(bytes) : BinaryPrimitives.ReadUInt16BigEndian(bytes);
    }
}
