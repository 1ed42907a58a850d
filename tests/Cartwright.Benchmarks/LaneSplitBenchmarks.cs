using BenchmarkDotNet.Attributes;
using Cartwright.Ordering;

namespace Cartwright.Benchmarks;

public class LaneSplitBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public void Naive()
    {
        var (image, result, half) = (Image, Result, Length / 2);
        for (var i = 0; i < half; i++)
        {
            result[i] = image[2 * i];
            result[half + i] = image[(2 * i) + 1];
        }
    }

    [Benchmark]
    public void Split2() => Lanes.Split2(Image, Result.AsSpan(0, Length / 2), Result.AsSpan(Length / 2));

    [Benchmark]
    public void SplitTwice()
    {
        Lanes.Split(Image, 0, 2, Result.AsSpan(0, Length / 2));
        Lanes.Split(Image, 1, 2, Result.AsSpan(Length / 2));
    }
}
