using System.Numerics;
using Cartwright.Ordering;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>Knows a Virtual Boy image by its last bytes, in either byte order.</summary>
internal static class VirtualBoyRecognition
{
    private const int SmallestRom = 1 << 10;
    private const int AllPoints = 3;
    private const uint RomBits = 0x07000000;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (file.Length < SmallestRom || file.Length > VirtualBoyAddresses.Window || !BitOperations.IsPow2(file.Length))
        {
            return null;
        }

        var tail = file[^VirtualBoyHeader.Length..].ToArray();
        if (Claim(tail) is { } claim)
        {
            return claim;
        }

        WordSwap.Swap16(tail);
        return Claim(tail) is { } swapped ? swapped with { Order = ImageOrder.ByteSwapped, Reason = swapped.Reason + ", once the bytes of each word are exchanged" } : null;
    }

    /// <summary>The order of a program that ends with header and handlers.</summary>
    public static ImageOrder OrderOf(ReadOnlySpan<byte> program)
    {
        if (program.Length < VirtualBoyHeader.Length || program.Length % 2 != 0)
        {
            return ImageOrder.Console;
        }

        var tail = program[^VirtualBoyHeader.Length..].ToArray();
        if (Claim(tail) is not null)
        {
            return ImageOrder.Console;
        }

        WordSwap.Swap16(tail);
        return Claim(tail) is null ? ImageOrder.Console : ImageOrder.ByteSwapped;
    }

    /// <summary>What the last bytes of an image or a program say.</summary>
    /// <param name="tail">As many as header and handlers have.</param>
    public static RecognitionClaim? Claim(ReadOnlySpan<byte> tail)
    {
        var reset = tail[^Handler.Reset.FromEnd..];
        var points = Points(tail);
        var isStub = V810Jump.StubTarget(reset) is { } target && target % 2 == 0 && (target & RomBits) == RomBits;
        return isStub ? new RecognitionClaim(Certainty.Structural, "reset code at the end that jumps into the ROM") { Score = AllPoints + points }
            : V810Jump.RelativeDistance(reset) is not null && points == AllPoints
                ? new RecognitionClaim(Certainty.Structural, "a header before the end, and a jump at reset") { Score = points }
                : null;
    }

    // Text that is all zero is no text, or a blank tail would be a header.
    private static int Points(ReadOnlySpan<byte> tail) =>
        (tail.Slice(VirtualBoyHeader.TitleLength, VirtualBoyHeader.ReservedLength).ContainsAnyExcept((byte)0) ? 0 : 1)
        + (IsText(tail.Slice(0x19, 6), 0x20, 0x7E) ? 1 : 0)
        + (IsText(tail[..VirtualBoyHeader.TitleLength], 0x20, 0xFC) ? 1 : 0);

    private static bool IsText(ReadOnlySpan<byte> bytes, byte first, byte last)
    {
        var letters = 0;
        foreach (var value in bytes)
        {
            // 7F is no letter of ASCII, and 80, A0 begin none of Shift-JIS.
            if (value != 0 && (value < first || value > last || value is 0x7F or 0x80 or 0xA0))
            {
                return false;
            }

            letters += value == 0 ? 0 : 1;
        }

        return letters > 0;
    }
}
