using Cartwright.Checksums;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The checksum of the 16-byte header: a sum of bytes over runs that the size code chooses, the header left out (ROM Header, smspower.org).</summary>
public static class SegaChecksum
{
    /// <summary>The sum over the bytes that the header's own size code covers.</summary>
    /// <param name="rom">The whole ROM, header included.</param>
    public static ushort Of(ReadOnlySpan<byte> rom) => Over(RangeOf(rom), rom);

    /// <summary>The sum over a range; what the ROM does not have is not counted, nor is the header where the range does not leave it out itself.</summary>
    /// <param name="range">The range.</param>
    /// <param name="rom">The whole ROM.</param>
    public static ushort Over(ChecksumRange range, ReadOnlySpan<byte> rom)
    {
        var header = SegaHeader.MarkAt(rom.Length);
        var sum = Without(rom, 0, range.FirstEnd, header) + Without(rom, range.SecondStart, range.Size, header);
        return unchecked((ushort)sum);
    }

    /// <summary>The range of a ROM's size code; a code without one counts as 32 KiB.</summary>
    /// <param name="rom">The whole ROM.</param>
    public static ChecksumRange RangeOf(ReadOnlySpan<byte> rom)
    {
        var code = rom[SegaHeader.MarkAt(rom.Length) + SegaHeader.MarkedLength - 1] & 0x0F;
        return ChecksumRange.Of(code) ?? (code == ChecksumRange.Megabyte.Code ? ChecksumRange.Megabyte : ChecksumRange.Safest);
    }

    private static ulong Without(ReadOnlySpan<byte> rom, int start, int end, int header)
    {
        var run = rom[Math.Min(start, rom.Length)..Math.Min(end, rom.Length)];
        var skipped = Math.Clamp(header - start, 0, run.Length);
        var behind = Math.Clamp(header + SegaHeader.MarkedLength - start, 0, run.Length);
        return ByteSum.Sum64(run[..skipped]) + ByteSum.Sum64(run[behind..]);
    }
}
