namespace Cartwright.Ordering;

/// <summary>Compares runs of bytes.</summary>
public static class Differences
{
    /// <summary>Bytes in which two runs differ.</summary>
    /// <param name="first">One.</param>
    /// <param name="second">The other, as long.</param>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    public static int Count(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second)
    {
        if (first.Length != second.Length)
            throw new ArgumentException($"{second.Length} bytes beside {first.Length}.", nameof(second));

        var count = 0;
        for (var at = first.CommonPrefixLength(second); at < first.Length; at += 1 + first[(at + 1)..].CommonPrefixLength(second[(at + 1)..]))
            count++;

        return count;
    }
}
