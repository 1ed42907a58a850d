using System.Buffers.Binary;

namespace Cartwright.Platforms.Atari7800;

/// <summary>What 128 bytes look like that may be a ROM's footer (Atari 7800 wiki, ROM footer).</summary>
internal static class FooterSight
{
    /// <summary>Whether the two bytes with half a byte each of fixed value have them, and the reset vector leads to where cartridges are.</summary>
    public static bool HasMarks(ReadOnlySpan<byte> footer) =>
        (footer[0x78] & 0xF0) == 0xF0 && (footer[0x79] & 0x0F) is 3 or 7 && Reset(footer) >= 0x4000;

    /// <summary>Whether the rest agrees too: a signature, and a start inside both ROM and signed area.</summary>
    public static bool Agrees(ReadOnlySpan<byte> footer, int romLength) =>
        !IsBlank(footer[..Atari7800Footer.SignatureLength])
        && Reset(footer) >= 0x10000 - romLength
        && Reset(footer) >= (footer[0x79] & 0xF0) << 8;

    /// <summary>Whether there is no signature.</summary>
    public static bool IsBlank(ReadOnlySpan<byte> signature) => !signature.ContainsAnyExcept((byte)0) || !signature.ContainsAnyExcept((byte)0xFF);

    private static int Reset(ReadOnlySpan<byte> footer) => BinaryPrimitives.ReadUInt16LittleEndian(footer[0x7C..]);
}
