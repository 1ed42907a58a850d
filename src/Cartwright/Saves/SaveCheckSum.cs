using Cartwright.Checksums;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Works out check values of saves.</summary>
public static class SaveCheckSum
{
    /// <summary>The check value of bytes.</summary>
    /// <param name="kind">How it is worked out.</param>
    /// <param name="bytes">The bytes.</param>
    public static uint Of(SaveCheckKind kind, ReadOnlySpan<byte> bytes) => kind switch
    {
        SaveCheckKind.Sum8 => (byte)ByteSum.Sum16(bytes),
        SaveCheckKind.Sum16 => ByteSum.Sum16(bytes),
        SaveCheckKind.Sum32 => ByteSum.Sum32(bytes),
        SaveCheckKind.WordSum => WordSum.BigEndian16(bytes),
        SaveCheckKind.WordXor => WordXor.BigEndian16(bytes),
        SaveCheckKind.Crc16 => Crc16.Compute(bytes),
        SaveCheckKind.Crc32 => System.IO.Hashing.Crc32.HashToUInt32(bytes),
        SaveCheckKind.Adler32 => Adler32.Of(bytes),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
