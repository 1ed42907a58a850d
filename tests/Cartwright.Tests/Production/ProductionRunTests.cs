using System.Text;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Production;
using Xunit;

namespace Cartwright.Tests.Production;

/// <summary>Units are what a build of their own would be, numbers are given once, and the ledger knows them all.</summary>
public sealed class ProductionRunTests
{
    [Fact]
    public void A_unit_is_what_a_build_with_its_bytes_is()
    {
        using var run = new RunBench(RunBench.Serial + "," + RunBench.Number);
        Assert.Empty(run.Run(255, 2));
        foreach (var (unit, text, number) in (ReadOnlySpan<(string, string, byte[])>)[("000255", "000255", [0x00, 0xFF]), ("000256", "000256", [0x01, 0x00])])
        {
            using var own = new RunBench(more: """, { "file": "unit.bin", "offset": "0x1000" }""");
            File.WriteAllBytes(own.In("unit.bin"), [.. Encoding.ASCII.GetBytes(text), 0xFF, 0xFF, .. number]);
            var build = own.Build();
            Assert.Equal(build.Files[0].Parts[0].ToArray(), run.Read($"tide.{unit}.md"));
            foreach (var chip in build.Chips)
                Assert.Equal(chip.Bytes.ToArray(), run.Read($"tide.{unit}.{chip.Site.Name}.bin"));
        }
    }

    [Fact]
    public void The_common_chips_with_a_unit_s_sectors_are_the_unit_s_chips()
    {
        using var whole = new RunBench();
        using var sectors = new RunBench();
        Assert.Empty(whole.Run(7, 1));
        Assert.Empty(sectors.Run(7, 1, onlySectors: true));
        foreach (var site in (string[])["U1", "U2"])
        {
            var chip = sectors.Read($"tide.{site}.bin");
            var parts = Directory.GetFiles(sectors.Folder, $"tide.000007.{site}.*.bin");
            foreach (var part in parts)
                File.ReadAllBytes(part).CopyTo(chip, Convert.ToInt32(Path.GetFileNameWithoutExtension(part)[^6..], 16));

            // Checksum and serial number lie in the first sector, and the chip holds the lane twice.
            Assert.Equal(2, parts.Length);
            Assert.Equal(whole.Read($"tide.000007.{site}.bin"), chip);
        }
    }

    [Fact]
    public void Chips_that_no_field_reaches_are_common()
    {
        using var run = new RunBench("""{ "name": "serial", "kind": "serial", "form": "binary", "offset": "0x1000", "width": 1 }""");
        var keep = File.ReadAllText(run.In("cart.json")).Replace("\"run\":", "\"header\": { \"keep\": [\"checksum\"] }, \"run\":", StringComparison.Ordinal);
        File.WriteAllText(run.In("cart.json"), keep);
        Assert.Empty(run.Run(5, 1, onlySectors: true));
        Assert.Single(Directory.GetFiles(run.Folder, "tide.000005.*").Select(file => Path.GetFileName(file).Split('.')[2]).Distinct());
    }

    [Fact]
    public void A_number_is_never_given_twice()
    {
        using var run = new RunBench();
        Assert.Empty(run.Run(1, 20));
        Assert.Equal(["CW5806"], run.Run(20, 2));
        Assert.Equal(["CW5806"], run.Run([RunUnit.Numbered(30), RunUnit.Numbered(30)]));
        Assert.Empty(run.Run(21, 2));
        Assert.Equal(Enumerable.Range(1, 22).Select(number => (long)number), run.Given());
    }

    [Fact]
    public void A_run_that_is_stopped_has_given_what_its_ledger_names()
    {
        using var run = new RunBench();
        Directory.CreateDirectory(Path.Combine(run.Folder, "tide.000020.md"));
        Assert.Contains("CW6002", run.Run(1, 40));
        Assert.Equal(Enumerable.Range(1, 16).Select(number => (long)number), run.Given());
        Assert.Equal(16, Directory.GetFiles(run.Folder, "*.md").Length);
        Directory.Delete(Path.Combine(run.Folder, "tide.000020.md"));
        Assert.Empty(run.Run(17, 24));
        Assert.Equal(40, run.Given().Length);
    }

    [Fact]
    public void A_second_run_into_the_folder_is_told_to_wait()
    {
        using var run = new RunBench();
        using var first = OutputFolder.Open(run.Folder, SourcePlace.None, new FindingLog());
        Assert.Equal(["CW6003"], run.Run(1, 1));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("{ \"ledger\": 2, \"units\": [] }")]
    [InlineData("{ \"ledger\": 1, \"units\": [ { \"serial\": \"one\" } ] }")]
    public void An_unreadable_ledger_stops_the_run_and_stays(string text)
    {
        using var run = new RunBench();
        Directory.CreateDirectory(run.Folder);
        File.WriteAllText(Path.Combine(run.Folder, "tide.ledger.json"), text);
        Assert.Equal(["CW5807"], run.Run(1, 1));
        Assert.Equal(text, File.ReadAllText(Path.Combine(run.Folder, "tide.ledger.json")));
    }

    [Fact]
    public void The_ledger_ties_label_values_and_digests_together()
    {
        using var run = new RunBench(
            RunBench.Serial + """, { "name": "owner", "kind": "text", "offset": "0x1010", "width": 8 }""",
            """, "label": "{title} r{revision} no {serial} for {OWNER}, board {boardRevision}", "boardRevision": "B" """);
        Assert.Empty(run.Run([RunUnit.Numbered(9) with { Texts = RunUnit.Numbered(9).Texts.Add("owner", "Ida, W.") }]));
        var entry = Assert.Single(RunLedger.Read(Path.Combine(run.Folder, "tide.ledger.json"), new FindingLog())!.Value);
        Assert.Equal("TIDE r3 no 000009 for Ida, W., board B", entry.Label);
        Assert.All(entry.Files, file => Assert.Equal(file.Sha256, FileDigest.Of(run.Read(file.Name)).Sha256));
        var rows = File.ReadAllText(Path.Combine(run.Folder, "tide.ledger.csv")).Split("\r\n");
        Assert.StartsWith("unit,serial,owner,label,boardRevision,cart,files,sha256", rows[0], StringComparison.Ordinal);
        Assert.StartsWith("9,000009,\"Ida, W.\",\"TIDE r3", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_seed_follows_from_the_number_alone()
    {
        const string Seed = """, { "name": "seed", "kind": "seed", "offset": "0x1010", "width": 40 }""";
        using var first = new RunBench(RunBench.Serial + Seed);
        using var second = new RunBench(RunBench.Serial + Seed);
        Assert.Empty(first.Run(1, 2));
        Assert.Empty(second.Run(2, 1));
        Assert.Equal(first.Read("tide.000002.md"), second.Read("tide.000002.md"));
        Assert.NotEqual(first.Read("tide.000001.md")[0x1010..0x1038], first.Read("tide.000002.md")[0x1010..0x1038]);
        Assert.NotEqual(first.Read("tide.000001.md")[0x1010..0x1018], first.Read("tide.000001.md")[0x1030..0x1038]);
    }
}
