using System.Buffers.Binary;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari7800;

/// <summary>What 128 bytes look like that may be a ROM's footer (Atari 7800 wiki, ROM footer).</summary>
internal static class FooterSight
{
    private const int AddressLimit = 0x10000;
    private const int FooterStart = 0xFF80;

    /// <summary>Whether the two bytes with half a byte each of fixed value have them, and the reset vector leads to where cartridges are.</summary>
    public static bool HasMarks(ReadOnlySpan<byte> footer) =>
        (footer[0x78] & 0xF0) == 0xF0 && (footer[0x79] & 0x0F) is 3 or 7 && Reset(footer) >= 0x4000;

    /// <summary>Whether the rest agrees too: a signature, and vectors inside both ROM and signed area, of which reset leads to a start as programs have it.</summary>
    /// <param name="image">The image, whose last 128 bytes are the footer.</param>
    public static bool Agrees(ReadOnlySpan<byte> image)
    {
        var footer = image[^Atari7800Footer.Length..];
        var first = Math.Max(AddressLimit - image.Length, (footer[0x79] & 0xF0) << 8);
        return !Blank.Is(footer[..Atari7800Footer.SignatureLength])
            && LeadsInside(footer[0x7A..], first) && LeadsInside(footer[0x7C..], first) && LeadsInside(footer[0x7E..], first)
            && Begins(image[^(AddressLimit - Reset(footer))]);
    }

    private static bool LeadsInside(ReadOnlySpan<byte> vector, int first) => BinaryPrimitives.ReadUInt16LittleEndian(vector) is var at && at >= first && at < FooterStart;

    // SEI, CLD or JMP (from memory): chance gives the rest of the footer once in some hundred blocks.
    private static bool Begins(byte opcode) => opcode is 0x78 or 0xD8 or 0x4C;

    private static int Reset(ReadOnlySpan<byte> footer) => BinaryPrimitives.ReadUInt16LittleEndian(footer[0x7C..]);
}
