using System.Buffers.Binary;
using Cartwright.Checksums;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The checksum of the header, and the values other rules would store in its place.</summary>
public static class MegaDriveChecksum
{
    /// <summary>First byte of the sum: the one behind the header.</summary>
    public const int Start = 0x200;

    internal const int StoredAt = 0x18E;
    private const int RomEndAt = 0x1A4;

    /// <summary>
    /// The sum of big-endian 16-bit words from 0x200 to the ROM end address of the header, inclusive, modulo 2^16; cut at the
    /// last byte of the ROM (ROM header reference).
    /// </summary>
    /// <param name="rom">The ROM; a word without its second byte is completed with 0xFF.</param>
    public static ulong Compute(ReadOnlySpan<byte> rom) =>
        rom.Length < Start ? 0UL : SumTo(rom, BinaryPrimitives.ReadUInt32BigEndian(rom[RomEndAt..]));

    /// <summary>The sum up to a last address, which counts with the whole word it lies in.</summary>
    internal static ushort SumTo(ReadOnlySpan<byte> rom, long last)
    {
        var end = (int)Math.Min((last | 1) + 1, rom.Length);
        if (end <= Start)
        {
            return 0;
        }

        return (ushort)(WordSum.BigEndian16(rom[Start..end]) + (end % 2 == 0 ? 0 : 0xFF));
    }

    /// <summary>The exclusive or of all words of the file, the stored checksum taken as 0: what a widely used C kit stores (seen in images).</summary>
    internal static ushort AllWordsXor(ReadOnlySpan<byte> rom) =>
        (ushort)(WordXor.BigEndian16(rom) ^ BinaryPrimitives.ReadUInt16BigEndian(rom[StoredAt..]));
}
