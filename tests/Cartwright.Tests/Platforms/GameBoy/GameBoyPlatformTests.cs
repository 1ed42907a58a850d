using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyPlatformTests
{
    [Theory]
    [InlineData("gb")]
    [InlineData("GBC")]
    [InlineData("game-boy")]
    [InlineData("game-boy-color")]
    public void The_catalogue_knows_it(string name) => Assert.IsType<GameBoyPlatform>(PlatformCatalog.BuiltIn.Find(name));

    [Theory]
    [InlineData("none", "gb")]
    [InlineData("compatible", "gbc")]
    [InlineData("only", "gbc")]
    public void The_extension_follows_the_flag(string flag, string extension) =>
        Assert.Equal(extension, new GameBoyPlatform().Extension(Programs.Bench().Header("cgbFlag", flag).Assemble()));

    [Fact]
    public void A_whole_title_is_no_flag() => Assert.Equal("gb", new GameBoyPlatform().Extension(Programs.Bench(title: "ABCDEFGHIJKLMNOP").Assemble()));

    [Theory]
    [InlineData("mmm01", "mmm01")]
    [InlineData("MMM01-RAM", "mmm01")]
    [InlineData("0x0D", "mmm01")]
    [InlineData("mbc5", "gb")]
    [InlineData("0x10B", "gb")]
    [InlineData("bogus", "gb")]
    public void An_MMM01_has_a_layout_of_its_own(string type, string variant)
    {
        var settings = HeaderSettings.None with { Values = HeaderSettings.None.Values.Add("cartridgeType", new ManifestValue(type, default)) };
        Assert.Equal(variant, new GameBoyPlatform().Layout(settings).Variant);
        Assert.Equal("gb", new GameBoyPlatform().Layout(HeaderSettings.None).Variant);
    }

    // Pan Docs, MMM01: the last 32 KiB are seen after power-on and need a valid header.
    [Fact]
    public void An_MMM01_gets_a_second_header_at_its_end()
    {
        var program = Programs.Whole(0x20000);
        program.AsSpan(0x18100, 0x50).Clear();
        Programs.Entry.CopyTo(program.AsSpan(0x18100));
        "QUILLMOOR"u8.CopyTo(program.AsSpan(0x18134));
        var bench = new RomBench(new GameBoyPlatform()).Program("rom", 0, program).Header("cartridgeType", "mmm01");
        var rom = bench.Assemble().Bytes("rom").ToArray();
        Assert.Empty(bench.Codes());
        Assert.Equal(BootBitmap.Bytes, rom.AsSpan(0x18104, 48));
        Assert.Equal("QUILLMOOR"u8, rom.AsSpan(0x18134, 9));
        Assert.True(GameBoyChecksums.HeaderIsRight(rom.AsSpan(0x18100)));
        Assert.All(GameBoyChecksumTests.Read(rom).Checksums, entry => Assert.True(entry.Right, entry.Row.Name));
    }

    [Fact]
    public void Every_byte_of_the_header_has_an_owner()
    {
        var owned = new bool[GameBoyHeader.Length];
        foreach (var (offset, length) in GameBoyHeader.Main.Fields.Select(field => (field.Offset, field.Length)).Concat(GameBoyHeader.Main.Checksums.Select(row => (row.Offset, row.Length))))
            owned.AsSpan(offset, length).Fill(true);

        Assert.DoesNotContain(false, owned);
    }

    // Controllers and their ranges: Pan Docs, chapters on the MBCs and MMM01.
    [Theory]
    [InlineData("rom", 0x8000, 0x2000)]
    [InlineData("mbc1", 0x200000, 0x2000)]
    [InlineData("mbc1", 0x80000, 0x8000)]
    [InlineData("mbc2", 0x40000, 0)]
    [InlineData("mbc3", 0x400000, 0x10000)]
    [InlineData("mbc5", 0x800000, 0x20000)]
    [InlineData("mmm01", 0x800000, 0x20000)]
    [InlineData("mbc7-sensor-rumble-ram-battery", 0x200000, 0)]
    public void Controllers_hold_what_is_documented_and_no_more(string type, long rom, long ram)
    {
        var limits = CartridgeTypes.All.Single(row => row.Name == type).Controller.Limits;
        Assert.Contains(limits, limit => limit.Holds(rom, ram));
        Assert.DoesNotContain(limits, limit => limit.Holds(rom * 2, ram));
        Assert.DoesNotContain(limits, limit => limit.Ram is not null && limit.Holds(rom, Math.Max(ram * 2, 1)));
    }
}
