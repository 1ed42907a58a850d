using Cartwright.Boards;
using Cartwright.Platforms;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class CommodoreBoardTests
{
    [Theory]
    [InlineData("8k", 0x2000, "c64-8k-single-8bit", "2000", false)]
    [InlineData("16k", 0x4000, "c64-16k-single-8bit", "4000", false)]
    [InlineData("16k", 0x4000, "c64-16k-double-8bit", "2000 2000", false)]
    [InlineData("16k", 0x4000, "c64-8k-single-8bit", "", true)]
    [InlineData("type-5", 0x40000, "c64-banked-8bit", "40000", false)]
    [InlineData("type-5", 0x40000, "c64-banked-halves-8bit", "20000 20000", false)]
    [InlineData("type-8", 0x10000, "c64-banked-8bit", "10000", false)]
    [InlineData("type-8", 0x10000, "c64-banked-halves-8bit", "10000", true)]
    public void Chips_of_the_boards(string mapping, int size, string board, string chips, bool told)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", C64(mapping, size).Assemble().Rom());
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "c64" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "mapping": "{{mapping}}" },
              "board": { "use": "{{board}}" }
            }
            """);
        var build = bench.Build();
        Assert.Equal(told, build.Findings.Any(finding => finding.Code == BoardFindings.NotWiredFor.Code));
        if (chips.Length > 0)
            Assert.Equal(chips, string.Join(' ', build.Chips.Select(chip => chip.Capacity.ToString("X"))));
        else
            Assert.Contains(build.Findings, finding => finding.Code == BoardFindings.RomTooLarge.Code);
    }

    // Worked by two programs: 1 MiB of banks of ROML and ROMH dealt in blocks of 2000h.
    [Fact]
    public void Two_flash_chips_get_the_halves_of_the_banks()
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", TestBytes.L(0x100000));
        bench.Manifest("""
            {
              "cart": { "name": "lantern-tide", "platform": "c64" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "mapping": "type-32" },
              "board": { "use": "c64-banked-double-8bit" }
            }
            """);
        Assert.Equal(["B470D63D", "83741FBD"], bench.Build().Chips.Select(chip => TestBytes.Crc(chip.Bytes.Span)));
    }

    [Theory]
    [InlineData("block-5", 0x1000, "vic20-block-8bit", "1000")]
    [InlineData("block-5", 0x2000, "vic20-block-8bit", "2000")]
    [InlineData("block-5", 0x1000, "vic20-block-halves-8bit", "800 800")]
    [InlineData("blocks-3-5", 0x4000, "vic20-blocks-single-8bit", "4000")]
    [InlineData("blocks-3-5", 0x4000, "vic20-blocks-double-8bit", "2000 2000")]
    public void Chips_of_the_VIC_20(string mapping, int size, string board, string chips)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", Vic20(mapping, size, size - 0x2000 > 0 ? 0x2000 : 0).Assemble().Rom());
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "vic-20" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "mapping": "{{mapping}}" },
              "board": { "use": "{{board}}" }
            }
            """);
        Assert.Equal(chips, string.Join(' ', bench.Build().Chips.Select(chip => chip.Capacity.ToString("X"))));
    }
}
