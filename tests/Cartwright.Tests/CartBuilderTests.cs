using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Tests.Manifests;
using Cartwright.Tests.Programs;
using Xunit;

namespace Cartwright.Tests;

public sealed class CartBuilderTests
{
    [Fact]
    public void A_manifest_that_is_not_there_is_told()
    {
        using var bench = new CartBench();
        foreach (var path in (string[])[bench.In("other.json"), bench.Path, ""])
            Assert.Equal(["CW1001"], new CartBuilder(bench.Platforms).Build(new BuildRequest(path)).Findings.Select(finding => finding.Code));
    }

    [Theory]
    [InlineData("missing.bin", "There is no file missing.bin.")]
    [InlineData("folder", "folder is a folder, not a file.")]
    [InlineData("a\\u0000b", "There is no file")]
    public void A_program_that_is_not_there_is_told_at_its_key(string file, string message)
    {
        using var bench = new CartBench(programs: $"{{ \"file\": \"{file}\", \"offset\": 0 }}");
        Directory.CreateDirectory(bench.In("folder"));
        var finding = bench.Build().Findings.Single(finding => finding.Severity == FindingSeverity.Error);
        Assert.Equal("programs:0:file", finding.Place.Key);
        if (!file.Contains("u0000", StringComparison.Ordinal)) Assert.Equal(message, finding.Message);
    }

    [Fact]
    public void An_empty_program_is_told()
    {
        using var bench = new CartBench();
        bench.Write("main.bin", []);
        Assert.Contains(bench.Build().Findings, finding => finding.Severity == FindingSeverity.Error && finding.Message.Contains("empty", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"skip\": 2, \"length\": 3", "815EB4")]
    [InlineData("\"skip\": \"0x17C\"", null)]
    [InlineData("\"length\": 2", "3C5E")]
    public void A_part_of_a_file_can_be_taken(string part, string? start)
    {
        using var bench = new CartBench(programs: $"{{ \"file\": \"main.bin\", \"offset\": \"0x80\", {part} }}");
        var input = bench.Build().Inputs[1];
        var bytes = Assert.Single(input.Placed).Bytes.ToArray();
        if (start is not null) Assert.Equal(start.Length / 2, bytes.Length);
        Assert.Equal(0x180, input.Digest.Size);
        Assert.Equal(TestBytes.L(0x180).AsSpan().IndexOf(bytes), part.Contains("17C", StringComparison.Ordinal) ? 0x17C : part.Contains("skip", StringComparison.Ordinal) ? 2 : 0);
    }

    [Theory]
    [InlineData("\"skip\": \"0x181\"")]
    [InlineData("\"skip\": \"0x180\"")]
    [InlineData("\"length\": 0")]
    [InlineData("\"length\": \"0x181\"")]
    [InlineData("\"skip\": 1, \"length\": \"0x180\"")]
    [InlineData("\"skip\": \"1073741824GiB\", \"length\": \"1073741824GiB\"")]
    public void More_than_a_file_holds_cannot_be_taken(string part)
    {
        using var bench = new CartBench(programs: $"{{ \"file\": \"main.bin\", \"offset\": \"0x80\", {part} }}");
        Assert.Contains("CW3011", bench.Build().Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void An_unknown_platform_is_told_with_the_nearest()
    {
        using var bench = new CartBench();
        var build = bench.Build(ManifestText.Set(("cart:platform", "bensh")));
        var finding = build.Findings.Single(finding => finding.Code == "CW1008");
        Assert.Equal(("an id that `cartwright platforms` lists", "Did you mean bench?"), (finding.Expected, finding.Advice));
        Assert.Null(build.Platform);
        Assert.Equal("bench", bench.Build(ManifestText.Set(("cart:platform", " WorkBench "))).Platform!.Facts.Id);
    }

    [Fact]
    public void All_errors_are_told_at_once_in_order_of_their_places()
    {
        using var bench = new CartBench();
        bench.Manifest("""
            {
              "board": { "use": "no-such-board" },
              "cart": { "name": "a b", "platform": "bench", "titel": "x" },
              "images": { "folder": "../out" },
              "programs": [ { "file": "missing.bin", "offset": 0 },
                            { "file": "main.bin", "offset": "here" } ],
              "rom": { "fill": 300 }
            }
            """);
        var build = bench.Build();
        Assert.Equal(
            ["2 CW5001", "3 CW1009", "3 CW1003", "4 CW1010", "5 CW2001", "6 CW3007", "7 CW1005"],
            build.Findings.Select(finding => $"{finding.Place.Line} {finding.Code}"));
        Assert.Null(build.Cart);
        Assert.Empty(build.Files);
    }

    [Fact]
    public void A_lone_record_far_away_is_told_and_allocates_nothing()
    {
        var far = Records.Lines(Records.Hex(4, 0, 0xFF, 0xFF), Records.Hex(0, 0, 1, 2), Records.HexEnd);
        var both = Records.Lines(Records.Hex(0, 0x8000, 1), Records.Hex(4, 0, 0xFF, 0xFF), Records.Hex(0, 0, 1, 2), Records.HexEnd);
        foreach (var (text, place) in ((string, string)[])[(far, ""), (both, ""), (far, ", \"offset\": 0"), (both, ", \"offset\": 0"), (far, ", \"address\": \"$8000\"")])
        {
            using var bench = new CartBench(programs: $"{{ \"file\": \"main.hex\"{place} }}");
            bench.Write("main.hex", System.Text.Encoding.ASCII.GetBytes(text));
            var before = GC.GetAllocatedBytesForCurrentThread();
            var build = bench.Build();
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 16 << 20);
            Assert.True(build.HasErrors);
        }
    }

    // Whatever one setting says, a build ends in findings or in files.
    [Fact]
    public void No_setting_at_any_key_throws()
    {
        const string Whole = "\"board\": { \"sites\": [ { \"site\": \"U1\", \"fill\": \"top\" } ], \"chips\": { \"U1\": { \"capacity\": \"1KiB\" } } }";
        string[] values = ["", "0", "1", "3", "-1", "x", "..", "/", "a\0b", "9223372036854775807", "0x7FFFFFFFFFFFFFFF", "1073741824GiB", "2147483648", "0x80000001", "true", "16", "03:8000", new string('9', 400), new string('a', 5000)];
        using var bench = new CartBench(Whole);
        var built = 0;
        foreach (var key in ManifestKeys.Rows.Select(row => row.Pattern.Replace("*", row.Pattern.StartsWith("board:chips", StringComparison.Ordinal) ? "U1" : "rom", StringComparison.Ordinal).Replace('#', '0')))
        {
            foreach (var value in values)
            {
                var build = bench.Build(ManifestText.Set((key, value)));
                if (build.HasErrors) continue;
                built++;
                Assert.Empty(CartOutput.Write(build, dryRun: true).Findings);
            }
        }

        Assert.InRange(built, 50, 900);
    }
}
