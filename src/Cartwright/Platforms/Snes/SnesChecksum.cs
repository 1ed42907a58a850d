using Cartwright.Checksums;

namespace Cartwright.Platforms.Snes;

/// <summary>The checksum of the header and its complement (SNESdev Wiki, ROM header; SnesLab, SNES ROM Header).</summary>
public static class SnesChecksum
{
    // FF FF 00 00, or any other complement and checksum that belong together, add up to this.
    private const ulong Pair = 0x1FE;
    private const int PairLength = 4;

    /// <summary>The sum of all bytes of the ROM completed to a power of two, as if complement and checksum held FF FF 00 00.</summary>
    /// <param name="rom">The ROM, whatever the two fields hold.</param>
    /// <param name="pair">Offset of the complement, which the checksum follows.</param>
    public static ushort Sum(ReadOnlySpan<byte> rom, int pair)
    {
        var stored = ByteSum.Sum64(rom.Slice(pair, PairLength));
        return unchecked((ushort)(MirroredByteSum.Sum64(rom) + (MirroredByteSum.Repeats(pair, rom.Length) * (Pair - stored))));
    }

    /// <summary>The checksum with every bit turned over.</summary>
    /// <param name="rom">The ROM, whatever the two fields hold.</param>
    /// <param name="pair">Offset of the complement, which the checksum follows.</param>
    public static ushort Complement(ReadOnlySpan<byte> rom, int pair) => (ushort)~Sum(rom, pair);
}
