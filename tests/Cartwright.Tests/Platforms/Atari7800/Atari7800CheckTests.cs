using Cartwright.Platforms.Atari7800;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari7800;

public sealed class Atari7800CheckTests
{
    private const string Carried = "CW4501";

    [Fact]
    public void A_container_left_in_front()
    {
        var bench = Atari7800Programs.Bench("linear", [.. Atari7800Programs.Bench().Assemble().Container(), .. Atari7800Programs.Whole()]);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW4495"], bench.Codes());
    }

    [Theory]
    [InlineData("linear", 0x4000, 0x8000, "CW4496,CW4505")]
    [InlineData("linear", 0x4000, 0x0200, "CW4496,CW4505")]
    [InlineData("linear", 0x2000, 0xC000, "CW4496,CW4505")]
    [InlineData("supergame", 0x20000, 0x4000, "CW4496,CW4505")]
    [InlineData("supergame", 0x20000, 0x8000, "CW4498,CW4505")]
    [InlineData("activision", 0x20000, 0xA000, "CW4498,CW4505")]
    [InlineData("absolute", 0x10000, 0x4000, "CW4498,CW4505")]
    [InlineData("linear", 0x4000, 0xF123, "")]
    public void Reset_vectors(string scheme, int size, int reset, string codes) => Only(codes, Atari7800Programs.Bench(scheme, size, reset: reset));

    [Fact]
    public void A_reset_vector_into_fill() =>
        Only("CW4497", new RomBench(new Atari7800Platform()).Program("rom", -0x1000, Atari7800Programs.Whole(page: 0xC, reset: 0xC000)[^0x1000..]).Size("rom", 0x4000));

    [Fact]
    public void No_reset_vector()
    {
        var bench = Atari7800Programs.Bench(reset: 0xFFFF);
        bench.TryAssemble();
        Assert.Equal(["CW4002", Carried], bench.Codes());
    }

    // The console compares a digest of the signed area with the signature; without one it may refuse the cart. It is never made here.
    [Theory]
    [InlineData(0x00, "ntsc", "CW4499")]
    [InlineData(0xFF, "ntsc", "CW4499")]
    [InlineData(0xFF, "pal", "CW4500")]
    public void No_signature(byte value, string television, string code)
    {
        var bytes = Atari7800Programs.Whole();
        bytes.AsSpan(bytes.Length - 0x80, 120).Fill(value);
        var bench = Atari7800Programs.Bench("linear", bytes).Header("television", television);
        Assert.Equal(bytes, bench.Assemble().Rom());
        Assert.Equal([code], bench.Codes());
    }

    [Fact]
    public void What_may_come_of_it_is_said()
    {
        Assert.Contains("stays a 2600", Atari7800Findings.NoSignature.Why, StringComparison.Ordinal);
        var bench = Atari7800Programs.Bench(page: 0xE);
        bench.Assemble();
        var finding = Assert.Single(bench.Log.ToSorted());
        Assert.Equal(Carried, finding.Code);
        Assert.Contains("0x003F80-0x003FF7", finding.Message, StringComparison.Ordinal);
        Assert.Contains("$E000-$FF7F", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0F", "CW4502")]
    [InlineData("EF", "CW4502")]
    [InlineData("F0", "")]
    [InlineData("FF", "")]
    public void The_region_byte(string digits, string codes) => Only(codes, Atari7800Programs.Bench(at: -8, digits: digits));

    [Theory]
    [InlineData("F0", "CW4503")]
    [InlineData("F1", "CW4503")]
    [InlineData("F3", "")]
    [InlineData("F7", "")]
    public void The_start_up_mark(string digits, string codes) => Only(codes, Atari7800Programs.Bench(at: -7, digits: digits));

    [Theory]
    [InlineData("linear", 0x4000, 0x8, "CW4504")]
    [InlineData("linear", 0x4000, 0xC, "")]
    [InlineData("linear", 0xC000, 0x4, "")]
    [InlineData("supergame", 0x20000, 0x8, "CW4504")]
    [InlineData("supergame", 0x20000, 0xC, "")]
    [InlineData("activision", 0x20000, 0xA, "CW4504")]
    [InlineData("activision", 0x20000, 0xE, "")]
    [InlineData("absolute", 0x10000, 0x4, "CW4504")]
    public void The_signed_area(string scheme, int size, int page, string codes) => Only(codes, Atari7800Programs.Bench(scheme, size, page: page));

    [Theory]
    [InlineData(-6, "NMI")]
    [InlineData(-4, "reset")]
    [InlineData(-2, "IRQ")]
    public void Vectors_out_of_the_signed_area(int at, string name)
    {
        var bench = Atari7800Programs.Bench(at: at, digits: "00E0");
        bench.TryAssemble();
        var finding = Assert.Single(bench.Log.ToSorted(), finding => finding.Rule == Atari7800Findings.VectorUnsigned);
        Assert.Contains(name, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("supergame-bank-6", 0x20000, "ramAt4000", "CW4506")]
    [InlineData("supergame-9-bank", 0x24000, "soundAt4000", "CW4506")]
    [InlineData("supergame", 0x20000, "ramAt4000", "")]
    [InlineData("supergame-bank-6", 0x20000, "soundAt450", "")]
    public void What_lies_at_4000(string scheme, int size, string field, string codes) => Only(codes, Atari7800Programs.Bench(scheme, size).Header(field, "true"));

    [Fact]
    public void The_ninth_bank_at_the_end()
    {
        byte[] bytes = [.. Atari7800Programs.Whole("supergame", 0x20000), .. TestBytes.All(0xEA, 0x4000)];
        var bench = Atari7800Programs.Bench("supergame-9-bank", bytes);
        bench.TryAssemble();
        Assert.Contains("CW4507", bench.Codes());
    }

    private static void Only(string codes, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(codes.Split(',', StringSplitOptions.RemoveEmptyEntries), bench.Codes().Where(code => code != Carried));
    }
}
