using Cartwright.Ordering;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>Knows a Game Boy Advance image by its bytes.</summary>
internal static class AdvanceRecognition
{
    // The order shows in the header alone, so no more than this is brought into order just to look.
    private const int Head = 0x100;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (file.Length < AdvanceHeader.Length)
        {
            return null;
        }

        if (Exact(file) is { } reason)
        {
            return new RecognitionClaim(Certainty.Exact, reason);
        }

        return OrderOf(file) == ImageOrder.ByteSwapped
            ? new RecognitionClaim(Certainty.Exact, "header and complement check right once the bytes of each word are exchanged") { Order = ImageOrder.ByteSwapped }
            : AdvanceChecks.Target(file) is { } target && target >= AdvanceHeader.Length && target < file.Length
                ? new RecognitionClaim(Certainty.Candidate, $"an ARM branch to 0x{target:X6} at the start, and no header behind it")
                : null;
    }

    public static ImageOrder OrderOf(ReadOnlySpan<byte> program)
    {
        if (program.Length < Head || Exact(program) is not null)
        {
            return ImageOrder.Console;
        }

        Span<byte> head = stackalloc byte[Head];
        WordSwap.Swap16(program[..Head], head);
        return Exact(head) is null ? ImageOrder.Console : ImageOrder.ByteSwapped;
    }

    private static string? Exact(ReadOnlySpan<byte> rom) =>
        BootBitmap.FirstWrong(rom.Slice(BootBitmap.Offset, BootBitmap.Bytes.Length)) is null ? "the boot bitmap at 0x04 is right"
        : AdvanceChecks.Target(rom) is not null && rom[AdvanceHeader.FixedAt] == AdvanceHeader.FixedValue && AdvanceHeader.ComplementIsRight(rom)
            ? "branch, fixed byte 0x96 and complement check are right"
            : null;
}
