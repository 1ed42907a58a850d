using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Manifests;

public sealed class ManifestKeysTests
{
    [Theory]
    [InlineData("\"imags\": { }, \"imags:x\": 1", "imags", "images")]
    [InlineData("\"images\": { \"format\": \"raw\" }", "images:format", "formats")]
    [InlineData("\"board\": { \"sites\": [ { \"site\": \"U1\", \"fil\": \"top\" } ] }", "board:sites:0:fil", "fill")]
    [InlineData("\"board\": { \"chips\": { \"U1\": { \"prat\": \"X\" } } }", "board:chips:U1:prat", "part")]
    [InlineData("\"regions\": { \"chr\": { \"sise\": \"8KiB\" } }", "regions:chr:sise", "size")]
    public void An_unknown_key_is_told_with_the_nearest_known_one(string members, string key, string nearest)
    {
        var finding = Assert.Single(ManifestText.With(members).Findings);
        Assert.Equal("CW1003", finding.Code);
        Assert.Equal($"There is no key `{key}`.", finding.Message);
        Assert.Contains(nearest, finding.Advice, StringComparison.Ordinal);
        Assert.Contains(nearest, finding.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_key_of_a_list_item_is_told()
    {
        var read = ManifestText.Of(ManifestText.Good.Replace("\"offset\"", "\"ofset\"", StringComparison.Ordinal));
        Assert.Equal("There is no key `programs:0:ofset`.", Assert.Single(read.Findings).Message);
        Assert.Contains("offset", read.Findings[0].Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("main")]
    [InlineData("")]
    [InlineData("1a")]
    public void A_list_s_items_have_no_names(string name)
    {
        var text = $$"""{ "cart": { "name": "a", "platform": "b" }, "programs": { "{{name}}": { "file": "x" } } }""";
        var finding = ManifestText.Of(text).Findings[0];
        Assert.Equal(("CW1003", "a list"), (finding.Code, finding.Expected));
    }

    [Theory]
    [InlineData("\"board\": \"md-single-16bit\"", "board")]
    [InlineData("\"rom\": \"512KiB\"", "rom")]
    [InlineData("\"images\": \"dist\"", "images")]
    [InlineData("\"header\": \"fast\"", "header")]
    [InlineData("\"regions\": 7", "regions")]
    [InlineData("\"regions\": { \"chr\": \"8KiB\" }", "regions:chr")]
    [InlineData("\"board\": { \"chips\": { \"U1\": \"SST39SF040\" } }", "board:chips:U1")]
    [InlineData("\"board\": { \"use\": \"x\", \"chips\": \"SST39SF040\" }", "board:chips")]
    public void One_value_where_a_group_belongs_is_not_ignored(string members, string key)
    {
        var finding = Assert.Single(ManifestText.With(members).Findings);
        Assert.Equal(("CW1005", key), (finding.Code, finding.Place.Key));
    }

    [Fact]
    public void A_text_where_the_list_of_programs_belongs_is_not_ignored() =>
        Assert.Contains(
            ManifestText.Of("""{ "cart": { "name": "a", "platform": "b" }, "programs": "main.bin" }""").Findings,
            finding => finding is { Code: "CW1005", Place.Key: "programs", Expected: "a list" });

    [Theory]
    [InlineData("\"cart\": { \"name\": [ 1 ], \"platform\": \"b\" }", "cart:name")]
    [InlineData("\"cart\": { \"name\": \"a\", \"platform\": { \"x\": 1 } }", "cart:platform")]
    [InlineData("\"cart\": { \"name\": \"a\", \"platform\": \"b\", \"title\": [ \"x\" ] }", "cart:title")]
    public void A_list_where_one_text_belongs_is_the_wrong_kind(string cart, string key)
    {
        var read = ManifestText.Of("{ " + cart + ", \"programs\": [ { \"file\": \"x\" } ] }");
        Assert.Contains(read.Findings, finding => finding.Code == "CW1005" && finding.Place.Key == key && finding.Severity == FindingSeverity.Error);
    }

    [Theory]
    [InlineData("\"rom\": { \"size\": \"large\" }")]
    [InlineData("\"rom\": { \"size\": -1 }")]
    [InlineData("\"rom\": { \"size\": [ 1 ] }")]
    [InlineData("\"rom\": { \"fill\": 256 }")]
    [InlineData("\"rom\": { \"fill\": \"0x100\" }")]
    [InlineData("\"rom\": { \"fill\": true }")]
    [InlineData("\"header\": { \"keep\": \"maybe\" }")]
    [InlineData("\"header\": { \"keep\": [ { \"a\": 1 } ] }")]
    [InlineData("\"images\": { \"formats\": [ [ \"raw\" ] ] }")]
    public void A_value_of_the_wrong_kind_is_told(string members) =>
        Assert.Equal(["CW1005"], ManifestText.With(members).Findings.Select(finding => finding.Code).Distinct());

    [Theory]
    [InlineData("\"images\": { \"formats\": [ \"raw\", \"inlet-hex\" ] }", "intel-hex")]
    [InlineData("\"images\": { \"wordOrder\": \"programer\" }", "programmer")]
    public void A_word_that_is_no_choice_is_told_with_the_nearest(string members, string nearest)
    {
        var finding = Assert.Single(ManifestText.With(members).Findings);
        Assert.Equal("CW1006", finding.Code);
        Assert.Contains(nearest, finding.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"addressUnit\": 3")]
    [InlineData("\"addressUnit\": 0x1")]
    [InlineData("\"address\": \"$8000\"")]
    [InlineData("\"load\": \"both\"")]
    [InlineData("\"format\": \"exe\"")]
    public void A_program_s_contradictions_are_told(string member)
    {
        var read = ManifestText.Of(ManifestText.Good.Replace("\"offset\"", member + ", \"offset\"", StringComparison.Ordinal));
        Assert.All(read.Findings, finding => Assert.Contains(finding.Code, (string[])["CW1006", "CW1002"]));
        Assert.NotEmpty(read.Findings);
    }

    [Fact]
    public void Everything_the_table_lists_is_known_to_the_check()
    {
        var read = ManifestText.Of("""
            { "$schema": "x", "cart": { "name": "a", "platform": "b", "title": "c", "revision": 1 },
              "programs": [ { "file": "f", "format": "raw", "region": "rom", "offset": "32KiB", "skip": "0x10", "length": 4, "addressUnit": 1, "load": "virtual" } ],
              "rom": { "size": "fit", "fill": 0 }, "regions": { "chr": { "size": "8KiB", "fill": "$FF" } },
              "header": { "keep": [ "title" ], "speed": "fast" },
              "board": { "use": "x", "chips": { "U1": { "part": "p", "capacity": "1Mbit", "wordOrder": "bus" } } },
              "images": { "folder": "out", "formats": [ "raw", "s-record", "raw" ], "wordOrder": "programmer" } }
            """);
        Assert.Empty(read.Findings);
        var manifest = read.Manifest!;
        var program = Assert.Single(manifest.Programs);
        Assert.Equal((16L, 4L, true), (program.Skip, program.Length, program.LoadVirtual));
        Assert.Equal([ImageFormat.Raw, ImageFormat.SRecord], manifest.Images.Formats);
        Assert.Equal(WordOrder.Programmer, manifest.Images.WordOrder);
        Assert.Equal((null, (byte)0), (manifest.Regions["ROM"].Size, manifest.Regions["ROM"].Fill));
        Assert.Equal((8192, (byte)0xFF), (manifest.Regions["chr"].Size, manifest.Regions["chr"].Fill));
        Assert.Equal((131072, WordOrder.Bus), (manifest.Board.Chips["u1"].Capacity, manifest.Board.Chips["u1"].WordOrder));
        Assert.Equal("fast", manifest.Header["SPEED"]!.Text);
    }
}
