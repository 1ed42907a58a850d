using BenchmarkDotNet.Attributes;
using Cartwright.Ordering;

namespace Cartwright.Benchmarks;

public class LaneMergeBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public void Naive()
    {
        var (image, result, half) = (Image, Result, Length / 2);
        for (var i = 0; i < half; i++)
        {
            result[2 * i] = image[i];
            result[(2 * i) + 1] = image[half + i];
        }
    }

    [Benchmark]
    public void Merge() => Lanes.Merge(Image.AsSpan(0, Length / 2), Image.AsSpan(Length / 2), Result);
}
