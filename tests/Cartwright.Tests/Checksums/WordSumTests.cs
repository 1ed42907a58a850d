using Cartwright.Checksums;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Checksums;

/// <summary>The sum a Mega Drive header stores runs from 0x200. Worked values are computed by two independent programs.</summary>
public sealed class WordSumTests
{
    private const int Start = 0x200;

    [Theory]
    [InlineData(0x400, 0xAFF0)]
    [InlineData(0x10000, 0x937A)]
    [InlineData(0x20000, 0x9EF4)]
    [InlineData(0x80000, 0xA9E4)]
    public void An_image_sums_as_worked(int length, ushort sum) =>
        Assert.Equal(sum, WordSum.BigEndian16(TestBytes.L(length).AsSpan(Start)));

    [Fact]
    public void An_odd_image_padded_with_FF_sums_as_worked()
    {
        byte[] image = [.. TestBytes.L(0x401), 0xFF];
        Assert.Equal(0x07EF, WordSum.BigEndian16(image.AsSpan(Start)));
    }

    [Theory]
    [InlineData(0xFF, 0x10000, 0x137A)]
    [InlineData(0x00, 0x10000, 0x937A)]
    [InlineData(0xFF, 2, 0x9379)]
    public void An_image_with_fill_behind_it_sums_as_worked(byte fill, int count, ushort sum)
    {
        byte[] image = [.. TestBytes.L(0x10000), .. TestBytes.All(fill, count)];
        Assert.Equal(sum, WordSum.BigEndian16(image.AsSpan(Start)));
    }

    [Theory]
    [InlineData(0x10000, 0x133E)]
    [InlineData(2, 0xCFD8)]
    public void An_image_with_its_repetition_behind_it_sums_as_worked(int count, ushort sum)
    {
        var image = TestBytes.L(0x10000);
        byte[] chip = [.. image, .. image[..count]];
        Assert.Equal(sum, WordSum.BigEndian16(chip.AsSpan(Start)));
    }

    [Fact]
    public void Only_the_range_given_is_summed() =>
        Assert.Equal(0x937A, WordSum.BigEndian16(TestBytes.L(0x20000).AsSpan(Start, 0x10000 - Start)));

    [Theory]
    [InlineData(0x00, 0x0000)]
    [InlineData(0xFF, 0x0100)]
    public void Blank_images_sum_as_worked(byte value, ushort sum) =>
        Assert.Equal(sum, WordSum.BigEndian16(TestBytes.All(value, 0x20000).AsSpan(Start)));

    [Fact]
    public void Every_length_and_alignment_equals_the_scalar_form()
    {
        var bytes = TestBytes.L(400);
        for (var offset = 0; offset < 32; offset++)
        {
            for (var length = 0; length <= 300; length++)
            {
                var span = bytes.AsSpan(offset, length);
                Assert.Equal(WordSum.BigEndian16Scalar(span), WordSum.BigEndian16(span));
            }
        }
    }

    [Property]
    public void A_single_last_byte_is_the_high_byte_of_a_word(byte[] bytes)
    {
        byte[] odd = bytes.Length % 2 == 0 ? [.. bytes, 0x12] : bytes;
        Assert.Equal(WordSum.BigEndian16([.. odd, 0x00]), WordSum.BigEndian16(odd));
    }

    [Property]
    public void Each_word_counts_with_its_high_byte_first(byte[] bytes)
    {
        var sum = 0;
        for (var i = 0; i < bytes.Length; i++)
            sum += i % 2 == 0 ? bytes[i] * 256 : bytes[i];

        Assert.Equal((ushort)sum, WordSum.BigEndian16(bytes));
    }
}
