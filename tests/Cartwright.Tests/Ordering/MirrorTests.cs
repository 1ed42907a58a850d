using Cartwright.Ordering;
using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class MirrorTests
{
    // Units seen at unit addresses 0, 1, 2 …: worked by hand.
    [Theory]
    [InlineData(3, 4, "0 1 2 2")]
    [InlineData(5, 8, "0 1 2 3 4 4 4 4")]
    [InlineData(6, 8, "0 1 2 3 4 5 4 5")]
    [InlineData(7, 8, "0 1 2 3 4 5 6 6")]
    [InlineData(10, 16, "0 1 2 3 4 5 6 7 8 9 8 9 8 9 8 9")]
    [InlineData(12, 16, "0 1 2 3 4 5 6 7 8 9 10 11 8 9 10 11")]
    [InlineData(20, 32, "0 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 16 17 18 19 16 17 18 19 16 17 18 19")]
    public void An_image_shows_as_worked(int length, int size, string view)
    {
        Assert.Equal(view, string.Join(' ', Enumerable.Range(0, size).Select(address => Mirror.Map(address, length))));
        Assert.Equal(view, string.Join(' ', Fill([.. Enumerable.Range(0, length).Select(unit => (byte)unit)], size)));
    }

    // Worked values, computed by two independent programs.
    [Theory]
    [InlineData(0x60000, 0x80000, "DC542FA2")]
    [InlineData(0x50000, 0x80000, "06141EA0")]
    [InlineData(0x08000, 0x20000, "08CA6A75")]
    [InlineData(0x00800, 0x01000, "530B8AD0")]
    [InlineData(0xC0000, 0x100000, "BE50A8A1")]
    [InlineData(0x18000, 0x20000, "526D362D")]
    [InlineData(0x0E000, 0x10000, "0BB9A214")]
    [InlineData(0x04000, 0x08000, "2A088DD7")]
    public void A_filled_chip_has_the_worked_digest(int length, int size, string crc) =>
        Assert.Equal(crc, TestBytes.Crc(Fill(TestBytes.L(length), size)));

    // Two 8 KiB chips of one 16 KiB image, each seen twice in a 32 KiB view: worked value, two independent programs.
    [Fact]
    public void Two_chips_that_each_repeat_have_the_worked_digest()
    {
        var image = TestBytes.L(0x4000);
        byte[] view = [.. Fill(image[..0x2000], 0x4000), .. Fill(image[0x2000..], 0x4000)];
        Assert.Equal("2C95C8C8", TestBytes.Crc(view));
    }

    [Fact]
    public void Every_cell_of_every_small_chip_is_what_the_map_says()
    {
        for (var length = 1; length <= 40; length++)
        {
            var image = TestBytes.L(length);
            for (var size = length; size <= 160; size++)
                CheckCells(image, Fill(image, size));
        }
    }

    [Property]
    public void Every_cell_is_what_the_map_says(NonEmptyArray<byte> image, NonNegativeInt more)
    {
        var chip = Fill(image.Get, image.Get.Length + (more.Get * 7));
        CheckCells(image.Get, chip);
        Assert.True(Mirror.IsMirrored(chip, image.Get.Length));
        Assert.Equal(image.Get, Placement.TakeStart(chip, image.Get.Length));
    }

    // The loop as it is published for SNES checksums, with its 24-bit mask.
    [Property]
    public void The_map_equals_the_published_loop(NonNegativeInt address, PositiveInt length)
    {
        int a = address.Get * 977 % 0x1000000, n = length.Get, start = 0, mask = 0x800000;
        var expected = a;
        while (expected >= n)
        {
            while ((expected & mask) == 0)
                mask >>= 1;

            expected -= mask;
            if (n > mask)
            {
                n -= mask;
                start += mask;
            }

            mask >>= 1;
        }

        Assert.Equal(start + expected, Mirror.Map(a, length.Get));
    }

    [Fact]
    public void The_map_reaches_beyond_24_bits()
    {
        Assert.Equal(0x1234, Mirror.Map(0x4000_0000 + 0x1234, 0x400_0000));
        Assert.Equal(int.MaxValue - 1, Mirror.Map(int.MaxValue, int.MaxValue));
        Assert.Equal(0, Mirror.Map(long.MaxValue, 1));
    }

    [Property]
    public void Any_other_byte_is_noticed(NonEmptyArray<byte> image, NonNegativeInt more, NonNegativeInt where)
    {
        var chip = Fill(image.Get, image.Get.Length + 1 + more.Get);
        var cell = image.Get.Length + (where.Get % (chip.Length - image.Get.Length));
        chip[cell] ^= 0x10;
        Assert.False(Mirror.IsMirrored(chip, image.Get.Length));
    }

    [Fact]
    public void The_question_has_the_answer_of_a_filled_chip_for_every_bit_pattern()
    {
        for (var bits = 0; bits < 0x1000; bits++)
        {
            var chip = Enumerable.Range(0, 12).Select(i => (byte)((bits >> i) & 1)).ToArray();
            for (var length = 1; length <= chip.Length; length++)
                Assert.Equal(chip.SequenceEqual(Fill(chip[..length], chip.Length)), Mirror.IsMirrored(chip, length));
        }
    }

    [Fact]
    public void An_image_may_lie_inside_the_chip_it_fills()
    {
        for (var start = 0; start <= 10; start++)
        {
            var chip = TestBytes.L(16);
            var expected = Fill(chip[start..(start + 6)], 16);
            Mirror.Fill(chip.AsSpan(start, 6), chip);
            Assert.Equal(expected, chip);
        }
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("41", 1)]
    [InlineData("4141414141414141", 1)]
    [InlineData("4142414241424142", 2)]
    [InlineData("4142434441424344", 4)]
    [InlineData("4142414241424143", 8)]
    [InlineData("414141", 1)]
    [InlineData("414142", 3)]
    [InlineData("414241", 3)]
    [InlineData("414241424142", 2)]
    [InlineData("414243414243", 6)]
    public void The_true_length_is_the_smallest_power_of_two_that_repeats(string hex, int length) =>
        Assert.Equal(length, Mirror.TrueLength(Convert.FromHexString(hex)));

    [Property]
    public void The_true_length_of_a_filled_chip_is_the_image_s(byte[] bytes, PositiveInt doublings)
    {
        var image = new byte[128];
        Placement.Start(bytes.AsSpan(0, Math.Min(bytes.Length, image.Length)), image, 0xFF);
        (image[63], image[127]) = (1, 2);
        Assert.Equal(image.Length, Mirror.TrueLength(Fill(image, image.Length << (doublings.Get % 5))));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Assert.Throws<ArgumentException>("image", () => Mirror.Fill([], new byte[4]));
        Assert.Throws<ArgumentException>("chip", () => Mirror.Fill(new byte[5], new byte[4]));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Mirror.IsMirrored(new byte[4], 0));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Mirror.IsMirrored(new byte[4], 5));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Mirror.Map(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Mirror.Map(0, 1L << 31));
        Assert.Throws<ArgumentOutOfRangeException>("address", () => Mirror.Map(-1, 1));
    }

    private static byte[] Fill(byte[] image, int size)
    {
        var chip = new byte[size];
        Mirror.Fill(image, chip);
        return chip;
    }

    private static void CheckCells(byte[] image, byte[] chip)
    {
        for (var address = 0; address < chip.Length; address++)
            Assert.Equal(image[Mirror.Map(address, image.Length)], chip[address]);
    }
}
