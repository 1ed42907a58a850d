using Cartwright.Headers;
using Cartwright.Platforms.Intellivision;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Intellivision;

public sealed class IntvHeaderTests
{
    [Fact]
    public void A_header_is_read_and_stays()
    {
        var bench = IntvPrograms.Bench();
        var cart = bench.Assemble();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(("$501A", "$500D", "$500F", "2014", "TEST"), (cart["start"], cart["movingPictures"], cart["gramList"], cart["year"], cart["title"]));
        Assert.Equal(IntvPrograms.Whole(), cart.Rom());
    }

    [Fact]
    public void A_header_is_made_from_the_manifest()
    {
        var bench = IntvPrograms.Behind(0x34, "TEST");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(IntvPrograms.Block + IntvPrograms.Title, Convert.ToHexString(rom.AsSpan(0, 0x34)));
        Assert.Equal(IntvPrograms.Noise(0x800), rom.AsSpan(0x34, 0x800));
    }

    [Fact]
    public void A_title_longer_than_its_place_is_no_accident()
    {
        var bench = IntvPrograms.Behind(0x34, "TESTS");
        bench.TryAssemble();
        Assert.Contains("CW4005", bench.Codes());
    }

    [Fact]
    public void Start_year_and_title_must_be_stated_or_held()
    {
        var bench = new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0x100, IntvPrograms.Noise(0x100));
        bench.TryAssemble();
        Assert.Equal(3, bench.Codes().Count(code => code == "CW4002"));
    }

    // Black is color 0, so zeros in a block that the program holds are meant.
    [Fact]
    public void Zeros_of_a_block_that_is_there_stay()
    {
        var bench = IntvPrograms.Bench(0x18, "0000000000000000000000000000" + "0000");
        Assert.Equal(new byte[0x10], bench.Assemble().Rom()[0x18..0x28]);
        Assert.Empty(bench.Log.ToSorted());
    }

    [Fact]
    public void A_title_elsewhere_is_the_programs()
    {
        var bench = IntvPrograms.Bench(0x14, "00000051");
        var bytes = IntvPrograms.Whole();
        Convert.FromHexString("00000051").CopyTo(bytes, 0x14);
        Convert.FromHexString(IntvPrograms.Title).CopyTo(bytes, 0x200);
        var cart = new RomBench(new IntvPlatform()).Program("rom", 0, bytes).Assemble();
        Assert.Equal(bytes, cart.Rom());
        Assert.Null(cart["title"]);
        bench.TryAssemble();
        Assert.Equal(["CW4574"], bench.Codes());
    }

    [Theory]
    [InlineData("$10000")]
    [InlineData("start")]
    [InlineData("hex 00")]
    public void No_addresses(string text) => Assert.NotNull(new AddressWordsCodec().Write(text, new byte[4]));

    [Theory]
    [InlineData("14500050", "hex 14500050")]
    [InlineData("00140050", "$5014")]
    public void Addresses(string digits, string text)
    {
        var field = new byte[4];
        Assert.Equal(text, new AddressWordsCodec().Read(Convert.FromHexString(digits)));
        Assert.Null(new AddressWordsCodec().Write(text, field));
        Assert.Equal(digits, Convert.ToHexString(field));
    }

    [Theory]
    [InlineData("1899")]
    [InlineData("-1")]
    [InlineData("MMXXVI")]
    public void No_years(string text) => Assert.False(new YearNumber().TryParse(text, out _));

    [Theory]
    [InlineData("Lant\u00E9rn")]
    [InlineData("A TITLE OF MORE THAN FORTY LETTERS IS TOO LONG")]
    public void No_titles(string text) => Assert.NotNull(new WordTextCodec().Write(text, new byte[82]));

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_ROM()
    {
        var pointer = Gen.Choose(0x500D, 0x5FFF).Select(number => $"${number:X4}");
        var word = Gen.Choose(0, 0xFFFF).Select(number => $"0x{number:X4}");
        var settings = from start in pointer
                       from list in pointer
                       from flags in word
                       from border in word
                       from year in Gen.Choose(1900, 2100)
                       from title in Gen.Elements("LANTERN TIDE", "A", " a~ ", "FORTY LETTERS FORTY LETTERS FORTY LETTER")
                       select new[] { ("start", start), ("gramList", list), ("flags", flags), ("borderColor", border), ("year", $"{year}"), ("title", title) };
        return Prop.ForAll(settings.ToArbitrary(), stated =>
        {
            var first = Blank();
            foreach (var (field, value) in stated)
                first.Header(field, value);
            var rom = first.Assemble().Rom();
            var again = Blank();
            foreach (var entry in HeaderReader.Read(IntvHeader.Table, rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
                again.Header(entry.Field.Name, entry.Text);
            Assert.Equal(rom, again.Assemble().Rom());
        });
    }

    private static RomBench Blank() => new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0x80, IntvPrograms.Noise(0x1F80));
}
