using System.Buffers.Binary;
using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms.MegaDrive;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>The checksum against worked values, all computed by two independent programs.</summary>
public sealed class ChecksumTests
{
    [Theory]
    [InlineData(0x400, 0xAFF0)]
    [InlineData(0x10000, 0x937A)]
    [InlineData(0x20000, 0x9EF4)]
    [InlineData(0x80000, 0xA9E4)]
    public void A_whole_image_has_the_worked_sum(int length, ulong sum) =>
        Assert.Equal(sum, Sum(TestBytes.L(length), length - 1));

    [Fact]
    public void An_odd_image_is_completed_with_erased_bytes()
    {
        Assert.Equal(0x07EFUL, Sum(TestBytes.L(0x401), 0x401));
        Assert.Equal(0x07EFUL, Sum([.. TestBytes.L(0x401), 0xFF], 0x401));
    }

    [Fact]
    public void The_word_of_an_even_end_counts_whole() =>
        Assert.Equal(Sum(TestBytes.L(0x402), 0x401), Sum(TestBytes.L(0x402), 0x400));

    [Theory]
    [InlineData(0xFF, 0x137A)]
    [InlineData(0x00, 0x937A)]
    public void Padding_counts_when_the_end_is_moved_behind_it(byte fill, ulong sum) =>
        Assert.Equal(sum, Sum([.. TestBytes.L(0x10000), .. TestBytes.All(fill, 0x10000)], 0x1FFFF));

    [Fact]
    public void A_repeated_image_counts_vectors_and_header_of_its_repetition()
    {
        var image = new byte[0x20000];
        Mirror.Fill(TestBytes.L(0x10000), image);
        Assert.Equal(0x133EUL, Sum(image, 0x1FFFF));
    }

    [Fact]
    public void The_sum_ends_where_the_header_says() => Assert.Equal(0x937AUL, Sum(TestBytes.L(0x20000), 0xFFFF));

    [Theory]
    [InlineData(0x00, 0x0000)]
    [InlineData(0xFF, 0x0100)]
    public void Images_of_one_value_have_the_worked_sum(byte value, ulong sum) => Assert.Equal(sum, Sum(TestBytes.All(value, 0x20000), 0x1FFFF));

    [Fact]
    public void An_end_one_byte_too_far_is_cut_at_the_image_and_reads_on_on_a_board()
    {
        var image = TestBytes.L(0x10000);
        Assert.Equal(0x937AUL, Sum(image, 0x10000));
        Assert.Equal(0x9379UL, Sum([.. image, 0xFF, 0xFF], 0x10000));
        Assert.Equal(0xCFD8UL, Sum([.. image, .. image], 0x10000));
    }

    [Theory]
    [InlineData(0x10000, 0xCB2E)]
    [InlineData(0x20000, 0xA7EE)]
    public void The_other_rule_has_the_worked_values(int length, ushort value) =>
        Assert.Equal(value, MegaDriveChecksum.AllWordsXor(TestBytes.L(length)));

    [Theory]
    [InlineData(0)]
    [InlineData(0x1FF)]
    public void An_end_before_the_program_sums_nothing(int end) => Assert.Equal(0UL, Sum(TestBytes.L(0x400), end));

    [Fact]
    public void The_largest_end_is_cut_at_the_image() => Assert.Equal(0xAFF0UL, Sum(TestBytes.L(0x400), 0xFFFFFFFF));

    [Fact]
    public void An_image_without_a_header_sums_nothing() => Assert.Equal(0UL, MegaDriveChecksum.Compute(TestBytes.L(0x1FF)));

    [Property(MaxTest = 30)]
    public void A_build_stores_the_sum_and_any_changed_byte_shows(int seed)
    {
        var random = new Random(seed);
        var program = MegaDriveBench.Program(0x1000 + (2 * random.Next(0x1000)));
        random.NextBytes(program.AsSpan(0x200));
        var cart = MegaDriveBench.Bench(program).Size("rom", program.Length).Assemble();
        Assert.True(cart.Headers[0].Checksums[0].Right);
        Assert.Equal(PlainSum(cart.Bytes("rom")), (ushort)cart.Headers[0].Checksums[0].Stored);

        var changed = cart.Bytes("rom").ToArray();
        changed[random.Next(0x200, changed.Length)] ^= (byte)random.Next(1, 0x100);
        Assert.False(HeaderReader.Read(cart.Headers[0].Table, changed, new HeaderContext(null, null, _ => changed.Length))!.Checksums[0].Right);
    }

    // The definition, word by word: "ROM header reference".
    private static ushort PlainSum(ReadOnlySpan<byte> image)
    {
        var sum = 0;
        for (var i = 0x200; i < image.Length; i += 2)
            sum = (sum + (image[i] << 8) + image[i + 1]) & 0xFFFF;

        return (ushort)sum;
    }

    private static ulong Sum(byte[] image, long end)
    {
        var copy = image.ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(copy.AsSpan(0x1A4), (uint)end);
        return MegaDriveChecksum.Compute(copy);
    }
}
