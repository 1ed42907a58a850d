using Cartwright.Ordering;
using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class PlacementTests
{
    // 48 KiB at the top of a 64 KiB chip: worked value, computed by two independent programs.
    [Fact]
    public void An_image_at_the_top_has_the_worked_digest()
    {
        var chip = new byte[0x10000];
        Placement.End(TestBytes.L(0xC000), chip, 0xFF);
        Assert.Equal("074462F9", TestBytes.Crc(chip));
    }

    [Property]
    public void The_start_comes_back_and_the_rest_is_fill(byte[] image, NonNegativeInt more, byte fill)
    {
        var chip = TestBytes.L(image.Length + more.Get);
        Placement.Start(image, chip, fill);
        Assert.Equal([.. image, .. TestBytes.All(fill, more.Get)], chip);
        Assert.Equal(image, Placement.TakeStart(chip, image.Length));
    }

    [Property]
    public void The_end_comes_back_and_the_rest_is_fill(byte[] image, NonNegativeInt more, byte fill)
    {
        var chip = TestBytes.L(image.Length + more.Get);
        Placement.End(image, chip, fill);
        Assert.Equal([.. TestBytes.All(fill, more.Get), .. image], chip);
        Assert.Equal(image, Placement.TakeEnd(chip, image.Length));
    }

    [Fact]
    public void An_image_may_lie_inside_the_chip_it_is_placed_in()
    {
        byte[] chip = [1, 2, 3, 4, 5, 6];
        Placement.End(chip.AsSpan(1, 3), chip, 0xFF);
        Assert.Equal([0xFF, 0xFF, 0xFF, 2, 3, 4], chip);
        Placement.Start(chip.AsSpan(2, 4), chip, 0);
        Assert.Equal([0xFF, 2, 3, 4, 0, 0], chip);
    }

    [Fact]
    public void An_image_longer_than_the_chip_is_refused()
    {
        Assert.Throws<ArgumentException>("chip", () => Placement.Start(new byte[5], new byte[4], 0xFF));
        Assert.Throws<ArgumentException>("chip", () => Placement.End(new byte[5], new byte[4], 0xFF));
    }
}
