using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>Random patches, sound and spoilt: ours and a naive reader of the same format refuse the same ones and make the same bytes of the rest.</summary>
public sealed class PatchModelTests
{
    private const int Patches = 1500;
    // A spoilt offset often makes a file of megabytes.
    private const int IpsPatches = 400;
    private const int SpoiltOfEach = 5;

    // What a refused patch may take: findings and their text. What is made is counted apart.
    private const long Room = 0x8_0000;

    [Fact]
    public void Ips()
    {
        var random = new Random(1);
        var tally = new Tally();
        for (var i = 0; i < IpsPatches; i++)
        {
            var image = RandomPatches.Bytes(random, random.Next(0x300));
            var patch = RandomPatches.Ips(random);
            Assert.True(Compare(image, patch, NaiveIps.Apply(image, patch)));
            for (var spoilt = 0; spoilt < SpoiltOfEach; spoilt++)
            {
                var damaged = RandomPatches.Spoil(random, patch, 5);
                tally.Count(Compare(image, damaged, NaiveIps.Apply(image, damaged)));
            }
        }

        tally.ShowsBoth();
    }

    [Fact]
    public void Bps()
    {
        var random = new Random(2);
        var tally = new Tally();
        for (var i = 0; i < Patches; i++)
        {
            var image = RandomPatches.Bytes(random, random.Next(0x200));
            var patch = RandomPatches.Bps(random, image);
            Assert.True(Compare(image, patch, NaiveBps.Apply(image, patch)));
            for (var spoilt = 0; spoilt < SpoiltOfEach; spoilt++)
            {
                var damaged = RandomPatches.Spoil(random, patch, 4);
                // Signed anew, or all of them would fail at the CRC-32 of the patch; some with the CRC-32 of what they now make.
                if (spoilt > 0) damaged = RandomPatches.Sign(damaged, image, spoilt > 2 ? NaiveBps.Unchecked(image, damaged) : null);
                tally.Count(Compare(image, damaged, NaiveBps.Apply(image, damaged)));
            }
        }

        tally.ShowsBoth();
    }

    [Fact]
    public void Vcdiff()
    {
        var random = new Random(3);
        var tally = new Tally();
        for (var i = 0; i < Patches; i++)
        {
            var image = RandomPatches.Bytes(random, random.Next(0x200));
            var builder = new VcdiffBuilder(random, image);
            if (random.Next(3) == 0) builder.Text("tide");
            for (var left = random.Next(4); left > 0; left--) builder.Window(random.Next(3), random.Next(3) == 0);
            Assert.True(Compare(image, builder.Patch, builder.Output));
            Assert.True(Compare(image, builder.Patch, NaiveVcdiff.Apply(image, builder.Patch)));
            for (var spoilt = 0; spoilt < SpoiltOfEach; spoilt++)
            {
                var damaged = RandomPatches.Spoil(random, builder.Patch, 3);
                tally.Count(Compare(image, damaged, NaiveVcdiff.Apply(image, damaged)));
            }
        }

        tally.ShowsBoth();
    }

    // True when both made something of it.
    private static bool Compare(byte[] image, byte[] patch, byte[]? expected)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var run = PatchBench.Apply(image, patch);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(expected is null == run.Output is null, $"{Convert.ToHexString(patch)}\n{run.Text}");
        Assert.True(expected is null || expected.AsSpan().SequenceEqual(run.Output), Convert.ToHexString(patch));
        Assert.InRange(allocated, 0, Room + (2L * (expected?.Length ?? 0)));
        return expected is not null;
    }

    // A comparison in which all were refused, or none, would show little.
    private sealed class Tally
    {
        private int _made;
        private int _refused;

        public void Count(bool isMade)
        {
            if (isMade) _made++;
            else _refused++;
        }

        public void ShowsBoth()
        {
            Assert.InRange(_made, Patches / 10, int.MaxValue);
            Assert.InRange(_refused, Patches / 10, int.MaxValue);
        }
    }
}
