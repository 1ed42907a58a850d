using System.Text;
using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

/// <summary>The 16 bytes at 0x134 and their three forms (Pan Docs, The Cartridge Header).</summary>
public sealed class TitleFormTests
{
    [Fact]
    public void Without_a_flag_a_title_has_16_letters() =>
        Assert.Equal("ABCDEFGHIJKLMNOP", Bytes(Programs.Bench(title: "ABCDEFGHIJKLMNOP").Assemble()));

    [Fact]
    public void Before_a_flag_it_has_15() =>
        Assert.Equal("ABCDEFGHIJKLMNO\u0080", Bytes(Programs.Bench(title: "ABCDEFGHIJKLMNO").Header("cgbFlag", "compatible").Assemble()));

    [Fact]
    public void Before_a_code_it_has_11() =>
        Assert.Equal("ABCDEFGHIJ\0WXYZ\u00C0", Bytes(Programs.Bench(title: "ABCDEFGHIJ").Header("cgbFlag", "only").Header("manufacturerCode", "WXYZ").Assemble()));

    [Fact]
    public void A_code_without_a_flag_leaves_the_flag_zero() =>
        Assert.Equal("TIDE\0\0\0\0\0\0\0WXYZ\0", Bytes(Programs.Bench(title: "TIDE").Header("manufacturerCode", "WXYZ").Assemble()));

    [Theory]
    [InlineData("cgbFlag", "compatible", "ABCDEFGHIJKLMNOP", "it has 16 letters and the field holds 15")]
    [InlineData("manufacturerCode", "WXYZ", "ABCDEFGHIJKL", "it has 12 letters and the field holds 11")]
    public void Longer_titles_are_refused(string field, string text, string title, string words)
    {
        var bench = Programs.Bench(title: title).Header(field, text);
        bench.TryAssemble();
        Assert.Contains(words, Assert.Single(bench.Log.ToSorted(), finding => finding.Rule == HeaderFindings.BadValue).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("LANTERN TIDE\0\0\0\0", "LANTERN TIDE", null, null)]
    [InlineData("LANTERN TIDE\0\0\0\u0080", "LANTERN TIDE", "compatible", null)]
    [InlineData("ABCDEFGHIJKLMNOP", "ABCDEFGHIJKLMNOP", null, null)]
    [InlineData("ABCDEFGHIJKLMNO ", "ABCDEFGHIJKLMNO ", null, null)]
    [InlineData("TIDE\0\0\0\0\0\0\0ABC1\u00C0", "TIDE", "only", "ABC1")]
    [InlineData("TIDE\0\0\0\0\0\0\0ABC1\0", "TIDE", "none", "ABC1")]
    [InlineData("ABCDEFGHIJKABC1\u0080", "ABCDEFGHIJKABC1", "compatible", null)]
    [InlineData("TIDE            ", "TIDE            ", null, null)]
    [InlineData("\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0", "", null, null)]
    public void A_reader_finds_the_form(string bytes, string title, string? flag, string? code)
    {
        var rom = Programs.Bench().Assemble().Bytes("rom").ToArray();
        Encoding.Latin1.GetBytes(bytes, rom.AsSpan(0x134));
        var header = GameBoyChecksumTests.Read(rom);
        Assert.Equal((title, flag, code), (header["title"], header["cgbFlag"], header["manufacturerCode"]));
    }

    [Fact]
    public void Bytes_that_are_no_text_are_shown_whole()
    {
        var rom = Programs.Bench().Assemble().Bytes("rom").ToArray();
        rom.AsSpan(0x134, 16).Fill(0xFF);
        Assert.Equal("hex " + new string('F', 32), GameBoyChecksumTests.Read(rom)["title"]);
    }

    [Fact]
    public void A_flag_of_the_program_shortens_the_title()
    {
        var bench = Programs.Changed(0x143, 0x80).Keep(true);
        var cart = bench.Assemble();
        Assert.Equal("LANTERN TIDE\0\0\0\u0080", Bytes(cart));
        Assert.Equal("compatible", cart["cgbFlag"]);
    }

    [Fact]
    public void A_code_of_the_program_stays_behind_a_short_title()
    {
        var program = Programs.Whole();
        "WXYZ"u8.CopyTo(program.AsSpan(0x13F));
        var cart = new RomBench(new GameBoyPlatform()) { Title = "TIDE" }.Program("rom", 0, program).Assemble();
        Assert.Equal("TIDE\0\0\0\0\0\0\0WXYZ\0", Bytes(cart));
        Assert.Equal("WXYZ", cart["manufacturerCode"]);
    }

    private static string Bytes(CartView cart) => Encoding.Latin1.GetString(cart.Bytes("rom").Slice(0x134, 16));
}
