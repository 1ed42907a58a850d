using Cartwright.Checksums;

namespace Cartwright.Platforms.GameBoy;

/// <summary>The two sums of a Game Boy header (Pan Docs, The Cartridge Header).</summary>
public static class GameBoyChecksums
{
    private const int FirstCovered = 0x34;
    private const int HeaderSumAt = 0x4D;
    private const int GlobalSumAt = 0x14E;

    /// <summary>The header checksum: from 0, each byte of 0x134-0x14C and 1 more are taken away.</summary>
    /// <param name="header">The header from its first byte (0x100) to at least 0x14C.</param>
    public static byte Header(ReadOnlySpan<byte> header)
    {
        var covered = header[FirstCovered..HeaderSumAt];
        return unchecked((byte)-(int)(ByteSum.Sum32(covered) + (uint)covered.Length));
    }

    /// <summary>The global checksum: all bytes but its own two, modulo 2^16.</summary>
    /// <param name="rom">The whole ROM, the header checksum in its place.</param>
    public static ushort Global(ReadOnlySpan<byte> rom) =>
        unchecked((ushort)(ByteSum.Sum64(rom) - rom[GlobalSumAt] - rom[GlobalSumAt + 1]));

    /// <summary>Whether a header stores the checksum its bytes give.</summary>
    /// <param name="header">The header from its first byte (0x100).</param>
    public static bool HeaderIsRight(ReadOnlySpan<byte> header) => header[HeaderSumAt] == Header(header);
}
