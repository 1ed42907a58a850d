using Cartwright.Platforms.Atari8Bit;
using Cartwright.Roms;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

/// <summary>The Atari 5200: title, year, start and places (public program sources; the rest from memory).</summary>
public sealed class ConsoleTests
{
    public static TheoryData<string, int> Every() => new(ConsoleScheme.All.SelectMany(scheme => scheme.KiB.Select(kib => (scheme.Name, kib))));

    [Theory]
    [MemberData(nameof(Every))]
    public void A_clean_cartridge_has_no_findings_and_is_its_program(string scheme, int kib)
    {
        var bench = ConsolePrograms.Bench(scheme, ConsolePrograms.Whole(kib << 10));
        var cart = bench.Assemble();
        Assert.Empty(bench.Codes());
        Assert.Equal(ConsolePrograms.Whole(kib << 10), cart.Rom());
        Assert.Equal("a52", new Atari5200Platform().Extension(cart));
    }

    // ATASCII less 0x20 for the title, digit + 0x50 for the year: 57 50 is 1970.
    [Fact]
    public void The_title_screen_is_written()
    {
        var bench = ConsolePrograms.Bench(title: "Lantern Tide").Header("year", "1970");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("2C212E3425322E003429242500000000" + "00000000" + "5750" + "00BE", Convert.ToHexString(rom.AsSpan(0x7FE8)));
        Assert.Equal(0xFF, rom[0x7FE7]);
    }

    [Theory]
    [InlineData("3", "EC")]
    [InlineData("1", "6C")]
    [InlineData("20000000000000000000", "AC")]
    public void Letters_have_colours(string colours, string first) =>
        Assert.StartsWith(first, Convert.ToHexString(ConsolePrograms.Bench(title: "LANTERN TIDE").Header("year", "26").Header("titleColours", colours).Assemble().Rom().AsSpan(0x7FE8)), StringComparison.Ordinal);

    [Theory]
    [InlineData("5750", "70")]
    [InlineData("5256", "26")]
    [InlineData("FFFF", "skip")]
    [InlineData("00FF", "hex 00FF")]
    [InlineData("0000", "hex 0000")]
    [InlineData("3833", "hex 3833")]
    public void Years(string digits, string text)
    {
        var field = new byte[2];
        Assert.Equal(text, new YearCodec().Read(Convert.FromHexString(digits)));
        Assert.Null(new YearCodec().Write(text, field));
        Assert.Equal(digits, Convert.ToHexString(field));
    }

    [Theory]
    [InlineData("198")]
    [InlineData("MCMLXXXIII")]
    [InlineData("hex 12")]
    [InlineData("")]
    public void No_years(string text) => Assert.NotNull(new YearCodec().Write(text, new byte[2]));

    [Theory]
    [InlineData("LANTERN TIDE LANTERN TIDE")]
    [InlineData("LANTERN~TIDE")]
    [InlineData("L\u00C4NTERN")]
    public void No_titles(string text) => Assert.NotNull(new DisplayTextCodec().Write(text, new byte[20]));

    [Theory]
    [InlineData("4")]
    [InlineData("012")]
    [InlineData("")]
    public void No_colours(string text) => Assert.NotNull(new LetterColourCodec().Write(text, new byte[20]));

    // An erased byte at $BFFD goes straight to the game.
    [Fact]
    public void Without_a_year_there_is_no_title_screen() => Assert.Equal("skip", ConsolePrograms.Bench().Assemble()["year"]);

    [Theory]
    [InlineData("plain", "$4000", 32, -0x8000)]
    [InlineData("plain", "$BFFE", 32, -2)]
    [InlineData("plain", "$4000", 16, -0x4000)]
    [InlineData("plain", "$8000", 16, -0x4000)]
    [InlineData("plain", "$7FFE", 16, -2)]
    [InlineData("plain", "$5FFF", 8, -1)]
    [InlineData("two-chip", "$4000", 16, -0x4000)]
    [InlineData("two-chip", "$6000", 16, -0x4000)]
    [InlineData("two-chip", "$8000", 16, -0x2000)]
    [InlineData("two-chip", "$A010", 16, -0x1FF0)]
    [InlineData("banked-40k", "02:4010", 40, 0x2010)]
    [InlineData("banked-40k", "01:5010", 40, 0x5010)]
    [InlineData("banked-40k", "$8000", 40, -0x2000)]
    [InlineData("banked-40k", "$A000", 40, -0x2000)]
    public void Addresses(string scheme, string text, int kib, long offset) => Assert.Equal((null, offset), (Locate(scheme, text, kib).Problem, Locate(scheme, text, kib).Offset));

    [Theory]
    [InlineData("plain", "$3FFF", "not among")]
    [InlineData("plain", "$C000", "not among")]
    [InlineData("plain", "01:8000", "never switched")]
    [InlineData("banked-40k", "$4000", "write bank:address")]
    [InlineData("banked-40k", "04:4000", "00 to 03")]
    [InlineData("banked-40k", "00:6000", "00 to 03")]
    public void Addresses_elsewhere(string scheme, string text, string words) => Assert.Contains(words, Locate(scheme, text, 32).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_short_program_is_at_the_end()
    {
        var rom = new RomBench(new Atari5200Platform()) { Title = null }.Program("rom", -0x600, ConsolePrograms.Whole(0x600)).Assemble().Rom();
        Assert.Equal(0x1000, rom.Length);
        Assert.Equal(ConsolePrograms.Whole(0x600), rom[0xA00..]);
    }

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_ROM() => Prop.ForAll(Settings().ToArbitrary(), settings =>
    {
        var first = Blank(settings);
        var rom = first.TryAssemble()!;
        var again = Blank([.. ComputerPrograms.Read(rom.Headers[0], rom.Rom(), []).Entries.Select(entry => (entry.Field.Name, entry.Text))]);
        Assert.Equal(rom.Rom(), again.TryAssemble()!.Rom());
    });

    private static RomBench Blank((string Field, string Value)[] settings)
    {
        var bench = new RomBench(new Atari5200Platform()) { Title = null }.Program("rom", -0x8000, TestBytes.All(0xEA, 0x7FE7));
        foreach (var (field, value) in settings)
            bench.Header(field, value);
        return bench;
    }

    private static Gen<(string Field, string Value)[]> Settings() =>
        from title in Gen.Elements("", "LANTERN TIDE", "_?!", "0123456789ABCDEFGHIJ")
        from colours in Gen.Elements("0", "3", "01230123012301230123")
        from year in Gen.Elements("26", "1983", "skip", "hex 0000")
        from start in Gen.Choose(0x4000, 0xBF00)
        from pal in Gen.Choose(0, 0xFF)
        select new[] { ("title", title), ("titleColours", colours), ("year", year), ("startAddress", $"${start:X4}"), ("palMark", $"0x{pal:X2}") };

    private static AddressPlace Locate(string scheme, string text, int kib) =>
        ConsoleAddress.TryParse(text, out var address) ? new ConsoleAddresses(ConsoleScheme.Named(scheme)).Locate(address, _ => kib << 10) : throw new ArgumentException(text);
}
