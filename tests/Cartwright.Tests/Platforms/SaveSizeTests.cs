using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Nintendo64;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>The save memory that headers declare.</summary>
public sealed class SaveSizeTests
{
    [Theory]
    [InlineData("md", "\"saveMemory\": \"8KiB battery odd\"", 8192L)]
    [InlineData("md", "\"saveMemory\": \"none\"", null)]
    [InlineData("ws", "\"save\": \"sram-32KiB\"", 32768L)]
    [InlineData("lynx", "\"eeprom\": \"93C66\"", 512L)]
    [InlineData("lynx", "\"eeprom\": \"none\"", null)]
    [InlineData("gb", "\"cartridgeType\": \"mbc5-ram-battery\", \"saveRam\": \"8KiB\"", 8192L)]
    [InlineData("nes", "\"mapper\": \"mmc1\", \"prgSaveRam\": \"8KiB\", \"chrRam\": \"8KiB\"", 8192L)]
    public void A_header_says_how_large_the_save_memory_is(string platform, string header, long? size)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", TestBytes.L(128 << 10));
        bench.Manifest($$"""{ "cart": { "name": "tide", "platform": "{{platform}}", "title": "TIDE" }, "programs": [ { "file": "main.bin", "offset": "0"{{(platform == "nes" ? ", \"region\": \"prg\"" : "")}} } ], "header": { {{header}} } }""");
        var build = bench.Build();
        Assert.NotNull(build.Cart);
        Assert.Equal(size, build.Platform!.SaveSize(build.Cart));
    }

    [Theory]
    [InlineData("eeprom-512", 512L)]
    [InlineData("eeprom-2KiB", 2048L)]
    [InlineData("flash-128KiB", 131072L)]
    [InlineData("none", null)]
    public void The_words_of_an_n64_header_name_a_size(string word, long? size) =>
        Assert.Equal(size, PlatformCatalog.BuiltIn.Find("n64")!.SaveSize(N64Bench.Bench().Header("saveMemory", word).Assemble()));
}
