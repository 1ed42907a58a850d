using System.Collections.Immutable;
using Cartwright.Images;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

/// <summary>Files and chips of both machines: what is recognised, and how a ROM lies in chips.</summary>
public sealed class CartridgeImageTests
{
    // The 32 KiB that the console sees of L(4000h), computed twice by programs of their own; two chips: c0, c0, c1, c1.
    [Theory]
    [InlineData("plain", "a5200-one-chip", "32KiB", "2A088DD7")]
    [InlineData("two-chip", "a5200-two-chip", "16KiB", "2C95C8C8")]
    public void Sixteen_KiB_of_the_console(string scheme, string board, string capacity, string crc)
    {
        var view = Chips("a5200", scheme, board, TestBytes.L(0x4000), capacity).SelectMany(chip => chip.Bytes.ToArray()).ToArray();
        Assert.Equal(0x8000, view.Length);
        Assert.Equal(crc, TestBytes.Crc(view));
    }

    [Theory]
    [InlineData("a5200", "plain", "a5200-one-chip", 0x1000)]
    [InlineData("a5200", "plain", "a5200-one-chip", 0x2000)]
    [InlineData("a8bit", "standard", "a8bit-standard", 0x2000)]
    [InlineData("a8bit", "standard", "a8bit-standard", 0x4000)]
    [InlineData("a8bit", "right-slot", "a8bit-standard", 0x2000)]
    [InlineData("a8bit", "xegs", "a8bit-xegs", 0x8000)]
    public void Small_ROMs_are_repeated(string platform, string scheme, string board, int size)
    {
        var rom = platform == "a5200" ? ConsolePrograms.Whole(size) : ComputerPrograms.Whole(scheme, size);
        var chip = Assert.Single(Chips(platform, scheme, board, rom, "64KiB"));
        Assert.Equal(0x10000, chip.Bytes.Length);
        Assert.All(chip.Bytes.ToArray().Chunk(size), part => Assert.Equal(rom, part));
    }

    [Theory]
    [InlineData(1, "a8bit")]
    [InlineData(34, "a8bit")]
    [InlineData(200, "a8bit")]
    [InlineData(4, "a5200")]
    [InlineData(6, "a5200")]
    [InlineData(16, "a5200")]
    public void A_container_is_recognised(byte number, string platform)
    {
        byte[] file = [(byte)'C', (byte)'A', (byte)'R', (byte)'T', 0, 0, 0, number, .. new byte[8], .. ComputerPrograms.Whole()];
        foreach (var id in (string[])["a8bit", "a5200"])
        {
            var claim = Ask(id, file);
            Assert.Equal(id == platform, claim is { Certainty: Certainty.Exact, PrefixLength: 16 });
            Assert.Equal(id == platform, claim?.Reason.Contains("wrong", StringComparison.Ordinal) ?? false);
        }

        file[7] = 0;
        Assert.Null(Ask("a8bit", file));
        file[6] = 1;
        Assert.Null(Ask("a8bit", file));
    }

    [Fact]
    public void A_right_checksum_of_a_container_is_told()
    {
        var cart = ComputerPrograms.Bench().Header("container", "cart").Assemble();
        Assert.Contains("right", Ask("a8bit", [.. cart.Container(), .. cart.Rom()])!.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("standard", 8)]
    [InlineData("right-slot", 8)]
    [InlineData("standard", 16)]
    [InlineData("xegs", 128)]
    public void A_computers_ROM_is_a_candidate(string scheme, int kib)
    {
        var rom = ComputerPrograms.Whole(scheme, kib << 10);
        Assert.Equal(Certainty.Candidate, Ask("a8bit", rom)?.Certainty);
        Assert.Null(Ask("a5200", rom));
        Assert.Null(Ask("a8bit", rom[1..]));
        rom[^4] = 1;
        Assert.Null(Ask("a8bit", rom));
        rom[^4] = 0;
        rom[^1] = 0x20;
        Assert.Null(Ask("a8bit", rom));
    }

    [Theory]
    [InlineData("FFFF", 0x4000, true)]
    [InlineData("00FF", 0xBFFF, true)]
    [InlineData("5256", 0xBE00, true)]
    [InlineData("525A", 0xBE00, false)]
    [InlineData("0000", 0xBE00, false)]
    [InlineData("FFFF", 0x3FFF, false)]
    [InlineData("FFFF", 0xC000, false)]
    public void A_consoles_ROM_is_a_candidate(string year, int start, bool found)
    {
        var rom = ConsolePrograms.Whole(start: start);
        Convert.FromHexString(year).CopyTo(rom, rom.Length - 4);
        Assert.Equal(found ? Certainty.Candidate : null, Ask("a5200", rom)?.Certainty);
        Assert.Null(Ask("a5200", rom[..^1]));
    }

    [Fact]
    public void Short_files_are_nothing()
    {
        for (var length = 0; length < 0x40; length++)
        {
            Assert.Null(Ask("a8bit", TestBytes.L(length)));
            Assert.Null(Ask("a5200", TestBytes.L(length)));
        }
    }

    private static RecognitionClaim? Ask(string id, byte[] file) => PlatformCatalog.BuiltIn.Find(id)!.Recognise(file);

    private static ImmutableArray<ChipImage> Chips(string platform, string scheme, string board, byte[] rom, string capacity)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", rom);
        var two = scheme == "two-chip" ? $$""", "U2": { "capacity": "{{capacity}}" }""" : "";
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "{{platform}}" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "scheme": "{{scheme}}" },
              "board": { "use": "{{board}}", "chips": { "U1": { "capacity": "{{capacity}}" }{{two}} } }
            }
            """);
        var build = bench.Build();
        Assert.DoesNotContain("CW5008", build.Findings.Select(finding => finding.Code));
        return build.Chips;
    }
}
