using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

public sealed class ConsoleCheckTests
{
    [Fact]
    public void A_container_left_in_front()
    {
        var bench = ConsolePrograms.Bench("plain", [.. ConsolePrograms.Bench().Header("container", "cart").Assemble().Container(), .. ConsolePrograms.Whole()]);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW4475"], bench.Codes());
    }

    [Theory]
    [InlineData(0x3FFF, 0x8000, "CW4476")]
    [InlineData(0xC000, 0x8000, "CW4476")]
    [InlineData(0x4000, 0x8000, null)]
    [InlineData(0x4000, 0x1000, null)]
    public void Start_addresses(int start, int size, string? code) => Only(code, ConsolePrograms.Bench(size, start: start));

    [Fact]
    public void No_start()
    {
        var bench = ConsolePrograms.Bench(start: 0xFFFF);
        bench.TryAssemble();
        Assert.Equal(["CW4002"], bench.Codes());
    }

    [Fact]
    public void A_start_in_fill() => Only("CW4477", new RomBench(new Cartwright.Platforms.Atari8Bit.Atari5200Platform()) { Title = null }
        .Program("rom", -0x600, ConsolePrograms.Whole(0x600, 0xB000)).Size("rom", 0x2000));

    // "LANTERN TIDE" as ASCII; then in display codes.
    [Theory]
    [InlineData("4C414E5445524E205449444500000000", "CW4478")]
    [InlineData("2C212E3425322E003429242500000000", null)]
    public void The_titles_code(string digits, string? code) => Only(code, ConsolePrograms.Bench(at: -24, digits: digits + "00000000" + "5256"));

    [Theory]
    [InlineData("0000", "CW4479")]
    [InlineData("3833", "CW4479")]
    [InlineData("5833", "CW4479")]
    [InlineData("5853", null)]
    [InlineData("00FF", null)]
    public void The_years_code(string digits, string? code) => Only(code, ConsolePrograms.Bench(at: -4, digits: digits));

    [Theory]
    [InlineData(null, "CW4480")]
    [InlineData("skip", "CW4480")]
    [InlineData("2026", null)]
    public void A_title_that_nobody_sees(string? year, string? code)
    {
        var bench = ConsolePrograms.Bench(title: "LANTERN TIDE");
        Only(code, year is null ? bench : bench.Header("year", year));
    }

    // JSR and JMP below $6000 and from $8000 on: two chips; from $8000 and from $A000 on and none below: one.
    [Theory]
    [InlineData("plain", "200040200140200240200340" + "4C00804C01804C02804C0380", "CW4481")]
    [InlineData("plain", "200040200140200240" + "4C00804C01804C02804C0380", null)]
    [InlineData("two-chip", "200040200140200240200340" + "4C00804C01804C02804C0380", null)]
    [InlineData("two-chip", "2000A02001A02002A02003A0" + "4C00804C01804C02804C0380", "CW4481")]
    [InlineData("plain", "2000A02001A02002A02003A0" + "4C00804C01804C02804C0380", null)]
    public void One_chip_or_two(string scheme, string digits, string? code)
    {
        var bytes = ConsolePrograms.Whole(0x4000);
        Convert.FromHexString(digits).CopyTo(bytes, 0x100);
        Only(code, ConsolePrograms.Bench(scheme, bytes));
    }

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
