using BenchmarkDotNet.Attributes;

namespace Cartwright.Benchmarks;

/// <summary>Measures something done to an image, at sizes inside the second-level cache, inside the third, and beyond both.</summary>
public abstract class ImageBenchmark
{
    [Params(512 << 10, 4 << 20, 64 << 20)]
    public int Length { get; set; }

    protected byte[] Image { get; private set; } = [];

    protected byte[] Result { get; private set; } = [];

    [GlobalSetup]
    public void MakeImage()
    {
        Image = new byte[Length];
        Result = new byte[Length];
        new Random(1).NextBytes(Image);
    }
}
