using Cartwright.Platforms.Atari8Bit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

public sealed class ComputerCheckTests
{
    [Fact]
    public void A_container_left_in_front()
    {
        var bench = ComputerPrograms.Bench("standard", [.. ComputerPrograms.Bench().Header("container", "cart").Assemble().Container(), .. ComputerPrograms.Whole()]);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW4485"], bench.Codes());
    }

    [Theory]
    [InlineData("01", "CW4486")]
    [InlineData("FE", "CW4486")]
    [InlineData("00", null)]
    public void The_presence_byte(string digits, string? code) => Only(code, ComputerPrograms.Bench(at: -4, digits: digits));

    [Fact]
    public void An_erased_presence_byte_is_written() => Assert.Equal(0, ComputerPrograms.Bench(at: -4, digits: "FF").Assemble().Rom()[^4]);

    [Theory]
    [InlineData(0x0000, 0x04, "CW4487")]
    [InlineData(0xFFFF, 0x04, "CW4487")]
    [InlineData(0x0000, 0x00, null)]
    [InlineData(0x0000, 0x80, "CW4492")]
    [InlineData(0xBF00, 0x84, "CW4492")]
    [InlineData(0xE000, 0x04, "CW4488")]
    [InlineData(0x9FFF, 0x04, "CW4488")]
    [InlineData(0xE000, 0x00, "CW4493")]
    [InlineData(0xBF00, 0x00, "CW4493")]
    [InlineData(0xFFFF, 0x00, null)]
    public void The_run_address(int run, byte options, string? code) =>
        Only(code, ComputerPrograms.Bench("standard", TestBytes.All(0xEA, 0x2000).PutTrailer(0x2000, run, options, 0xBF00)));

    [Theory]
    [InlineData("right-slot", 0xBF10, "CW4488")]
    [InlineData("standard", 0x9F10, "CW4488")]
    [InlineData("standard", 0x0600, "CW4488")]
    [InlineData("right-slot", 0x9F10, null)]
    public void The_init_address(string scheme, int init, string? code) =>
        Only(code, ComputerPrograms.Bench(scheme, TestBytes.All(0xEA, 0x2000).PutTrailer(0x2000, scheme == "right-slot" ? 0x9F00 : 0xBF00, 0x04, init)));

    // Only what is never switched is certain: $8000 shows any bank.
    [Fact]
    public void An_init_address_in_a_bank_of_choice() =>
        Only("CW4488", ComputerPrograms.Bench("xegs", TestBytes.All(0xEA, 0x8000).PutTrailer(0x8000, 0xA000, 0x04, 0x8000)));

    [Theory]
    [InlineData("$A100", "$BF00", "CW4489")]
    [InlineData("$BF00", "$A100", "CW4489")]
    [InlineData("$BF00", "$BF10", null)]
    public void An_address_of_fill(string run, string init, string? code) =>
        Only(code, new RomBench(new Atari8BitPlatform()).Program("rom", -0x200, TestBytes.All(0xEA, 0x1FA)).Header("runAddress", run).Header("initAddress", init).Size("rom", 0x2000));

    [Fact]
    public void No_init_address()
    {
        var bench = new RomBench(new Atari8BitPlatform()).Program("rom", -0x2000, TestBytes.All(0xEA, 0x1FFA)).Header("runAddress", "$A000");
        bench.TryAssemble();
        Assert.Equal(["CW4002"], bench.Codes());
    }

    [Theory]
    [InlineData("standard", 0x4000, 0x2000)]
    [InlineData("xegs", 0x8000, 0x2000)]
    public void The_part_with_the_start_is_not_last(string scheme, int size, int moved)
    {
        var whole = ComputerPrograms.Whole(scheme, size);
        var bench = ComputerPrograms.Bench(scheme, [.. whole[moved..], .. whole[..moved]]);
        bench.TryAssemble();
        var finding = Assert.Single(bench.Log.ToSorted(), finding => finding.Rule == Atari8BitFindings.TrailerElsewhere);
        Assert.Equal("CW4490", finding.Code);
        Assert.Contains($"0x{size - moved - 6:X6}", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("megacart", 0x8000, 0x3FFC, "CW4491")]
    [InlineData("williams", 0x8000, 0x7FFC, "CW4491")]
    [InlineData("oss", 0x4000, 0x3FFC, "CW4491")]
    [InlineData("oss", 0x4000, 0x2FFC, null)]
    public void A_bank_without_a_trailer(string scheme, int size, int at, string? code) => Only(code, ComputerPrograms.Bench(scheme, size, at, "EA"));

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
