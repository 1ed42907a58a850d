using Cartwright.Ordering;
using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

public sealed class PatchBaseTests
{
    private static readonly byte[] Image = TestBytes.L(0x20000);
    private static readonly PatchStatement Statement = new(PatchFormats.Bps, Image.Length, BpsCrc(Image));

    private static uint BpsCrc(byte[] bytes) => NaiveBps.Crc(bytes);

    public static TheoryData<int, ImageOrder> Ways()
    {
        var ways = new TheoryData<int, ImageOrder>();
        foreach (var prefix in (int[])[0, 0x200, 0x40])
        {
            foreach (var order in Enum.GetValues<ImageOrder>()) ways.Add(prefix, order);
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_prefix_and_an_order_are_found(int prefix, ImageOrder order)
    {
        var ordered = new byte[Image.Length];
        ImageOrders.FromConsole(order, Image, ordered);
        byte[] file = [.. TestBytes.All(0x55, prefix), .. ordered];
        var tried = PatchBase.Try(file, Statement, [0x40, 0x200]);
        Assert.Equal(new PatchBaseTry(prefix, order, ImageOrder.Console, true), tried[^1]);
        Assert.DoesNotContain(tried.SkipLast(1), way => way.Fits);
        Assert.Equal(Image, PatchBase.Bring(file, tried[^1]));
    }

    [Theory]
    [InlineData(ImageOrder.OddEvenBlocks)]
    [InlineData(ImageOrder.EvenOddBlocks)]
    [InlineData(ImageOrder.OddEvenHalves)]
    [InlineData(ImageOrder.UpperLowerHalves)]
    public void A_patch_for_an_image_in_another_order_is_found(ImageOrder order)
    {
        var wanted = new byte[Image.Length];
        ImageOrders.FromConsole(order, Image, wanted);
        var tried = PatchBase.Try(Image, Statement with { BaseCrc = BpsCrc(wanted) }, [0x200]);
        Assert.Equal(new PatchBaseTry(0, ImageOrder.Console, order, true), tried[^1]);
        Assert.Equal(wanted, PatchBase.Bring(Image, tried[^1]));
    }

    [Fact]
    public void What_fits_nowhere_is_told_with_all_that_was_tried()
    {
        var tried = PatchBase.Try([.. Image, .. new byte[0x200]], Statement, [0x200, -1, int.MaxValue]);
        Assert.DoesNotContain(tried, way => way.Fits);
        Assert.Equal([0, 0x200], tried.Select(way => way.PrefixLength).Distinct());
        Assert.Contains(tried, way => way is { PrefixLength: 0x200, From: ImageOrder.WordSwapped });
    }

    [Fact]
    public void Orders_that_need_whole_units_are_left_out()
    {
        var odd = TestBytes.L(3);
        var tried = PatchBase.Try(odd, new PatchStatement(PatchFormats.Bps, 3, 0), []);
        Assert.Equal([ImageOrder.Console, ImageOrder.BitReversed], tried.Select(way => way.From));
    }

    [Fact]
    public void Without_a_CRC_nothing_can_be_tried() => Assert.Empty(PatchBase.Try(Image, new PatchStatement(PatchFormats.Ips), [0x200]));
}
