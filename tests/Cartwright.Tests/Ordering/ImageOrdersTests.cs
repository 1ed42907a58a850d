using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class ImageOrdersTests
{
    [Property]
    public void Undoing_an_order_gives_the_image_back(int seed, byte units)
    {
        foreach (var order in Enum.GetValues<ImageOrder>())
        {
            var image = new byte[ImageOrders.Unit(order) * (units % 5)];
            new Random(seed).NextBytes(image);
            Assert.Equal(image, Back(order, There(order, image)));
            Assert.Equal(image, There(order, Back(order, image)));
        }
    }

    // SMD file format information; the order and the value are those of the decoders that verify SEGA at 0x100.
    [Fact]
    public void Blocks_with_the_odd_bytes_first_are_those_of_the_old_copiers() =>
        Assert.Equal("7C594F63", TestBytes.Crc(There(ImageOrder.OddEvenBlocks, TestBytes.L(0x20000))));

    // fullsnes: all upper 32 KiB halves first; out bank k lower = in block n + k, upper = in block k.
    [Fact]
    public void Halves_of_banks_are_taken_apart_upper_ones_first()
    {
        var image = Enumerable.Range(0, 4).SelectMany(block => TestBytes.All((byte)block, 0x8000)).ToArray();
        var parted = There(ImageOrder.UpperLowerHalves, image);
        Assert.Equal([1, 3, 0, 2], Enumerable.Range(0, 4).Select(block => (int)parted[block * 0x8000]));
    }

    [Theory]
    [InlineData(ImageOrder.ByteSwapped, "37804012")]
    [InlineData(ImageOrder.WordSwapped, "40123780")]
    [InlineData(ImageOrder.HalfwordSwapped, "12408037")]
    public void The_first_word_of_a_big_endian_image_shows_the_order(ImageOrder order, string digits) =>
        Assert.Equal(digits, Convert.ToHexString(There(order, [0x80, 0x37, 0x12, 0x40])));

    private static byte[] There(ImageOrder order, byte[] image)
    {
        var parted = new byte[image.Length];
        ImageOrders.FromConsole(order, image, parted);
        return parted;
    }

    private static byte[] Back(ImageOrder order, byte[] image)
    {
        var console = new byte[image.Length];
        ImageOrders.ToConsole(order, image, console);
        return console;
    }
}
