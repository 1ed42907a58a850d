using Cartwright.Findings;
using Cartwright.Platforms;
using Cartwright.Slots;
using Xunit;

namespace Cartwright.Tests.Slots;

/// <summary>Whole multi-game builds.</summary>
public sealed class SlotBuildTests
{
    private static readonly string[] Regions = ["prg", "chr"];

    [Fact]
    public void A_switch_that_chooses_different_games_in_two_regions_is_told()
    {
        using var bench = Nes("""
            { "region": "prg", "lines": [ "A15" ] }, { "region": "chr", "lines": [ "A13" ] }
            """, secondAt: "\"at\": \"0\", ");
        Assert.DoesNotContain(bench.Run(), code => code == SlotFindings.Mixed.Code);
        using var mixed = Nes("""
            { "region": "prg", "lines": [ "A15" ] }, { "region": "chr", "lines": [ "A13" ] }
            """, secondAt: "");
        Assert.Contains(SlotFindings.Mixed.Code, mixed.Run());
    }

    [Fact]
    public void Both_regions_of_each_game_stand_in_the_image()
    {
        using var bench = Nes("", "");
        var build = bench.Build();
        Assert.DoesNotContain(build.Findings, finding => finding.Severity == FindingSeverity.Error);
        foreach (var slot in build.Slots!.Slots)
        {
            Assert.Equal(slot.Bytes.ToArray(), build.Cart!.Rom[slot.Region]!.Bytes.Slice((int)slot.Start, slot.Bytes.Length).ToArray());
            Assert.Contains(slot.Region, Regions);
        }

        Assert.Equal(6, build.Slots.Slots.Length);
    }

    [Fact]
    public void A_menu_at_the_end_of_its_region_asks_for_the_size()
    {
        const string Slots = """
            "slots": { "games": [ { "file": "game.ws" } ] }
            """;
        using var open = new CartBench(Slots, """{ "file": "main.bin", "offset": "0" }""") { Platforms = PlatformCatalog.BuiltIn };
        SwanManifest(open, Slots);
        Assert.Contains(SlotFindings.NeedsSize.Code, open.Run());
        using var stated = new CartBench() { Platforms = PlatformCatalog.BuiltIn };
        SwanManifest(stated, Slots + ", \"rom\": { \"size\": \"512KiB\" }");
        var build = stated.Build();
        Assert.DoesNotContain(build.Findings, finding => finding.Rule == SlotFindings.NeedsSize);
        Assert.Equal(0, Assert.Single(build.Slots!.Slots).Start);
    }

    [Fact]
    public void A_file_that_is_no_game_is_told()
    {
        using var bench = Nes("", "");
        bench.Write("two.nes", TestBytes.L(40 << 10));
        Assert.Contains(SlotFindings.NotRecognised.Code, bench.Run());
    }

    private static void SwanManifest(CartBench bench, string members)
    {
        bench.Write("game.ws", TestBytes.L(64 << 10));
        bench.Manifest($$"""{ "cart": { "name": "tides", "platform": "ws" }, "programs": [ { "file": "main.bin", "offset": "128KiB" } ], {{members}} }""");
    }

    // Three games: the second has twice the patterns, so that lines which fit one region do not fit the other.
    private static CartBench Nes(string switches, string secondAt)
    {
        var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("one.nes", Game(1));
        bench.Write("two.nes", Game(2));
        bench.Write("three.nes", Game(1));
        var second = secondAt.Length > 0 ? "one.nes" : "two.nes";
        bench.Manifest($$"""
            { "cart": { "name": "tides", "platform": "nes" }, "slots": { "games": [ { "file": "one.nes", "title": "A" }, { "file": "{{second}}", "title": "B" }, { "file": "three.nes", "title": "C" } ], "switches": [ {{switches}} ] } }
            """);
        return bench;
    }

    private static byte[] Game(byte patterns)
    {
        byte[] header = [(byte)'N', (byte)'E', (byte)'S', 0x1A, 2, patterns, 0x31, 0, .. new byte[8]];
        var prg = TestBytes.L(32 << 10);
        prg[^4] = 0x00;
        prg[^3] = 0x80;
        return [.. header, .. prg, .. TestBytes.L(patterns * 8 << 10)];
    }
}
