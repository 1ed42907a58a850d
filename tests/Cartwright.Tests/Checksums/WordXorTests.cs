using Cartwright.Checksums;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Checksums;

public sealed class WordXorTests
{
    // The whole image with the word at 0x18E taken as 0. Worked values, computed by two independent programs.
    [Theory]
    [InlineData(0x10000, 0xCB2E)]
    [InlineData(0x20000, 0xA7EE)]
    public void An_image_gives_the_worked_value(int length, ushort value)
    {
        var image = TestBytes.L(length);
        image.AsSpan(0x18E, 2).Clear();
        Assert.Equal(value, WordXor.BigEndian16(image));
    }

    [Fact]
    public void Every_length_and_alignment_equals_the_scalar_form()
    {
        var bytes = TestBytes.L(400);
        for (var offset = 0; offset < 32; offset++)
        {
            for (var length = 0; length <= 300; length++)
            {
                var span = bytes.AsSpan(offset, length);
                Assert.Equal(WordXor.BigEndian16Scalar(span), WordXor.BigEndian16(span));
            }
        }
    }

    [Property]
    public void Each_word_counts_with_its_high_byte_first(byte[] bytes)
    {
        var value = 0;
        for (var i = 0; i < bytes.Length; i++)
            value ^= i % 2 == 0 ? bytes[i] * 256 : bytes[i];

        Assert.Equal((ushort)value, WordXor.BigEndian16(bytes));
    }

    [Property]
    public void An_even_number_of_equal_words_changes_nothing(byte[] bytes, byte fill)
    {
        var image = bytes[..(bytes.Length & ~1)];
        Assert.Equal(WordXor.BigEndian16(image), WordXor.BigEndian16([.. image, fill, fill, fill, fill]));
    }
}
