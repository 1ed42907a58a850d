using BenchmarkDotNet.Attributes;
using Cartwright.Checksums;

namespace Cartwright.Benchmarks;

public class WordSumBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public ushort Naive()
    {
        var image = Image;
        var sum = 0;
        for (var i = 0; i < image.Length; i += 2)
            sum += (image[i] << 8) | image[i + 1];

        return (ushort)sum;
    }

    [Benchmark]
    public ushort Sum() => WordSum.BigEndian16(Image);

    [Benchmark]
    public ushort Xor() => WordXor.BigEndian16(Image);
}
