using BenchmarkDotNet.Attributes;
using Cartwright.Ordering;

namespace Cartwright.Benchmarks;

public class WordSwapBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public void Naive16()
    {
        var (image, result) = (Image, Result);
        for (var i = 0; i < image.Length; i += 2)
        {
            result[i] = image[i + 1];
            result[i + 1] = image[i];
        }
    }

    [Benchmark]
    public void Swap16() => WordSwap.Swap16(Image, Result);

    [Benchmark]
    public void Swap16InPlace() => WordSwap.Swap16(Image);

    [Benchmark]
    public void Swap32() => WordSwap.Swap32(Image, Result);

    [Benchmark]
    public void HalfwordSwap() => WordSwap.HalfwordSwap(Image, Result);
}
