using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>Knows a ColecoVision ROM by its bytes.</summary>
internal static class ColecoRecognition
{
    private const int RomStart = 0x8000;
    private const int LargestPlain = 0x8000;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file, string plain, string banked) =>
        file.Length <= LargestPlain ? At(file, 0, plain)
        : file.Length % ColecoHeader.BankSize == 0 ? At(file, file.Length - ColecoHeader.BankSize, banked)
        : null;

    private static RecognitionClaim? At(ReadOnlySpan<byte> file, int header, string variant)
    {
        var rom = file[header..];
        if (rom.Length <= ColecoHeader.Title || !(rom.StartsWith((ReadOnlySpan<byte>)[0xAA, 0x55]) || rom.StartsWith((ReadOnlySpan<byte>)[0x55, 0xAA])))
        {
            return null;
        }

        var start = BinaryPrimitives.ReadUInt16LittleEndian(rom[ColecoHeader.Start..]);
        // 55 AA is the mark of other things too, so the start must lead to something like code.
        return start >= RomStart + ColecoHeader.Title && start < RomStart + file.Length && IsCode(file, header, start)
            ? new RecognitionClaim(Certainty.Structural, string.Create(CultureInfo.InvariantCulture, $"{rom[0]:X2} {rom[1]:X2} at 0x{header:X6}, and the start ${start:X4} lies in the ROM")) { Variant = variant }
            : null;
    }

    private static bool IsCode(ReadOnlySpan<byte> file, int header, int start)
    {
        var offset = start - RomStart;
        // The last bank is seen below the first one.
        var at = header == 0 || offset < ColecoHeader.BankSize ? header + offset : offset - ColecoHeader.BankSize;
        return file[at] is not (0x00 or 0xFF);
    }
}
