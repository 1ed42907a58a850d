namespace Cartwright.Checksums;

/// <summary>The Adler-32 checksum. Source: RFC 1950, ZLIB Compressed Data Format Specification, section 9.</summary>
public static class Adler32
{
    private const uint Modulus = 65521;

    // The most bytes after which the larger of the two sums still fits into 32 bits (RFC 1950 leaves it to the program; from memory of zlib).
    private const int Block = 5552;

    /// <summary>The checksum; 1 for no bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var (low, high) = (1U, 0U);
        for (; !bytes.IsEmpty; bytes = bytes[Math.Min(Block, bytes.Length)..])
        {
            foreach (var value in bytes[..Math.Min(Block, bytes.Length)])
            {
                low += value;
                high += low;
            }

            low %= Modulus;
            high %= Modulus;
        }

        return (high << 16) | low;
    }
}
