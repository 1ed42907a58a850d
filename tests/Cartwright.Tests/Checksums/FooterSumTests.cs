using Cartwright.Checksums;
using Cartwright.Ordering;
using Xunit;

namespace Cartwright.Tests.Checksums;

/// <summary>
/// WonderSwan images, whose sum of all bytes but the last two stands in those two: how filling and repeating a chip act on
/// the sum. Worked values, computed by two independent programs.
/// </summary>
public sealed class FooterSumTests
{
    private const string Footer128 = "EA000000E0000001420000020400";
    private const string Footer64 = "EA000000F0000000000003000400";

    [Fact]
    public void An_image_and_its_repetition_have_the_worked_digests()
    {
        var image = Image(0x20000, Footer128, 0x0C92);
        var chip = new byte[0x100000];
        Mirror.Fill(image, chip);
        Assert.Equal("34CFBA33", TestBytes.Crc(image));
        Assert.Equal("FBF296D5", TestBytes.Crc(chip));
        Assert.Equal(image.Length, Mirror.TrueLength(chip));
    }

    [Theory]
    [InlineData(0x19000, 0x1B95)]
    [InlineData(0x20000, 0xAB95)]
    public void Fill_in_front_of_100_KiB_counts(int size, ushort sum) =>
        Assert.Equal(sum, ByteSum.Sum16(EndAligned(Image(0x19000, Footer128, 0), size).AsSpan(0, size - 2)));

    [Theory]
    [InlineData(0x10000)]
    [InlineData(0x20000)]
    [InlineData(0x100000)]
    public void Fill_of_whole_64_KiB_in_front_changes_nothing(int size)
    {
        var image = Image(0x10000, Footer64, 0x4DF5);
        Assert.Equal("52FAA4E0", TestBytes.Crc(image));
        Assert.Equal(0x4DF5, ByteSum.Sum16(EndAligned(image, size).AsSpan(0, size - 2)));
    }

    [Fact]
    public void Repeating_the_image_changes_the_sum()
    {
        var chip = new byte[0x20000];
        Mirror.Fill(Image(0x10000, Footer64, 0x4DF5), chip);
        Assert.Equal(0x9D2C, ByteSum.Sum16(chip.AsSpan()[..^2]));
    }

    private static byte[] Image(int length, string footer, ushort sum)
    {
        var image = TestBytes.L(length);
        Convert.FromHexString(footer).CopyTo(image.AsSpan(length - 16));
        System.Buffers.Binary.BinaryPrimitives.WriteUInt16LittleEndian(image.AsSpan(length - 2), sum);
        return image;
    }

    private static byte[] EndAligned(byte[] image, int size)
    {
        var chip = new byte[size];
        Placement.End(image, chip, 0xFF);
        return chip;
    }
}
