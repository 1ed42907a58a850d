using Cartwright.Headers;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Headers;

public sealed class CodecTests
{
    private static readonly SizeCode Sizes = new((0UL, 0L), (1UL, 2048L), (2UL, 8192L), (3UL, 8192L));

    private static readonly NamedValues Words = new(new(1, "one"), new(2, "two"), new(2, "deux"), new(3, "one"));

    private static readonly FieldCodec[] Codecs =
    [
        new NumberCodec(new BytesPlacement(4, ByteOrder.BigEndian), PlainNumber.InDecimal),
        new NumberCodec(new BytesPlacement(8, ByteOrder.LittleEndian), new PlainNumber(16)),
        new NumberCodec(new BytesPlacement(8, ByteOrder.BigEndian), PlainNumber.InDecimal),
        new NumberCodec(new BitsPlacement(new BitSlice(3, 1, 3), new BitSlice(0, 7, 1), new BitSlice(5, 0, 8)), new PlainNumber(3)),
        new NumberCodec(BytesPlacement.Byte, Sizes),
        new NumberCodec(BytesPlacement.Byte, Words),
        new NumberCodec(new BitsPlacement(new BitSlice(2, 4, 2)), NamedValues.Truth),
        new TextCodec(0x20),
        new TextCodec(0),
        new TextCodec(0, 0x20, 0xFF, "any letter"),
        new TextCodec(0x20, 0x30, 0x39, "digits"),
        new BytesCodec(8),
    ];

    [Property(MaxTest = 2000)]
    public void What_was_read_writes_back_the_bits_the_field_owns(ulong bits, ulong others, byte choice, bool small)
    {
        var codec = Codecs[choice % Codecs.Length];
        var field = BitConverter.GetBytes(small ? bits & 0x0303_0303_0303_0303 : bits);
        var target = BitConverter.GetBytes(others);
        var text = codec.Read(field);
        Assert.Null(codec.Write(text, target));
        var mask = new byte[8];
        codec.Mask(mask);
        for (var i = 0; i < mask.Length; i++)
        {
            Assert.Equal(field[i] & mask[i], target[i] & mask[i]);
            if (codec is NumberCodec) Assert.Equal(BitConverter.GetBytes(others)[i] & ~mask[i], target[i] & ~mask[i]);
        }

        Assert.Equal(text, codec.Read(target));
    }

    // Every text byte by byte, which random bits rarely reach.
    [Property(MaxTest = 500)]
    public void Text_of_letters_and_pads_writes_back_the_same(byte[] letters)
    {
        foreach (var pad in (byte[])[0, 0x20])
        {
            var field = letters.Select(letter => letter % 5 == 0 ? pad : (byte)(0x1E + (letter % 0x63))).ToArray();
            var codec = new TextCodec(pad);
            var target = new byte[field.Length];
            Assert.Null(codec.Write(codec.Read(field), target));
            Assert.Equal(field, target);
        }
    }

    [Fact]
    public void Bits_lie_where_their_slices_say()
    {
        var bits = new BitsPlacement(new BitSlice(1, 4, 4), new BitSlice(0, 0, 2));
        byte[] field = [0xFC, 0x0F];
        Assert.Equal(0UL, bits.Read(field));
        bits.Write(field, 0b10_0110);
        Assert.Equal([0xFE, 0x6F], field);
        Assert.Equal(0b10_0110UL, bits.Read(field));
        Assert.Equal((6, 63UL), (bits.Bits, bits.Largest));
    }

    [Fact]
    public void Bytes_lie_in_the_order_that_is_said()
    {
        byte[] field = [0, 0, 0, 0xAA];
        new BytesPlacement(3, ByteOrder.BigEndian).Write(field, 0x010203);
        Assert.Equal([1, 2, 3, 0xAA], field);
        new BytesPlacement(3, ByteOrder.LittleEndian).Write(field, 0x010203);
        Assert.Equal([3, 2, 1, 0xAA], field);
        Assert.Equal(0x010203UL, new BytesPlacement(3, ByteOrder.LittleEndian).Read(field));
        Assert.Equal(ulong.MaxValue, new BytesPlacement(8, ByteOrder.BigEndian).Largest);
    }

    [Theory]
    [InlineData("8KiB", 2)]
    [InlineData("0x2000", 2)]
    [InlineData("none", 0)]
    [InlineData("0", 0)]
    [InlineData("raw 0x2A", 0x2A)]
    [InlineData("RAW $03", 3)]
    public void A_size_code_is_written_as_a_size_or_raw(string text, byte code)
    {
        var field = new byte[1];
        Assert.Null(new NumberCodec(BytesPlacement.Byte, Sizes).Write(text, field));
        Assert.Equal(code, field[0]);
    }

    [Theory]
    [InlineData("4KiB")]
    [InlineData("0x03")]
    [InlineData("raw 3")]
    [InlineData("raw")]
    [InlineData("")]
    public void A_size_no_code_stands_for_is_refused(string text) =>
        Assert.NotNull(new NumberCodec(BytesPlacement.Byte, Sizes).Write(text, new byte[1]));

    [Theory]
    [InlineData(1, "2KiB")]
    [InlineData(2, "8KiB")]
    [InlineData(3, "raw 0x03")]
    [InlineData(9, "raw 0x09")]
    public void A_code_is_read_as_a_size_only_when_the_size_writes_it_again(byte code, string text) =>
        Assert.Equal(text, new NumberCodec(BytesPlacement.Byte, Sizes).Read([code]));

    [Theory]
    [InlineData("256", "it is larger than 0xFF (255), the most the field can hold")]
    [InlineData("0x100", "it is larger than 0xFF (255), the most the field can hold")]
    [InlineData("many", "it is none of the values this field can have")]
    [InlineData("-1", "it is none of the values this field can have")]
    public void A_number_the_field_cannot_hold_is_refused_and_nothing_written(string text, string problem)
    {
        byte[] field = [0x5A];
        Assert.Equal(problem, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal).Write(text, field));
        Assert.Equal([0x5A], field);
    }

    [Theory]
    [InlineData("ABCD", "41424344")]
    [InlineData("AB", "41422020")]
    [InlineData("", "20202020")]
    [InlineData("hex 00FF0102", "00FF0102")]
    public void Text_is_filled_up_behind(string text, string bytes)
    {
        var field = new byte[4];
        Assert.Null(new TextCodec(0x20).Write(text, field));
        Assert.Equal(bytes, Convert.ToHexString(field));
    }

    [Theory]
    [InlineData("ABCDE", "it has 5 letters and the field holds 4")]
    [InlineData("hex 00FF", "it has 8 letters and the field holds 4")]
    [InlineData("aé", "the letter `é` (number 2) is not printable ASCII (space to tilde)")]
    [InlineData("a\n", "the letter `\n` (number 2) is not printable ASCII (space to tilde)")]
    public void Text_the_field_cannot_hold_is_refused(string text, string problem) =>
        Assert.Equal(problem, new TextCodec(0x20).Write(text, new byte[4]));

    [Theory]
    [InlineData("AABB", true)]
    [InlineData("aa bb", true)]
    [InlineData("AAB", false)]
    [InlineData("AABBCC", false)]
    [InlineData("AAXX", false)]
    public void Plain_bytes_are_exactly_as_many_digits(string text, bool good) =>
        Assert.Equal(good, new BytesCodec(2).Write(text, new byte[2]) is null);

    [Theory]
    [InlineData("0x1B", true)]
    [InlineData("27", false)]
    public void Hexadecimal_is_the_raw_form_of_a_word(string text, bool raw) =>
        Assert.Equal(raw, new NumberCodec(BytesPlacement.Byte, Words).IsRaw(text));

    [Theory]
    [InlineData("raw 0x1B", true)]
    [InlineData("0x80000", false)]
    public void Hexadecimal_is_a_plain_size_where_sizes_are_written(string text, bool raw) =>
        Assert.Equal(raw, new NumberCodec(BytesPlacement.Byte, Sizes).IsRaw(text));
}
