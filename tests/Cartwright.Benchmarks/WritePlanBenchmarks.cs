using BenchmarkDotNet.Attributes;
using Cartwright.Chips;
using Cartwright.Plans;

namespace Cartwright.Benchmarks;

/// <summary>Plans for a chip of 4 MiB, against the plainest loop that tells whether a sector must be erased.</summary>
public class WritePlanBenchmarks
{
    private const int Size = 4 << 20;
    private const int SectorBytes = 65536;

    private readonly byte[] _old = new byte[Size];
    private readonly byte[] _wanted = new byte[Size];
    private readonly WriteTarget _target = WriteTarget.Of(PartCatalog.BuiltIn.Find("M29W320D")!, [new SectorGroup(Size / SectorBytes, SectorBytes)], 16);

    [GlobalSetup]
    public void SetUp()
    {
        new Random(1).NextBytes(_old);
        _old.CopyTo(_wanted, 0);
        for (var at = 0; at < Size; at += SectorBytes)
        {
            _wanted[at + SectorBytes - 1] ^= 0xFF;
        }
    }

    [Benchmark(Baseline = true)]
    public int Loop()
    {
        var sectors = 0;
        for (var start = 0; start < Size; start += SectorBytes)
        {
            var rises = 0;
            for (var at = start; at < start + SectorBytes; at++)
            {
                rises |= _wanted[at] & ~_old[at];
            }

            sectors += rises == 0 ? 0 : 1;
        }

        return sectors;
    }

    [Benchmark]
    public WritePlan Plan() => WritePlanner.Plan(_target, _old, _wanted);
}
