using System.Text;
using Cartwright.Checksums;
using Cartwright.Ordering;
using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Checksums;

public sealed class MirroredByteSumTests
{
    private const int HeaderLength = 0x40;

    // 1 … 6 shows as 1 2 3 4 5 6 5 6, and 1 … 7 as 1 2 3 4 5 6 7 7: worked by hand.
    [Theory]
    [InlineData(6, 0x20)]
    [InlineData(7, 0x23)]
    public void A_few_bytes_sum_as_worked_by_hand(int count, int sum) =>
        Assert.Equal((ulong)sum, MirroredByteSum.Sum64([.. Enumerable.Range(1, count).Select(value => (byte)value)]));

    // Worked images, computed by two independent programs: the digest is that of the finished file.
    [Theory]
    [InlineData(0x008000, 0x007FC0, 0x20, 0x05, 0xA89B, "0B0A8D36")]
    [InlineData(0x040000, 0x007FC0, 0x20, 0x08, 0xE89E, "6A04A0AE")]
    [InlineData(0x018000, 0x007FC0, 0x20, 0x07, 0xE89D, "E63565A7")]
    [InlineData(0x140000, 0x00FFC0, 0x21, 0x0B, 0xE8A2, "E13FF002")]
    [InlineData(0x1C0000, 0x007FC0, 0x30, 0x0B, 0xE8B1, "21E3EF12")]
    [InlineData(0x300000, 0x00FFC0, 0x31, 0x0C, 0xE8B3, "D92F39A5")]
    [InlineData(0x600000, 0x40FFC0, 0x35, 0x0D, 0xD170, "68483375")]
    public void A_snes_image_sums_as_worked(int length, int header, byte mode, byte size, ushort sum, string crc)
    {
        var image = TestBytes.Snes(length);
        WriteHeader(image.AsSpan(header - 0x10, 0x10 + HeaderLength), mode, size);
        Assert.Equal(sum, MirroredByteSum.Sum16(image));

        StorePair(image.AsSpan(header + 0x1C), sum);
        Assert.Equal(sum, MirroredByteSum.Sum16(image));
        Assert.Equal(crc, TestBytes.Crc(image));
    }

    [Fact]
    public void Every_length_equals_the_plain_sum_of_the_view()
    {
        for (var length = 1; length < 300; length++)
            CheckView(TestBytes.L(length));
    }

    [Property]
    public void The_sum_equals_the_plain_sum_of_the_view(NonEmptyArray<byte> image) => CheckView(image.Get);

    [Fact]
    public void Nothing_sums_to_nothing() => Assert.Equal(0, MirroredByteSum.Sum16([]));

    private static void CheckView(byte[] image)
    {
        var view = new byte[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)image.Length)];
        Mirror.Fill(image, view);
        Assert.Equal(ByteSum.Sum64(view), MirroredByteSum.Sum64(image));
    }

    private static void WriteHeader(Span<byte> area, byte mode, byte size)
    {
        area.Clear();
        var header = area[0x10..];
        Encoding.ASCII.GetBytes("CARTWRIGHT TEST".PadRight(21)).CopyTo(header);
        header[0x15] = mode;
        header[0x17] = size;
        header[0x19] = 0x01;
        StorePair(header[0x1C..], 0x0000);
        for (var vector = 0x24; vector < HeaderLength; vector += 2)
            header[vector + 1] = 0x80;
    }

    // Complement, then checksum, both little-endian.
    private static void StorePair(Span<byte> pair, ushort sum)
    {
        System.Buffers.Binary.BinaryPrimitives.WriteUInt16LittleEndian(pair, (ushort)~sum);
        System.Buffers.Binary.BinaryPrimitives.WriteUInt16LittleEndian(pair[2..], sum);
    }
}
