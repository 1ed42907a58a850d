using Cartwright.Ordering;
using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class BlockSpreadTests
{
    // out[b * S2 + i] = in[b * S1 + i mod S1] (Lynx cartridge port pinouts), worked by hand.
    [Theory]
    [InlineData("010203040506", 3, 6, "010203040506")]
    [InlineData("010203040506", 3, 12, "010201020304030405060506")]
    [InlineData("010203040506", 3, 9, "010201030403050605")]
    [InlineData("0102", 2, 8, "0101010102020202")]
    [InlineData("0102", 1, 4, "01020102")]
    public void Blocks_lie_as_worked(string image, int blocks, int length, string spread) =>
        Assert.Equal(spread, Convert.ToHexString(Fill(Convert.FromHexString(image), blocks, length)));

    [Property]
    public void Every_cell_is_the_rules_and_taking_is_the_inverse(byte blockCount, byte size, byte more, int seed)
    {
        var (blocks, own, step) = (blockCount + 1, size + 1, size + 1 + more);
        var image = new byte[blocks * own];
        new Random(seed).NextBytes(image);
        var spread = Fill(image, blocks, blocks * step);
        for (var cell = 0; cell < spread.Length; cell++)
            Assert.Equal(image[(cell / step * own) + (cell % step % own)], spread[cell]);

        var back = new byte[image.Length];
        BlockSpread.Take(spread, blocks, back);
        Assert.Equal(image, back);
    }

    [Property]
    public void An_image_is_one_block_that_repeats_or_blocks_of_one_byte(NonEmptyArray<byte> image)
    {
        var bytes = image.Get;
        Assert.Equal((byte[])[.. bytes, .. bytes], Fill(bytes, 1, 2 * bytes.Length));
        Assert.Equal(bytes.SelectMany(value => Enumerable.Repeat(value, 3)), Fill(bytes, bytes.Length, 3 * bytes.Length));
    }

    [Fact]
    public void Parts_of_a_block_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Fill([1, 2, 3], 2, 4));
        Assert.Throws<ArgumentException>(() => Fill([1, 2], 2, 5));
        Assert.Throws<ArgumentException>(() => Fill([1, 2, 3, 4], 2, 2));
        Assert.Equal(new byte[4], Fill([], 2, 4));
    }

    private static byte[] Fill(byte[] image, int blocks, int length)
    {
        var spread = new byte[length];
        BlockSpread.Fill(image, blocks, spread);
        return spread;
    }
}
