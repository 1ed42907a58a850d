using Cartwright.Platforms.Snes;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class JisTextCodecTests
{
    private readonly JisTextCodec _codec = new();

    [Fact]
    public void Ascii_is_written_and_filled_up_with_spaces()
    {
        var field = new byte[6];
        Assert.Null(_codec.Write("TIDE", field));
        Assert.Equal("TIDE  "u8, field);
        Assert.Equal("TIDE", _codec.Read(field));
    }

    // JIS X 0201 has the small letter YA at $AC and KA, NA at $B6, $C5; Unicode at U+FF6C, U+FF76, U+FF85.
    [Fact]
    public void Half_width_kana_are_single_bytes()
    {
        var field = new byte[4];
        Assert.Null(_codec.Write("\uFF6C\uFF76\uFF85", field));
        Assert.Equal(new byte[] { 0xAC, 0xB6, 0xC5, 0x20 }, field);
        Assert.Equal("\uFF6C\uFF76\uFF85", _codec.Read(field));
    }

    [Theory]
    [InlineData("｡", 0xA1)]
    [InlineData("ﾟ", 0xDF)]
    [InlineData(" ", 0x20)]
    [InlineData("~", 0x7E)]
    public void The_first_and_last_letters_are_there(string text, byte code)
    {
        var field = new byte[1];
        Assert.Null(_codec.Write(text, field));
        Assert.Equal(code, field[0]);
    }

    [Theory]
    [InlineData("TIDES", "5 letters")]
    [InlineData("TI\u00C9", "number 3")]
    [InlineData("\u30AB", "number 1")]
    [InlineData("A\u007F", "number 2")]
    [InlineData("\uFFA0", "number 1")]
    [InlineData("\uFF60", "number 1")]
    public void Other_letters_are_refused(string text, string problem) =>
        Assert.Contains(problem, _codec.Write(text, new byte[4]), StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_no_text_are_shown_as_digits()
    {
        byte[] field = [0x41, 0x00, 0x80, 0xE0];
        Assert.Equal("hex 410080E0", _codec.Read(field));
        var copy = new byte[4];
        Assert.Null(_codec.Write("hex 410080E0", copy));
        Assert.Equal(field, copy);
    }

    [Theory]
    [InlineData(new byte[] { 0x20, 0x20 }, true)]
    [InlineData(new byte[] { 0x00, 0x00 }, true)]
    [InlineData(new byte[] { 0xEE, 0xEE }, true)]
    [InlineData(new byte[] { 0x20, 0x00 }, false)]
    public void Spaces_zeros_and_fill_are_blank(byte[] field, bool blank) => Assert.Equal(blank, _codec.IsBlank(field, 0xEE));

    [Property(MaxTest = 1000)]
    public void Whatever_is_read_is_written_back_the_same(byte[] bytes)
    {
        var field = bytes.Length > 21 ? bytes[..21] : bytes;
        var copy = new byte[field.Length];
        Assert.Null(_codec.Write(_codec.Read(field), copy));
        Assert.Equal(field, copy);
    }

    // Text alone is rare among random bytes, so it has a test of its own.
    [Property(MaxTest = 500)]
    public void Whatever_is_text_is_read_as_text(byte[] seeds)
    {
        byte[] field = [.. seeds.Take(21).Select(seed => (byte)(seed % 158 is var n && n < 95 ? 0x20 + n : 0xA1 + n - 95))];
        var text = _codec.Read(field);
        Assert.False(text.StartsWith("hex ", StringComparison.Ordinal));
        var copy = new byte[field.Length];
        Assert.Null(_codec.Write(text, copy));
        Assert.Equal(field, copy);
    }
}
