using System.Buffers.Binary;
using System.Collections.Immutable;
using Cartwright.Checksums;

namespace Cartwright.Platforms.Intellivision;

/// <summary>
/// The file that ROMs are transferred in: a mark, segments with their addresses and checks, a table of what lies where (Transfer protocol
/// summary, 16kram.com; held against two containers). Pages are 256 words, and addresses are numbers of pages.
/// </summary>
internal static class TransferContainer
{
    public const byte Mark = 0xA8;

    /// <summary>Bytes of a page.</summary>
    public const int Page = 0x200;

    /// <summary>Bytes of the table, without its check.</summary>
    public const int TableLength = 48;

    private const int Intro = 3;
    private const int CheckLength = 2;
    private const int FirstBounds = 16;
    private const int BoundsOfUpper = 32;
    private const byte Unused = 0x07;

    /// <summary>The ROM as the parts of a container without tags.</summary>
    /// <param name="rom">The ROM, a whole number of pages.</param>
    public static ImmutableArray<ReadOnlyMemory<byte>> Parts(ReadOnlyMemory<byte> rom)
    {
        var parts = ImmutableArray.CreateBuilder<ReadOnlyMemory<byte>>();
        var segments = Segments(rom.Length);
        parts.Add((byte[])[Mark, (byte)segments.Count, (byte)~segments.Count]);
        var at = 0;
        foreach (var (first, last) in segments)
        {
            var data = rom.Slice(at, (last - first + 1) * Page);
            byte[] bounds = [first, last];
            parts.Add(bounds);
            parts.Add(data);
            parts.Add(Bytes(Crc16.Compute(bounds, data.Span)));
            at += data.Length;
        }

        var table = Table(segments);
        parts.Add(table);
        parts.Add(Bytes(Crc16.Compute(table)));
        return parts.ToImmutable();
    }

    /// <summary>Whether a file begins as a container does.</summary>
    public static bool IsBegun(ReadOnlySpan<byte> file) =>
        file.Length > Intro + CheckLength && file[0] == Mark && file[1] != 0 && file[2] == (byte)~file[1] && file[Intro] <= file[Intro + 1];

    /// <summary>Whether all segments of a container and its table are there and have the right checks.</summary>
    public static bool IsWhole(ReadOnlySpan<byte> file)
    {
        if (!IsBegun(file))
        {
            return false;
        }

        var at = Intro;
        for (var segment = 0; segment < file[1]; segment++)
        {
            if (file.Length < at + 2 || file[at] > file[at + 1] || !TryCheck(file, ref at, 2 + ((file[at + 1] - file[at] + 1) * Page)))
            {
                return false;
            }
        }

        return TryCheck(file, ref at, TableLength);
    }

    /// <summary>The table: what each 4096 words are good for, then the pages in use of each 2048.</summary>
    /// <param name="segments">First and last page of each segment.</param>
    public static byte[] Table(List<(byte First, byte Last)> segments)
    {
        var table = new byte[TableLength];
        table.AsSpan(FirstBounds).Fill(Unused);
        foreach (var (first, last) in segments)
        {
            for (var block = first >> 3; block <= last >> 3; block++)
            {
                var isUpper = block % 2 != 0;
                // Bit 0: can be read.
                table[block / 2] |= (byte)(isUpper ? 0x10 : 0x01);
                var from = Math.Max(first, block << 3) & 7;
                var to = Math.Min(last, (block << 3) | 7) & 7;
                table[(isUpper ? BoundsOfUpper : FirstBounds) + (block / 2)] = (byte)((from << 4) | to);
            }
        }

        return table;
    }

    private static List<(byte First, byte Last)> Segments(int length)
    {
        var segments = new List<(byte, byte)>();
        var left = length / Page;
        foreach (var (start, words) in IntvAddresses.Runs)
        {
            var pages = Math.Min(left, words * IntvHeader.WordLength / Page);
            if (pages > 0)
            {
                segments.Add(((byte)(start >> 8), (byte)((start >> 8) + pages - 1)));
            }

            left -= pages;
        }

        return segments;
    }

    private static bool TryCheck(ReadOnlySpan<byte> file, ref int at, int length)
    {
        if (file.Length < at + length + CheckLength || Crc16.Compute(file.Slice(at, length)) != BinaryPrimitives.ReadUInt16BigEndian(file[(at + length)..]))
        {
            return false;
        }

        at += length + CheckLength;
        return true;
    }

    private static byte[] Bytes(ushort check) => [(byte)(check >> 8), (byte)check];
}
