using System.Text;
using Cartwright.Headers;
using Cartwright.Platforms.Vectrex;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Vectrex;

public sealed class VectrexHeaderTests
{
    [Fact]
    public void The_worked_header_is_read_and_stays()
    {
        var bench = VectrexPrograms.Bench();
        var cart = bench.Assemble();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(("1998", "0xFD0D", "-8 80 32 -86 TESTCART"), (cart["year"], cart["music"], cart["titles"]));
        Assert.Equal(VectrexPrograms.Whole(), cart.Rom());
    }

    [Fact]
    public void The_worked_header_is_made_from_the_manifest()
    {
        var bench = VectrexPrograms.Behind(27, "TESTCART").Header("year", "1998");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(VectrexPrograms.Header, Convert.ToHexString(rom.AsSpan(0, 27)));
        Assert.Equal(TestBytes.L(0x800), rom.AsSpan(27, 0x800));
    }

    [Fact]
    public void A_title_longer_than_its_place_is_no_accident()
    {
        var bench = VectrexPrograms.Behind(27, "TESTCARTS");
        bench.TryAssemble();
        Assert.Contains("CW4005", bench.Codes());
    }

    [Fact]
    public void A_title_keeps_the_place_the_program_gave_it()
    {
        const string header = "67204743452032303236" + "80" + "0048" + "F4601080" + "4142" + "80" + "F85000E0" + "5445535443415254" + "80" + "00";
        var bench = VectrexPrograms.Bench(header, "TESTCART");
        Assert.Equal("-12 96 16 -128 AB | -8 80 0 -32 TESTCART", bench.Assemble()["titles"]);
        Assert.Empty(bench.Log.ToSorted());
    }

    [Fact]
    public void A_title_of_one_text_takes_over_its_place()
    {
        var rom = VectrexPrograms.Bench(title: "OTHER").Keep(false).Assemble().Rom();
        Assert.Equal("F85020AA" + "4F54484552" + "80" + "00", Convert.ToHexString(rom.AsSpan(0x0D, 11)));
    }

    [Fact]
    public void A_year_must_be_stated_or_held()
    {
        var bench = new RomBench(new VectrexPlatform()).Program("rom", 0x1F, TestBytes.L(0x100));
        bench.TryAssemble();
        Assert.Contains("CW4002", bench.Codes());
    }

    [Theory]
    [InlineData("-8 80 32 -86 A | -8 80 0 -86 B", "F85020AA4180F85000AA428000")]
    [InlineData("-8 80 32 -86  A ", "F85020AA2041208000")]
    [InlineData("-8 80 32 -86 ", "F85020AA8000")]
    [InlineData("", "00")]
    public void Texts(string text, string digits)
    {
        var field = new byte[TitleTextsCodec.Longest];
        var codec = new TitleTextsCodec();
        Assert.Null(codec.Write(text, field));
        Assert.StartsWith(digits, Convert.ToHexString(field), StringComparison.Ordinal);
        Assert.Equal(text, codec.Read(field));
        Assert.Equal(digits.Length / 2, codec.Reach(field));
    }

    [Theory]
    [InlineData("Lantern Tide")]
    [InlineData("-8 80 32 -86 lantern")]
    [InlineData("A TITLE THAT IS FAR TOO LONG FOR THE SCREEN AND FOR THE HEADER: A TITLE THAT IS FAR TOO LONG FOR THE SCREEN AND FOR THE HEADER")]
    [InlineData("hex 00")]
    public void No_texts(string text) => Assert.NotNull(new TitleTextsCodec().Write(text, new byte[TitleTextsCodec.Longest]));

    [Theory]
    [InlineData("98")]
    [InlineData("19X8")]
    [InlineData("hex 67")]
    public void No_years(string text) => Assert.NotNull(new CopyrightCodec().Write(text, new byte[CopyrightCodec.Length]));

    [Fact]
    public void The_header_of_two_halves_lies_in_the_upper_one()
    {
        var bench = new RomBench(new VectrexPlatform()) { Title = null }.Header("mapper", VectrexPrograms.Halves).Program("rom", 0, VectrexPrograms.Whole()).Program("rom", 0x801F, TestBytes.L(0x100))
            .Header("year", "2026").Header("titles", "LANTERN TIDE");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(0x10000, rom.Length);
        Assert.Equal("g GCE 2026", Encoding.ASCII.GetString(rom, 0x8000, 10));
    }

    [Property(MaxTest = 200)]
    public Property Texts_of_any_form_come_back(byte[] bytes) => Prop.ForAll(Gen.Choose(0, 3).ToArbitrary(), count =>
    {
        var field = new byte[TitleTextsCodec.Longest];
        bytes.AsSpan(0, Math.Min(bytes.Length, field.Length)).CopyTo(field);
        for (var i = 0; i < count; i++)
            Convert.FromHexString("F85020AA415B205F80").CopyTo(field, 9 * i);
        var back = new byte[field.Length];
        var codec = new TitleTextsCodec();
        Assert.Null(codec.Write(codec.Read(field), back));
        Assert.Equal(field[..codec.Reach(field)], back[..codec.Reach(field)]);
    });

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_ROM()
    {
        var settings = from year in Gen.Choose(0, 9999)
                       from music in Gen.Elements("$FD0D", "$E000", "$0100")
                       from titles in Gen.Elements("LANTERN TIDE", "-8 80 32 -86 LANTERN | 8 -80 0 127 TIDE", "-1 1 -128 127 _")
                       select (Year: $"{year:D4}", music, titles);
        return Prop.ForAll(settings.ToArbitrary(), stated =>
        {
            var rom = Blank().Header("year", stated.Year).Header("music", stated.music).Header("titles", stated.titles).Assemble().Rom();
            var again = Blank();
            foreach (var entry in HeaderReader.Read(VectrexHeader.AtStart, rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
                again.Header(entry.Field.Name, entry.Text);
            Assert.Equal(rom, again.Assemble().Rom());
        });
    }

    // Programs from $000D + texts on, so that none of the titles reaches them, and a jump's worth of fill counts as code.
    private static RomBench Blank() => new RomBench(new VectrexPlatform()) { Title = null }.Program("rom", 0, new byte[0x80]).Program("rom", 0x80, TestBytes.L(0xF80));
}
