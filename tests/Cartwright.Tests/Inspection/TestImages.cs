namespace Cartwright.Tests.Inspection;

/// <summary>Files that once were images.</summary>
internal static class TestImages
{
    private static readonly int[] Lengths = [0, 1, 2, 15, 16, 17, 63, 128, 511, 512, 513, 1024, 4095, 4096, 8192, 16384, 32767, 32768, 65535];

    /// <summary>Cut short at many lengths, lengthened, filled, and with random bytes over the start, the middle or the end.</summary>
    public static IEnumerable<byte[]> Spoilt(byte[] file)
    {
        foreach (var length in Lengths.Where(length => length < file.Length))
        {
            yield return file[..length];
            yield return file[^length..];
        }

        yield return [.. file, 0x00];
        yield return [.. file, .. file];
        yield return [.. file, .. new byte[512]];
        yield return [.. new byte[512], .. file];
        yield return new byte[file.Length];
        yield return [.. Enumerable.Repeat((byte)0xFF, file.Length)];
        foreach (var seed in Enumerable.Range(1, 12))
        {
            var random = new Random(seed);
            var copy = file.ToArray();
            var start = random.Next(copy.Length);
            random.NextBytes(copy.AsSpan(start, random.Next(Math.Min(0x200, copy.Length - start))));
            random.NextBytes(copy.AsSpan(0, Math.Min(seed * 8, copy.Length)));
            random.NextBytes(copy.AsSpan(Math.Max(0, copy.Length - (seed * 4))));
            yield return copy;
        }
    }
}
