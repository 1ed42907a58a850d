using Cartwright.Platforms.Atari2600;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari2600;

public sealed class BankSchemeTests
{
    public static TheoryData<string, int> Every() => new(BankSchemes.All.SelectMany(scheme => scheme.Sizes.Select(size => (scheme.Name, (int)size))));

    [Theory]
    [MemberData(nameof(Every))]
    public void A_clean_cart_has_no_findings_and_is_its_program(string scheme, int size)
    {
        var bench = Atari2600Programs.Bench(scheme, size);
        var cart = bench.Assemble();
        Assert.Empty(bench.Codes());
        Assert.Equal(Atari2600Programs.Whole(scheme, size), cart.Rom());
        Assert.Empty(cart.Headers);
        Assert.Equal("a26", new Atari2600Platform().Extension(cart));
    }

    // Bank-Switching: sizes and RAM of f4, f6, sc, e0, e7, 3f, 3e, ef, df, bf and 0840. 2600 F8 bank switching: hot spots of f8. The others from memory.
    [Theory]
    [InlineData("2k", 2, 2048, -1, -1, 0, PowerOn.Only, 0)]
    [InlineData("4k", 4, 4096, -1, -1, 0, PowerOn.Only, 0)]
    [InlineData("4ksc", 4, 4096, -1, -1, 0x100, PowerOn.Only, 0)]
    [InlineData("cv", 2, 2048, -1, -1, 0, PowerOn.Only, 0)]
    [InlineData("f8", 8, 4096, 0xFF8, 0xFF9, 0, PowerOn.Any, 0)]
    [InlineData("f8sc", 8, 4096, 0xFF8, 0xFF9, 0x100, PowerOn.Any, 0)]
    [InlineData("f6", 16, 4096, 0xFF6, 0xFF9, 0, PowerOn.Any, 0)]
    [InlineData("f6sc", 16, 4096, 0xFF6, 0xFF9, 0x100, PowerOn.Any, 0)]
    [InlineData("f4", 32, 4096, 0xFF4, 0xFFB, 0, PowerOn.Any, 0)]
    [InlineData("f4sc", 32, 4096, 0xFF4, 0xFFB, 0x100, PowerOn.Any, 0)]
    [InlineData("fa", 12, 4096, 0xFF8, 0xFFA, 0x200, PowerOn.Known, 2)]
    [InlineData("e0", 8, 1024, -1, -1, 0, PowerOn.Fixed, 0)]
    [InlineData("e7", 16, 2048, -1, -1, 0, PowerOn.Fixed, 0)]
    [InlineData("fe", 8, 4096, -1, -1, 0, PowerOn.Known, 0)]
    [InlineData("3f", 512, 2048, -1, -1, 0, PowerOn.Fixed, 0)]
    [InlineData("3e", 512, 2048, -1, -1, 0, PowerOn.Fixed, 0)]
    [InlineData("ua", 8, 4096, -1, -1, 0, PowerOn.Known, 0)]
    [InlineData("0840", 8, 4096, -1, -1, 0, PowerOn.Known, 0)]
    [InlineData("f0", 64, 4096, 0xFF0, 0xFF0, 0, PowerOn.Any, 0)]
    [InlineData("ef", 64, 4096, 0xFE0, 0xFEF, 0, PowerOn.Any, 0)]
    [InlineData("efsc", 64, 4096, 0xFE0, 0xFEF, 0x100, PowerOn.Any, 0)]
    [InlineData("df", 128, 4096, 0xFC0, 0xFDF, 0, PowerOn.Any, 0)]
    [InlineData("dfsc", 128, 4096, 0xFC0, 0xFDF, 0x100, PowerOn.Any, 0)]
    [InlineData("bf", 256, 4096, 0xF80, 0xFBF, 0, PowerOn.Any, 0)]
    [InlineData("bfsc", 256, 4096, 0xF80, 0xFBF, 0x100, PowerOn.Any, 0)]
    [InlineData("wd", 8, 1024, -1, -1, 0, PowerOn.Any, 0)]
    [InlineData("dpc", 8, 4096, 0xFF8, 0xFF9, 0, PowerOn.Any, 0)]
    public void The_rows(string name, int largest, int bank, int firstSpot, int lastSpot, int hidden, PowerOn powerOn, int firstBank)
    {
        var scheme = Assert.Single(BankSchemes.All, row => row.Name == name);
        Assert.Equal((largest << 10, bank, firstSpot, lastSpot), (scheme.Sizes[^1], scheme.Bank, scheme.FirstHotSpot, scheme.LastHotSpot));
        Assert.Equal((hidden, powerOn, firstBank), (scheme.HiddenInBanks, scheme.PowerOn, scheme.FirstBank));
    }

    [Fact]
    public void The_scheme_must_be_stated()
    {
        var bench = new RomBench(new Atari2600Platform()).Program("rom", 0, Atari2600Programs.Whole("4k", 0x1000));
        Assert.NotNull(bench.TryAssemble());
        Assert.Equal(["CW4002"], bench.Codes());
        Assert.Contains("one of 2k, 4k", bench.Log.ToSorted()[0].Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2k", 1, 0x800)]
    [InlineData("2k", 0x801, null)]
    [InlineData("4k", 0x801, 0x1000)]
    [InlineData("fa", 0x2001, 0x3000)]
    [InlineData("e7", 0x2001, 0x3000)]
    [InlineData("3f", 0x8001, 0x10000)]
    [InlineData("f4", 0x8001, null)]
    public void Sizes_that_fit(string scheme, long needed, int? fit) => Assert.Equal(fit, BankSchemes.Named(scheme).SizeRule.Fit(needed));

    [Theory]
    [InlineData("3f", 0x2800, true)]
    [InlineData("3f", 0x2400, false)]
    [InlineData("f8", 0x1000, false)]
    public void Sizes_that_are_legal(string scheme, long size, bool legal) => Assert.Equal(legal, BankSchemes.Named(scheme).SizeRule.Allows(size));

    [Theory]
    [InlineData("4k", "$F000", -0x1000)]
    [InlineData("4k", "$1FFC", -4)]
    [InlineData("2k", "$F000", -0x800)]
    [InlineData("2k", "$FFFC", -4)]
    [InlineData("cv", "$F800", -0x800)]
    [InlineData("f8", "01:F000", 0x1000)]
    [InlineData("f8", "$01F123", 0x1123)]
    [InlineData("f4", "07:1FFC", 0x7FFC)]
    [InlineData("fe", "$D000", 0x1000)]
    [InlineData("fe", "$F000", 0)]
    [InlineData("e0", "$FC00", -0x400)]
    [InlineData("e0", "05:F000", 0x1400)]
    [InlineData("3f", "$F800", -0x800)]
    [InlineData("3f", "03:F123", 0x1923)]
    public void Addresses(string scheme, string text, long offset) => Assert.Equal((null, offset), (Locate(scheme, text).Problem, Locate(scheme, text).Offset));

    [Theory]
    [InlineData("4k", "$E000", "not among")]
    [InlineData("4k", "01:F000", "one bank")]
    [InlineData("cv", "$F000", "not among")]
    [InlineData("f8", "$F000", "write bank:address")]
    [InlineData("f8", "02:F000", "00 to 01")]
    [InlineData("3f", "01:F800", "without a bank")]
    public void Addresses_elsewhere(string scheme, string text, string words) => Assert.Contains(words, Locate(scheme, text).Problem, StringComparison.Ordinal);

    // The banks count in the order of the file.
    [Fact]
    public void Banks_given_one_by_one_stand_in_order()
    {
        var whole = Atari2600Programs.Whole("f8", 0x2000);
        var bench = new RomBench(new Atari2600Platform()).Header("scheme", "f8").Program("rom", Locate("f8", "01:F000").Offset, whole[0x1000..]).Program("rom", Locate("f8", "00:F000").Offset, whole[..0x1000]);
        Assert.Equal(whole, bench.Assemble().Rom());
    }

    // No byte is the header's: the ROM is the program, whatever it holds.
    [Property(MaxTest = 60)]
    public void The_ROM_is_the_program(byte[] bytes, byte choice)
    {
        var scheme = BankSchemes.All[choice % BankSchemes.All.Length];
        var program = new byte[scheme.Sizes[0]];
        for (var i = 0; i < program.Length && bytes.Length > 0; i++)
            program[i] = bytes[i % bytes.Length];
        Assert.Equal(program, Atari2600Programs.Bench(scheme.Name, program).TryAssemble()!.Rom());
    }

    private static AddressPlace Locate(string scheme, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new Atari2600Addresses(BankSchemes.Named(scheme)).Locate(address, _ => null) : throw new ArgumentException(text);
}
