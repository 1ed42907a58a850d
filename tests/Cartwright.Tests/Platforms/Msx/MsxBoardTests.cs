using Cartwright.Boards;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Msx;

/// <summary>A mapping is no byte of the ROM, and boards are wired for it all the same.</summary>
public sealed class MsxBoardTests
{
    [Theory]
    [InlineData("page-0", 0xC000, 0x4000, 0x4010, "msx-plain-8bit", true)]
    [InlineData("page-0", 0xC000, 0x4000, 0x4010, "msx-full-8bit", false)]
    [InlineData("page-1", 0x4000, 0, 0x4010, "msx-plain-8bit", false)]
    [InlineData("PAGE-2", 0x4000, 0, 0x8010, "msx-plain-8bit", false)]
    [InlineData("ascii8", 0x20000, 0, 0x4010, "msx-plain-8bit", true)]
    [InlineData("ascii8", 0x20000, 0, 0x4010, "msx-banked-8bit", false)]
    [InlineData(null, 0x4000, 0, 0x4010, "msx-plain-8bit", false)]
    [InlineData(null, 0x4000, 0, 0x4010, "msx-banked-8bit", true)]
    public void A_board_for_another_mapping_is_told(string? mapping, int size, int header, int init, string board, bool told)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", MsxPrograms.Whole(size, header, init));
        var settings = mapping is null ? "" : $"\"mapping\": \"{mapping}\"";
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "msx" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { {{settings}} },
              "board": { "use": "{{board}}" }
            }
            """);
        Assert.Equal(told, bench.Run().Contains(BoardFindings.NotWiredFor.Code));
    }
}
