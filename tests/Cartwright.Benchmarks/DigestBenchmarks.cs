using System.IO.Hashing;
using System.Security.Cryptography;
using BenchmarkDotNet.Attributes;

namespace Cartwright.Benchmarks;

public class DigestBenchmarks : ImageBenchmark
{
    private readonly uint[] table = [.. Enumerable.Range(0, 256).Select(value => TableEntry((uint)value))];
    private readonly byte[] digest = new byte[SHA256.HashSizeInBytes];

    [Benchmark(Baseline = true)]
    public uint Crc32ByTable()
    {
        var crc = uint.MaxValue;
        foreach (var value in Image)
            crc = table[(byte)(crc ^ value)] ^ (crc >> 8);

        return ~crc;
    }

    [Benchmark]
    public uint Crc32OfPackage() => Crc32.HashToUInt32(Image);

    [Benchmark]
    public int Sha256() => SHA256.HashData(Image, digest);

    private static uint TableEntry(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
            value = (value & 1) == 0 ? value >> 1 : (value >> 1) ^ 0xEDB88320;

        return value;
    }
}
