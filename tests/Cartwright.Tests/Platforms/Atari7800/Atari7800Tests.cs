using Cartwright.Platforms.Atari7800;
using Cartwright.Roms;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari7800;

public sealed class Atari7800Tests
{
    private const string Carried = "CW4501";

    public static TheoryData<string, int> Every() => new(Atari7800Scheme.All.SelectMany(scheme => scheme.Sizes.Select(size => (scheme.Name, (int)size))));

    // That the signature is carried and not made is all there is to say.
    [Theory]
    [MemberData(nameof(Every))]
    public void A_clean_signed_cart_is_its_program(string scheme, int size)
    {
        var bench = Atari7800Programs.Bench(scheme, size);
        var cart = bench.Assemble();
        Assert.Equal([Carried], bench.Codes());
        Assert.Equal(Atari7800Programs.Whole(scheme, size), cart.Rom());
        Assert.Equal("a78", new Atari7800Platform().Extension(cart));
    }

    // Atari 7800 wiki, ROM footer.
    [Theory]
    [InlineData("linear", 0x2000, "E7")]
    [InlineData("linear", 0x4000, "C7")]
    [InlineData("linear", 0x8000, "87")]
    [InlineData("linear", 0xC000, "47")]
    [InlineData("supergame", 0x20000, "C7")]
    [InlineData("supergame-9-bank", 0x24000, "C7")]
    [InlineData("absolute", 0x10000, "87")]
    public void The_footer_is_written_without_a_signature(string scheme, int size, string signedFrom)
    {
        var bench = new RomBench(new Atari7800Platform()).Header("scheme", scheme).Program("rom", -0x1000, TestBytes.All(0x78, 0xF80)).Size("rom", size)
            .Header("resetVector", "$F000").Header("nmiVector", "$F010").Header("irqVector", "$F020");
        var rom = bench.Assemble().Rom();
        Assert.Equal(["CW4499"], bench.Codes());
        Assert.Equal("FF" + signedFrom + "10F000F020F0", Convert.ToHexString(rom.AsSpan(size - 8)));
        Assert.False(rom.AsSpan(size - 0x80, Atari7800Footer.SignatureLength).ContainsAnyExcept((byte)0xFF));
    }

    // The processor's last 128 bytes of this scheme are not the file's (from memory).
    [Fact]
    public void The_footer_of_halves_lies_before_their_second_half()
    {
        var cart = Atari7800Programs.Bench("activision", 0x20000).Assemble();
        Assert.Equal(0x1DF80, cart.Headers[0].Entries.First(entry => entry.Field.Name == "signature").Offset);
        Assert.Equal("0xF000", cart["resetVector"]);
    }

    [Fact]
    public void A_signature_is_kept_whatever_is_stated_beside_it()
    {
        var program = Atari7800Programs.Whole();
        var rom = Atari7800Programs.Bench("linear", program).Header("startUpLogo", "shown").Assemble().Rom();
        Assert.Equal(TestBytes.L(120), rom[^0x80..^8]);
    }

    // 8 to 48 KiB lie at the top of the addresses.
    [Theory]
    [InlineData(0x1000, 0x2000)]
    [InlineData(0x2800, 0x4000)]
    [InlineData(0x8001, 0xC000)]
    public void Short_programs_end_where_the_addresses_end(int length, int size)
    {
        var bytes = TestBytes.All(0xEA, length);
        Atari7800Programs.Whole()[^0x1000..].CopyTo(bytes, length - 0x1000);
        var rom = new RomBench(new Atari7800Platform()).Program("rom", 0, bytes).Assemble().Rom();
        Assert.Equal(size, rom.Length);
        Assert.Equal(bytes, rom[^length..]);
        Assert.False(rom.AsSpan(0, size - length).ContainsAnyExcept((byte)0xFF));
    }

    // A78 Header Specification; 128 KiB SuperGame, "TESTCART", computed twice by programs of their own.
    [Fact]
    public void The_worked_container()
    {
        var container = Atari7800Programs.Bench("supergame", 0x20000).Assemble().Container();
        Assert.Equal("00000200000002010100" + "000000000000", Convert.ToHexString(container.AsSpan(0x30, 16)));
        Assert.Equal("C67F9DEE", TestBytes.Crc(container));
    }

    [Theory]
    [InlineData("linear", 0xC000, 0x0000)]
    [InlineData("supergame", 0x20000, 0x0002)]
    [InlineData("supergame-bank-6", 0x20000, 0x0012)]
    [InlineData("supergame-9-bank", 0x24000, 0x000A)]
    [InlineData("activision", 0x20000, 0x0100)]
    [InlineData("absolute", 0x10000, 0x0200)]
    public void Cart_types_follow_from_the_scheme(string scheme, int size, int type)
    {
        var container = Atari7800Programs.Bench(scheme, size).Assemble().Container();
        Assert.Equal(type, (container[0x35] << 8) | container[0x36]);
        Assert.Equal(size, (container[0x31] << 24) | (container[0x32] << 16) | (container[0x33] << 8) | container[0x34]);
    }

    [Theory]
    [InlineData("soundAt4000", "true", 0x36, 0x01)]
    [InlineData("ramAt4000", "true", 0x36, 0x04)]
    [InlineData("bankedRam", "true", 0x36, 0x20)]
    [InlineData("soundAt450", "true", 0x36, 0x40)]
    [InlineData("mirrorRamAt4000", "true", 0x36, 0x80)]
    [InlineData("soundAt440", "true", 0x35, 0x04)]
    [InlineData("fmSound", "true", 0x35, 0x08)]
    [InlineData("controller1", "none", 0x37, 0x00)]
    [InlineData("controller2", "light-gun", 0x38, 0x02)]
    [InlineData("television", "pal", 0x39, 0x01)]
    [InlineData("highScoreCartridge", "true", 0x3A, 0x01)]
    [InlineData("memoryKey", "true", 0x3A, 0x02)]
    [InlineData("passThrough", "0x01", 0x3F, 0x01)]
    public void Fields_of_the_container(string field, string value, int at, int expected) =>
        Assert.Equal(expected, Atari7800Programs.Bench().Header(field, value).Assemble().Container()[at]);

    [Theory]
    [InlineData("mapper", "0x02", 0x40, "02")]
    [InlineData("mapperOptions", "0x03", 0x41, "03")]
    [InlineData("audio", "0x0102", 0x42, "0102")]
    [InlineData("interrupts", "0x0304", 0x44, "0304")]
    public void Fields_of_the_fourth_version_ask_for_it(string field, string value, int at, string digits)
    {
        var container = Atari7800Programs.Bench().Header(field, value).Assemble().Container();
        Assert.Equal(4, container[0]);
        Assert.Equal(digits, Convert.ToHexString(container.AsSpan(at, digits.Length / 2)));
    }

    [Fact]
    public void Without_a_container()
    {
        var cart = Atari7800Programs.Bench().Header("container", "none").Assemble();
        Assert.Single(cart.Headers);
        Assert.Equal("bin", new Atari7800Platform().Extension(cart));
    }

    // Atari 7800 bankswitching guide; The SuperGame Format; activision and absolute from memory.
    [Theory]
    [InlineData("linear", "$C000", -0x4000)]
    [InlineData("linear", "$4000", -0xC000)]
    [InlineData("supergame", "$C000", -0x4000)]
    [InlineData("supergame", "03:8010", 0xC010)]
    [InlineData("supergame-bank-6", "$4000", -0x8000)]
    [InlineData("supergame-9-bank", "$4010", 0x10)]
    [InlineData("supergame-9-bank", "00:8010", 0x4010)]
    [InlineData("activision", "$4000", 0x1A000)]
    [InlineData("activision", "$6000", 0x18000)]
    [InlineData("activision", "$8000", 0x1E000)]
    [InlineData("activision", "03:A010", 0xC010)]
    [InlineData("activision", "$E000", 0x1C000)]
    [InlineData("absolute", "01:4010", 0x4010)]
    [InlineData("absolute", "$8000", -0x8000)]
    public void Addresses(string scheme, string text, long offset) => Assert.Equal((null, offset), (Locate(scheme, text).Problem, Locate(scheme, text).Offset));

    [Theory]
    [InlineData("linear", "$3000", "not among")]
    [InlineData("linear", "01:C000", "no bank")]
    [InlineData("supergame", "$8000", "write bank:address")]
    [InlineData("supergame", "$4000", "no ROM")]
    [InlineData("supergame", "20:8000", "00 to 1F")]
    [InlineData("supergame-9-bank", "08:8000", "00 to 07")]
    [InlineData("absolute", "02:4000", "00 to 01")]
    public void Addresses_elsewhere(string scheme, string text, string words) => Assert.Contains(words, Locate(scheme, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("linear", 0x4001, 0x8000)]
    [InlineData("linear", 0xC001, null)]
    [InlineData("supergame", 0x24000, 0x40000)]
    [InlineData("supergame-9-bank", 1, 0x24000)]
    [InlineData("absolute", 0x10001, null)]
    public void Sizes(string scheme, long needed, int? fit) => Assert.Equal(fit, Atari7800Scheme.Named(scheme).SizeRule.Fit(needed));

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_cart() => Prop.ForAll(Settings().ToArbitrary(), settings =>
    {
        var first = Blank(settings).TryAssemble()!;
        var again = Blank([settings[0], .. Atari7800Programs.Read(first).Select(entry => (entry.Field.Name, entry.Text))]).TryAssemble()!;
        Assert.Equal(first.Rom(), again.Rom());
        Assert.Equal(first.Container(), again.Container());
    });

    private static RomBench Blank((string Field, string Value)[] settings)
    {
        var bench = new RomBench(new Atari7800Platform()).Program("rom", -0x4000, TestBytes.All(0xEA, 0x3F80)).Size("rom", settings[0].Value == "linear" ? 0x4000 : 0x20000);
        foreach (var (field, value) in settings)
            bench.Header(field, value);
        return bench;
    }

    private static Gen<(string Field, string Value)[]> Settings() =>
        from scheme in Gen.Elements("linear", "supergame", "supergame-bank-6")
        from page in Gen.Elements("at-C000", "at-F000", "0x2")
        from logo in Gen.Elements("shown", "left-out", "0x1")
        from region in Gen.Choose(0, 15)
        from reset in Gen.Choose(0xC000, 0xFF7F)
        from bits in Gen.Choose(0, 0xF)
        from version in Gen.Elements("1", "4")
        select new[]
        {
            ("scheme", scheme), ("signature", Convert.ToHexString(TestBytes.L(120 + bits)[bits..])), ("regionMark", $"0x{region:X}"), ("signedFrom", page), ("startUpLogo", logo),
            ("resetVector", $"${reset:X4}"), ("television", (bits & 1) == 0 ? "ntsc" : "pal"), ("memoryKey", (bits & 2) == 0 ? "false" : "true"), ("soundAt450", (bits & 4) == 0 ? "false" : "true"),
            ("version", version),
        };

    private static AddressPlace Locate(string scheme, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new Atari7800Addresses(Atari7800Scheme.Named(scheme)).Locate(address, _ => null) : throw new ArgumentException(text);
}
