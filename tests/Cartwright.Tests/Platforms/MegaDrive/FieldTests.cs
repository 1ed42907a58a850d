using Cartwright.Headers;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>The fields with a form of their own.</summary>
public sealed class FieldTests
{
    // Letters: "ROM Cartridge Data" and common practice.
    [Theory]
    [InlineData("3-button-pad, 6-button-pad", "J6")]
    [InlineData("6-button-pad, 3-button-pad", "6J")]
    [InlineData("master-system-pad, analog-stick, multitap, light-gun, body-sensor, mouse, trackball", "0A4GLMB")]
    [InlineData("tablet, paddle, keyboard, rs-232, printer, cd-rom, floppy-drive, download", "TVKRPCFD")]
    [InlineData("", "")]
    public void Devices_are_letters_in_their_order(string names, string letters)
    {
        var (bytes, problem) = MegaDriveBench.Write("devices", names);
        Assert.Null(problem);
        Assert.Equal(MegaDriveBench.Ascii(letters.PadRight(16)), bytes);
        Assert.Equal(bytes, MegaDriveBench.Write("devices", letters).Bytes);
        Assert.Equal(names, MegaDriveBench.Read("devices", bytes));
    }

    [Theory]
    [InlineData("J 6", "J 6")]
    [InlineData("JX", "raw JX")]
    [InlineData("mouse", "raw mouse")]
    public void Other_letters_are_shown_as_they_are(string letters, string text)
    {
        var bytes = MegaDriveBench.Ascii(letters.PadRight(16));
        Assert.Equal(text, MegaDriveBench.Read("devices", bytes));
        Assert.Equal(bytes, MegaDriveBench.Write("devices", text).Bytes);
    }

    [Theory]
    [InlineData("3-buton-pad", "`3-buton-pad`")]
    [InlineData("X", "`X`")]
    [InlineData("mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse,mouse", "17")]
    public void Devices_that_cannot_be_are_said(string names, string part) =>
        Assert.Contains(part, MegaDriveBench.Write("devices", names).Problem, StringComparison.Ordinal);

    // Letters and bits: "ROM header reference".
    [Theory]
    [InlineData("japan", "J")]
    [InlineData("americas", "U")]
    [InlineData("europe", "E")]
    [InlineData("japan americas", "JU")]
    [InlineData("japan europe", "JE")]
    [InlineData("americas europe", "UE")]
    [InlineData("japan americas europe", "JUE")]
    [InlineData("japan as digit", "1")]
    [InlineData("americas as digit", "4")]
    [InlineData("japan americas as digit", "5")]
    [InlineData("europe as digit", "8")]
    [InlineData("americas europe as digit", "C")]
    [InlineData("japan americas europe as digit", "D")]
    [InlineData("japan asia-pal americas europe as digit", "F")]
    public void Regions_are_letters_or_one_digit(string words, string letters)
    {
        var (bytes, problem) = MegaDriveBench.Write("region", words);
        Assert.Null(problem);
        Assert.Equal(MegaDriveBench.Ascii(letters.PadRight(3)), bytes);
        Assert.Equal(bytes, MegaDriveBench.Write("region", letters).Bytes);
        Assert.Equal(words, MegaDriveBench.Read("region", bytes));
    }

    [Theory]
    [InlineData("EU ", "EU")]
    [InlineData("0  ", "0")]
    [InlineData("USA", "raw USA")]
    [InlineData("f  ", "raw f")]
    [InlineData("\u0004  ", "hex 042020")]
    public void Other_regions_are_shown_as_they_are(string letters, string text)
    {
        var bytes = MegaDriveBench.Ascii(letters);
        Assert.Equal(text, MegaDriveBench.Read("region", bytes));
        Assert.Equal(bytes, MegaDriveBench.Write("region", text).Bytes);
    }

    [Theory]
    [InlineData("asia-pal", "as digit")]
    [InlineData("asia-pal americas europe as digit", "Europe alone")]
    [InlineData("as digit", "no region")]
    [InlineData("mars", "`mars`")]
    [InlineData("USA", "`USA`")]
    [InlineData("raw JUEX", "4 letters")]
    public void Regions_that_cannot_be_are_said(string words, string part) =>
        Assert.Contains(part, MegaDriveBench.Write("region", words).Problem, StringComparison.Ordinal);

    // Form of the serial number: "ROM Cartridge Data".
    [Theory]
    [InlineData("0", "-00")]
    [InlineData("7", "-07")]
    [InlineData("99", "-99")]
    public void The_revision_is_a_hyphen_and_two_digits(string number, string letters)
    {
        var (bytes, problem) = MegaDriveBench.Write("revision", number);
        Assert.Null(problem);
        Assert.Equal(MegaDriveBench.Ascii(letters), bytes);
        Assert.Equal(number, MegaDriveBench.Read("revision", bytes));
    }

    [Theory]
    [InlineData("100")]
    [InlineData("-1")]
    [InlineData("A")]
    public void A_revision_needs_two_digits(string number) =>
        Assert.Contains("two digits", MegaDriveBench.Write("revision", number).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_revision_of_the_cart_ends_the_serial_number()
    {
        var cart = new RomBench(MegaDriveBench.Platform) { Revision = "3" }.Program("rom", 0, MegaDriveBench.Program(0x400))
            .Header("serial", "AI LANTERN1").Assemble();
        Assert.Equal("AI LANTERN1-03"u8.ToArray(), cart.Bytes("rom").Slice(0x180, 14).ToArray());
    }

    [Fact]
    public void A_revision_of_three_digits_is_a_finding()
    {
        var bench = new RomBench(MegaDriveBench.Platform) { Revision = "100" }.Program("rom", 0, MegaDriveBench.Program(0x400));
        bench.TryAssemble();
        Assert.Contains(HeaderFindings.BadValue.Code, bench.Codes());
    }

    [Fact]
    public void A_serial_number_with_its_revision_is_told_where_the_revision_goes() =>
        Assert.Contains("`revision`", MegaDriveBench.Write("serial", "GM 00000000-01").Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("systemType", " SEGA MEGA DRIVE")]
    [InlineData("copyright", "(C)T-1231991.JAN")]
    [InlineData("modem", "MOQUIL01.0")]
    [InlineData("memo", "A lamp at every quay")]
    [InlineData("reserved", "spare")]
    [InlineData("serial", "raw hex 12")]
    [InlineData("serial", "raw raw 1")]
    [InlineData("romStart", "0x00000000")]
    [InlineData("ramEnd", "0xE0FFFFFF")]
    public void Other_fields_read_as_they_were_written(string field, string text)
    {
        var (bytes, problem) = MegaDriveBench.Write(field, text);
        Assert.Null(problem);
        Assert.Equal(text, MegaDriveBench.Read(field, bytes));
    }

    [Fact]
    public void Titles_with_letters_of_two_bytes_are_bytes()
    {
        // "Lantern" in Shift-JIS katakana, then spaces.
        byte[] title = [0x83, 0x89, 0x83, 0x93, 0x83, 0x5E, 0x81, 0x5B, 0x83, 0x93, .. Enumerable.Repeat((byte)' ', 38)];
        var text = MegaDriveBench.Read("domesticTitle", title);
        Assert.Equal("hex " + Convert.ToHexString(title), text);
        Assert.Equal(title, MegaDriveBench.Write("domesticTitle", text).Bytes);
    }

    [Theory]
    [InlineData("devices")]
    [InlineData("saveMemory")]
    [InlineData("serial")]
    [InlineData("region")]
    public void Spaces_and_zeros_say_nothing(string field)
    {
        var row = MegaDriveBench.Row(field);
        Assert.True(row.Codec.IsBlank(TestBytes.All((byte)' ', row.Length), 0xFF));
        Assert.True(row.Codec.IsBlank(TestBytes.All(0, row.Length), 0xFF));
        Assert.True(row.Codec.IsBlank(TestBytes.All(0xFF, row.Length), 0xFF));
        Assert.False(row.Codec.IsBlank(TestBytes.All((byte)'E', row.Length), 0xFF));
    }
}
