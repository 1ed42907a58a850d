namespace Cartwright.Patching;

/// <summary>Copies inside an output that is still being made.</summary>
internal static class OverlapCopy
{
    /// <summary>Copies as if byte by byte from front to back: bytes written may be read again by the same copy.</summary>
    /// <param name="output">The output.</param>
    /// <param name="from">The first byte to read, before <paramref name="to"/>.</param>
    /// <param name="to">The first byte to write.</param>
    /// <param name="length">Bytes to write.</param>
    public static void Forward(Span<byte> output, int from, int to, int length)
    {
        var target = output.Slice(to, length);
        if (to - from == 1)
        {
            target.Fill(output[from]);
            return;
        }

        // What lies between the two repeats; each round doubles how much of it is there to copy.
        while (!target.IsEmpty)
        {
            var part = output[from..to];
            if (part.Length > target.Length) part = part[..target.Length];
            part.CopyTo(target);
            target = target[part.Length..];
            to += part.Length;
        }
    }
}
