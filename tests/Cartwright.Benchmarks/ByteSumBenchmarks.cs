using BenchmarkDotNet.Attributes;
using Cartwright.Checksums;

namespace Cartwright.Benchmarks;

public class ByteSumBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public ulong Naive()
    {
        var sum = 0UL;
        foreach (var value in Image)
            sum += value;

        return sum;
    }

    [Benchmark]
    public ulong Sum64() => ByteSum.Sum64(Image);

    [Benchmark]
    public ulong Mirrored() => MirroredByteSum.Sum64(Image.AsSpan(0, Length / 4 * 3));
}
