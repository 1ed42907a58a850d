using Cartwright.Checksums;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Checksums;

/// <summary>Worked values are computed by two independent programs.</summary>
public sealed class ByteSumTests
{
    // A container that stores the 32-bit sum of its ROM.
    [Theory]
    [InlineData(0x2000, 0x000FD784)]
    [InlineData(0x8000, 0x003F971B)]
    public void The_32_bit_sum_is_as_worked(int length, uint sum) =>
        Assert.Equal(sum, ByteSum.Sum32(TestBytes.L(length)));

    // WonderSwan: all bytes but the last two, and an image of FF alone.
    [Theory]
    [InlineData(0x20000, "EA000000E0000001420000020400", 0x0C92)]
    [InlineData(0x10000, "EA000000F0000000000003000400", 0x4DF5)]
    public void The_16_bit_sum_of_an_image_with_its_footer_is_as_worked(int length, string footer, ushort sum)
    {
        var image = TestBytes.L(length)[..^2];
        Convert.FromHexString(footer).CopyTo(image.AsSpan(length - 16));
        Assert.Equal(sum, ByteSum.Sum16(image));
    }

    [Fact]
    public void The_16_bit_sum_of_erased_cells_is_as_worked() =>
        Assert.Equal(0xFE02, ByteSum.Sum16(TestBytes.All(0xFF, 0x20000 - 2)));

    // Game Boy: every byte but the two of the global checksum; header without the boot bitmap.
    [Fact]
    public void The_16_bit_sum_of_a_rom_with_its_header_is_as_worked()
    {
        var rom = TestBytes.GameBoy(0x8000);
        Convert.FromHexString("00C35001").CopyTo(rom.AsSpan(0x100));
        rom.AsSpan(0x104, 48).Clear();
        Convert.FromHexString("434152545752494748540000000000803030031B0002013300B40000").CopyTo(rom.AsSpan(0x134));
        Assert.Equal(0xA4F3, ByteSum.Sum16(rom));
    }

    [Fact]
    public void Every_length_and_alignment_equals_the_scalar_form()
    {
        var bytes = TestBytes.L(400);
        for (var offset = 0; offset < 32; offset++)
        {
            for (var length = 0; length <= 300; length++)
                Assert.Equal(ByteSum.Sum64Scalar(bytes.AsSpan(offset, length)), ByteSum.Sum64(bytes.AsSpan(offset, length)));
        }
    }

    // The largest byte at every length around the places where 16-bit counters are emptied.
    [Fact]
    public void No_counter_overflows()
    {
        var erased = TestBytes.All(0xFF, 20_000);
        for (var length = 1_900; length <= erased.Length; length++)
            Assert.Equal(255UL * (ulong)length, ByteSum.Sum64(erased.AsSpan(0, length)));
    }

    [Fact]
    public void The_sum_may_exceed_32_bits()
    {
        var erased = TestBytes.All(0xFF, 0x1100000);
        Assert.Equal(0x10EF00000UL, ByteSum.Sum64(erased));
        Assert.Equal(0x0EF00000U, ByteSum.Sum32(erased));
        Assert.Equal(0, ByteSum.Sum16(erased));
    }

    [Property]
    public void The_sum_is_that_of_its_parts(byte[] first, byte[] second) =>
        Assert.Equal(ByteSum.Sum64([.. first, .. second]), ByteSum.Sum64(first) + ByteSum.Sum64(second));

    [Fact]
    public void Nothing_sums_to_nothing() => Assert.Equal(0UL, ByteSum.Sum64([]));
}
