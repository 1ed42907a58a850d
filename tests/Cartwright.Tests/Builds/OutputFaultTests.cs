using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Builds;

/// <summary>Each fault of the output folder.</summary>
public sealed class OutputFaultTests
{
    private static readonly string Good = BuildBench.Manifest("\"board\": { \"use\": \"gb-single-8bit\", \"chips\": { \"U1\": { \"part\": \"SST39SF040\" } } }");

    [Fact]
    public void A_file_in_the_folder_s_place_makes_it_not_writable()
    {
        using var bench = new BuildBench(Good);
        bench.Program("dist", 1);
        Assert.Equal([OutputFindings.NotWritable], Write(bench));
        Assert.Equal(1, new FileInfo(bench.Output).Length);
    }

    [Fact]
    public void A_folder_in_a_file_s_place_is_told_before_anything_is_written()
    {
        using var bench = new BuildBench(Good);
        Directory.CreateDirectory(Path.Combine(bench.Output, "lantern-tide.record.json"));
        Assert.Equal([OutputFindings.NotWritable], Write(bench));
    }

    [Theory]
    [InlineData("0x10")]
    [InlineData("0")]
    [InlineData("1MiB")]
    public void An_exchange_file_that_would_lose_bytes_of_the_game_is_refused(string length)
    {
        using var bench = new BuildBench(BuildBench.Manifest($$"""  "images": { "romLength": "{{length}}" } """));
        Assert.Contains(bench.Build().Findings, finding => finding.Code == "CW6007");
    }

    [Fact]
    public void A_second_build_into_the_folder_is_told_to_wait()
    {
        using var bench = new BuildBench(Good);
        using var first = OutputFolder.Open(bench.Output, SourcePlace.None, new FindingLog());
        Assert.Equal([OutputFindings.Busy], Write(bench));
    }

    [Fact]
    public void What_a_killed_build_moved_away_is_put_back()
    {
        using var bench = new BuildBench(Good);
        var old = Directory.CreateDirectory(Path.Combine(bench.Output, ".cartwright-stage", "old"));
        File.WriteAllText(Path.Combine(old.FullName, "notes.txt"), "kept");
        Assert.Equal([OutputFindings.Recovered], Write(bench));
        Assert.Equal("kept", File.ReadAllText(Path.Combine(bench.Output, "notes.txt")));
    }

    [Fact]
    public void An_output_in_the_place_of_an_input_is_refused()
    {
        using var bench = new BuildBench(BuildBench.Manifest("", """{ "file": "lantern-tide.gb", "offset": 0 }"""));
        bench.Program("lantern-tide.gb", 32 << 10);
        Assert.Contains(bench.Build(PlatformCatalog.BuiltIn, output: bench.Folder).Findings, finding => finding.Rule == OutputFindings.WouldReplaceInput);
    }

    [Fact]
    public void Two_outputs_of_one_name_are_refused()
    {
        using var bench = new BuildBench(Good);
        var build = bench.Build();
        var log = new FindingLog();
        CartOutput.Plan(build with { Chips = [.. build.Chips, .. build.Chips] }, log);
        Assert.Equal(OutputFindings.SameName, Assert.Single(log.ToSorted()).Rule);
    }

    private static ImmutableArray<FindingRule> Write(BuildBench bench) =>
        [.. CartOutput.Write(bench.Build()).Findings.Select(finding => finding.Rule)];
}
