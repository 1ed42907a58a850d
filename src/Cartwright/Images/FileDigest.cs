using System.Security.Cryptography;
using Cartwright.Checksums;

namespace Cartwright.Images;

/// <summary>What identifies a file: size and digests, and the sum that device programmers commonly display.</summary>
/// <param name="Size">Bytes.</param>
/// <param name="Crc32">CRC-32/ISO-HDLC, as zip and PNG use it.</param>
/// <param name="Sha256">SHA-256 as lower-case hexadecimal digits.</param>
/// <param name="Sum16">Sum of all bytes modulo 2^16.</param>
public sealed record FileDigest(long Size, uint Crc32, string Sha256, ushort Sum16)
{
    /// <summary>Computes the digest of bytes in memory.</summary>
    /// <param name="bytes">The bytes.</param>
    public static FileDigest Of(ReadOnlySpan<byte> bytes)
    {
        Span<byte> sha = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(bytes, sha);
        return new FileDigest(bytes.Length, System.IO.Hashing.Crc32.HashToUInt32(bytes), Convert.ToHexStringLower(sha), ByteSum.Sum16(bytes));
    }

    /// <summary>The CRC-32 as eight upper-case hexadecimal digits.</summary>
    public string Crc32Text => Crc32.ToString("X8", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The sum as four upper-case hexadecimal digits.</summary>
    public string Sum16Text => Sum16.ToString("X4", System.Globalization.CultureInfo.InvariantCulture);
}
