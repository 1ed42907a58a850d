using System.Buffers.Binary;

namespace Cartwright.Saves;

/// <summary>
/// The record of a real-time clock behind a Game Boy save: ten little-endian 32-bit numbers (seconds, minutes, hours, days, day flags,
/// and the same latched), then the Unix time in 32 or 64 bits.
/// </summary>
/// <remarks>File-format wiki: GB (saves).</remarks>
public static class SaveClock
{
    /// <summary>Bytes with the time in 32 bits.</summary>
    public const int ShortLength = 44;

    /// <summary>Bytes with the time in 64 bits.</summary>
    public const int LongLength = 48;

    // What writers without a clock of their own store.
    private const uint NoTime = 0x7FFFFFFF;
    private const ulong NoLongTime = 0x7FFFFFFF7FFFFFFF;
    private const int TimeOffset = 40;
    private const int MemoryBlock = 8192;

    /// <summary>Bytes of the record behind a file's memory, by its length; 0 where there is none.</summary>
    /// <param name="length">Bytes of the file.</param>
    public static int LengthIn(long length) => length > MemoryBlock && length % MemoryBlock is ShortLength or LongLength ? (int)(length % MemoryBlock) : 0;

    /// <summary>A record in another length, or the record of a clock at zero.</summary>
    /// <param name="record">A record of 0, 44 or 48 bytes.</param>
    /// <param name="length">0, 44 or 48. Cutting a time that needs more than 32 bits loses it.</param>
    public static byte[] Resize(ReadOnlySpan<byte> record, int length)
    {
        var resized = new byte[length];
        if (length == record.Length)
        {
            record.CopyTo(resized);
        }
        else if (length > 0)
        {
            record[..Math.Min(TimeOffset, record.Length)].CopyTo(resized);
            WriteTime(resized, Time(record));
        }

        return resized;
    }

    private static ulong Time(ReadOnlySpan<byte> record) => record.Length switch
    {
        ShortLength => BinaryPrimitives.ReadUInt32LittleEndian(record[TimeOffset..]) is var time && time == NoTime ? NoLongTime : time,
        LongLength => BinaryPrimitives.ReadUInt64LittleEndian(record[TimeOffset..]),
        _ => NoLongTime,
    };

    private static void WriteTime(Span<byte> record, ulong time)
    {
        if (record.Length == LongLength)
            BinaryPrimitives.WriteUInt64LittleEndian(record[TimeOffset..], time);
        else
            BinaryPrimitives.WriteUInt32LittleEndian(record[TimeOffset..], (uint)time);
    }
}
