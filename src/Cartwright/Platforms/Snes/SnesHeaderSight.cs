using System.Buffers.Binary;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

// Whether a program's own bytes look like a header, wherever a header can be (SNESdev Wiki, ROM header).
internal static class SnesHeaderSight
{
    /// <summary>Bytes from the title to the end of the vectors.</summary>
    public const int Length = 0x40;

    private const int Title = 21;
    private const int LargestRomSize = 0x0D;

    /// <summary>The program's bytes, as they were before a header was written over them; empty where no one program has them all.</summary>
    public static ReadOnlySpan<byte> Program(RegionImage region, long offset, int length)
    {
        foreach (var segment in region.Coverage)
        {
            if (segment.Offset <= offset && offset + length <= segment.End)
            {
                return segment.Bytes.Span.Slice((int)(offset - segment.Offset), length);
            }
        }

        return [];
    }

    /// <summary>True when a program holds a header for one of the map modes at this offset of its title.</summary>
    public static bool IsHeader(RegionImage region, long title, ReadOnlySpan<byte> modes) => IsHeader(Program(region, title, Length), modes);

    /// <summary>True for title, plausible codes and a reset vector that can work.</summary>
    public static bool IsHeader(ReadOnlySpan<byte> header, ReadOnlySpan<byte> modes) =>
        header.Length == Length
        && (header[0x15] & 0xE0) == 0x20
        && modes.Contains((byte)(header[0x15] & 0x0F))
        && header[0x17] <= LargestRomSize
        && BinaryPrimitives.ReadUInt16LittleEndian(header[0x3C..]) >= 0x8000
        && IsTitle(header[..Title].TrimEnd((byte)0).TrimEnd((byte)0x20));

    /// <summary>True where a program left the title free.</summary>
    public static bool IsFree(RegionImage region, long title) =>
        Program(region, title, Title) is var bytes && (bytes.IsEmpty || new JisTextCodec().IsBlank(bytes, region.Fill));

    private static bool IsTitle(ReadOnlySpan<byte> title) => !title.IsEmpty && JisTextCodec.IsText(title);
}
