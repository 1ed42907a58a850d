using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class BitReverseTests
{
    // Worked values, computed by two independent programs.
    [Theory]
    [InlineData(0x00, 0x00)]
    [InlineData(0x01, 0x80)]
    [InlineData(0x4C, 0x32)]
    [InlineData(0x78, 0x1E)]
    [InlineData(0xA9, 0x95)]
    [InlineData(0xD4, 0x2B)]
    [InlineData(0xE0, 0x07)]
    [InlineData(0xE1, 0x87)]
    [InlineData(0xF0, 0x0F)]
    [InlineData(0xFF, 0xFF)]
    public void A_byte_reverses_as_worked(byte value, byte reversed) =>
        Assert.Equal(reversed, BitReverse.Reverse8(value));

    [Fact]
    public void A_card_has_the_worked_digest()
    {
        var bytes = TestBytes.L(0x60000);
        BitReverse.Reverse8(bytes);
        Assert.Equal("7F02639D", TestBytes.Crc(bytes));
    }

    [Fact]
    public void Every_byte_equals_the_definition()
    {
        for (var value = 0; value < 256; value++)
        {
            var expected = 0;
            for (var bit = 0; bit < 8; bit++)
                expected |= ((value >> bit) & 1) << (7 - bit);

            Assert.Equal((byte)expected, BitReverse.Reverse8((byte)value));
        }
    }

    [Fact]
    public void Every_length_and_alignment_equals_the_scalar_form()
    {
        for (var offset = 0; offset < 8; offset++)
        {
            for (var length = 0; length <= 300; length++)
            {
                var source = TestBytes.L(length + offset).AsSpan(offset);
                var expected = new byte[length];
                var actual = new byte[length + offset];
                BitReverse.Reverse8Scalar(source, expected);
                BitReverse.Reverse8(source, actual.AsSpan(offset));
                Assert.Equal(expected, actual[offset..]);
            }
        }
    }

    [Property]
    public void Reversing_twice_changes_nothing(byte[] bytes)
    {
        var copy = bytes.ToArray();
        BitReverse.Reverse8(copy);
        BitReverse.Reverse8(copy);
        Assert.Equal(bytes, copy);
    }

    [Fact]
    public void Wrong_destinations_are_refused()
    {
        var bytes = new byte[8];
        Assert.Throws<ArgumentException>("destination", () => BitReverse.Reverse8(bytes, new byte[7]));
        Assert.Throws<ArgumentException>("destination", () => BitReverse.Reverse8(bytes.AsSpan(0, 4), bytes.AsSpan(3)));
    }
}
