using BenchmarkDotNet.Attributes;
using Cartwright.Ordering;

namespace Cartwright.Benchmarks;

/// <summary>An image of three eighths of the chip: two blocks, the second of them repeated.</summary>
public class MirrorBenchmarks : ImageBenchmark
{
    [Benchmark(Baseline = true)]
    public void Naive()
    {
        var (image, chip, length) = (Image, Result, Length / 8 * 3);
        for (var i = 0; i < chip.Length; i++)
            chip[i] = image[Mirror.Map(i, length)];
    }

    [Benchmark]
    public void Fill() => Mirror.Fill(Image.AsSpan(0, Length / 8 * 3), Result);

    [Benchmark]
    public bool FillAndAsk()
    {
        Fill();
        return Mirror.IsMirrored(Result, Length / 8 * 3);
    }
}
