using System.Buffers.Binary;

namespace Cartwright.Platforms.Commodore;

/// <summary>Knows a function ROM of the C128 by its bytes.</summary>
internal static class C128Recognition
{
    private const int LoadAddressLength = 2;

    /// <summary>Whether three bytes are the mark, in either form.</summary>
    public static bool IsMark(ReadOnlySpan<byte> bytes) => bytes.SequenceEqual(C128Header.Mark) || bytes.SequenceEqual(C128Header.HighMark);

    /// <summary>Whether a load address of $8000 stands before the header.</summary>
    public static bool HasLoadAddress(ReadOnlySpan<byte> file) => file.StartsWith((ReadOnlySpan<byte>)[0x00, 0x80]) && HasHeader(file[LoadAddressLength..]);

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (CrtFile.Read(file, C128Platform.Signature) is { } container)
        {
            return new RecognitionClaim(Certainty.Exact, container.Words) { PrefixLength = Math.Min(container.PrefixLength, file.Length) };
        }

        var prefix = HasLoadAddress(file) ? LoadAddressLength : 0;
        return HasHeader(file[prefix..])
            ? new RecognitionClaim(Certainty.Exact, "CBM at 7 behind two jumps") { PrefixLength = prefix }
            : null;
    }

    // The jumps lead to where the ROM or the machine's own are.
    private static bool HasHeader(ReadOnlySpan<byte> image) =>
        image.Length > C128Header.Length && IsMark(image.Slice(C128Header.MarkAt, C128Header.Mark.Length)) && IsJump(image) && IsJump(image[C128Header.WarmAt..]);

    private static bool IsJump(ReadOnlySpan<byte> bytes) => bytes[0] == C128Header.Jump && BinaryPrimitives.ReadUInt16LittleEndian(bytes[1..]) >= 0x4000;
}
