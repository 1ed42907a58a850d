using Cartwright.Platforms;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

/// <summary>What `file` (libmagic) says of ROMs built here.</summary>
public sealed class GameBoyFileTests
{
    [Fact]
    public void It_prints_title_revision_type_and_sizes()
    {
        var words = Describe(Programs.Bench(0x40000).Header("cartridgeType", "mbc5-ram-battery").Header("saveRam", "32KiB").Header("version", "2").Assemble());
        Assert.StartsWith("Game Boy ROM image: \"LANTERN TIDE\" (Rev.02)", words, StringComparison.Ordinal);
        Assert.Contains("[MBC5+RAM+BATT]", words, StringComparison.Ordinal);
        Assert.Contains("ROM: 2Mbit", words, StringComparison.Ordinal);
        Assert.Contains("RAM: 256Kbit", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compatible", "none", "[CGB]")]
    [InlineData("only", "none", "[CGB ONLY]")]
    [InlineData("compatible", "sgb", "[SGB+CGB]")]
    [InlineData("none", "sgb", "[SGB]")]
    public void It_knows_the_flags(string color, string super, string mark) =>
        Assert.Contains(mark, Describe(Programs.Bench().Header("cgbFlag", color).Header("sgbFlag", super).Header("newLicensee", "QS").Assemble()), StringComparison.Ordinal);

    [Theory]
    [InlineData("rom", "[ROM ONLY]")]
    [InlineData("mbc1-ram-battery", "[MBC1+RAM+BATT]")]
    [InlineData("mbc2-battery", "[MBC2+BATTERY]")]
    [InlineData("mbc3-timer-ram-battery", "[MBC3+TIMER+RAM+BATT]")]
    [InlineData("mbc5", "[MBC5]")]
    [InlineData("mbc5-rumble-ram-battery", "[MBC5+RUMBLE+SRAM+BATT]")]
    [InlineData("camera", "[Pocket Camera]")]
    [InlineData("huc1-ram-battery", "[Hudson HuC-1]")]
    public void It_knows_the_types(string type, string mark) =>
        Assert.Contains(mark, Describe(Programs.Bench().Header("cartridgeType", type).Assemble()), StringComparison.Ordinal);

    [Theory]
    [InlineData("8KiB", "RAM: 64Kbit")]
    [InlineData("64KiB", "RAM: 512Kbit")]
    [InlineData("128KiB", "RAM: 1Mbit")]
    public void It_knows_the_RAM_sizes(string size, string mark) =>
        Assert.Contains(mark, Describe(Programs.Bench().Header("cartridgeType", "mbc5-ram-battery").Header("saveRam", size).Assemble()), StringComparison.Ordinal);

    private static string Describe(CartView cart)
    {
        Tool.Require("file");
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.WriteAllBytes(Path.Combine(folder.FullName, "lantern-tide.gb"), cart.Bytes("rom"));
            return Tool.Run("file", folder.FullName, "-b", "lantern-tide.gb").Output.Trim();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
