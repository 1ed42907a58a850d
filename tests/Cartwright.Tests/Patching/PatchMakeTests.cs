using Cartwright.Patching;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>A patch that is made turns the base into the target, for ours and for the naive reader.</summary>
public sealed class PatchMakeTests
{
    [Property(MaxTest = 300)]
    public void Any_two_images(byte[] image, byte[] target) => Check(image, target);

    [Property(MaxTest = 300)]
    public void Images_that_share_blocks(int seed)
    {
        var random = new Random(seed);
        var image = Structured(random, [], random.Next(5000));
        Check(image, Structured(random, image, random.Next(8000)));
    }

    [Property(MaxTest = 100)]
    public void Images_with_a_few_bytes_changed(int seed)
    {
        var random = new Random(seed);
        var image = RandomPatches.Bytes(random, random.Next(1, 3000));
        var target = (byte[])image.Clone();
        for (var left = random.Next(20); left > 0; left--) target[random.Next(target.Length)] = (byte)random.Next(256);
        Check(image, target);
        Check(image, target[..random.Next(target.Length)]);
        Check(image[..random.Next(image.Length)], target);
    }

    // Strides above one begin above 4 MiB.
    [Theory]
    [InlineData(0x40_0000)]
    [InlineData(0x60_0001)]
    [InlineData(0x100_0001)]
    public void Large_images_with_moved_blocks(int length)
    {
        var image = TestBytes.L(length);
        byte[] target = [.. image.AsSpan(length / 2), 1, 2, 3, .. image.AsSpan(0, length / 2), .. image.AsSpan(5, 1000)];
        var patch = PatchBench.Make(PatchFormats.Bps, image, target).Output!;
        Assert.InRange(patch.Length, 1, 80);
        Assert.True(target.AsSpan().SequenceEqual(PatchBench.Output(image, patch)));
    }

    [Fact]
    public void Nothing_and_something()
    {
        Check([], []);
        Check([], [1]);
        Check([1], []);
        Check([1], [1]);
    }

    private static void Check(byte[] image, byte[] target)
    {
        var bps = PatchBench.Make(PatchFormats.Bps, image, target);
        Assert.Empty(bps.Codes);
        Assert.Equal(target, PatchBench.Output(image, bps.Output));
        Assert.Equal(target, NaiveBps.Apply(image, bps.Output!));
        // At worst the new bytes, the heads of their actions, and what frames a patch.
        Assert.InRange(bps.Output!.Length, 1, target.Length + 40);
        var ips = PatchBench.Make(PatchFormats.Ips, image, target);
        Assert.Equal(target.Length < image.Length ? ["CW7015"] : [], ips.Codes);
        Assert.Equal(target, PatchBench.Output(image, ips.Output));
        Assert.Equal(target, NaiveIps.Apply(image, ips.Output!));
    }

    // Blocks of the other image, of itself, of fill and of chance, one after the other.
    private static byte[] Structured(Random random, byte[] other, int length)
    {
        var bytes = new List<byte>();
        while (bytes.Count < length)
        {
            var source = random.Next(2) == 0 ? other : [.. bytes];
            var count = random.Next(1, random.Next(2) == 0 ? 20 : 600);
            switch (random.Next(4))
            {
                case 0:
                    bytes.AddRange(RandomPatches.Bytes(random, Math.Min(count, 50)));
                    break;
                case 1:
                    bytes.AddRange(Enumerable.Repeat((byte)random.Next(256), count));
                    break;
                default:
                    bytes.AddRange(source.Skip(random.Next(source.Length + 1)).Take(count));
                    break;
            }
        }

        return [.. bytes];
    }
}
