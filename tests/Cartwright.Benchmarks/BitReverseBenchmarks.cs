using BenchmarkDotNet.Attributes;
using Cartwright.Ordering;

namespace Cartwright.Benchmarks;

public class BitReverseBenchmarks : ImageBenchmark
{
    private readonly byte[] table = [.. Enumerable.Range(0, 256).Select(value => BitReverse.Reverse8((byte)value))];

    [Benchmark(Baseline = true)]
    public void Table()
    {
        var (image, result, reversed) = (Image, Result, table);
        for (var i = 0; i < image.Length; i++)
            result[i] = reversed[image[i]];
    }

    [Benchmark]
    public void Reverse8() => BitReverse.Reverse8(Image, Result);
}
