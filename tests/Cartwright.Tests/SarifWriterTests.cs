using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests;

/// <summary>A findings log has what SARIF 2.1.0 asks for (OASIS, sections 3.13 to 3.30).</summary>
public sealed class SarifWriterTests
{
    private static readonly Finding AtALine = new(ManifestFindings.UnknownKey, SourcePlace.AtLine("cart.json", 4, 7), "There is no key `romm`.", Remedy: "Did you mean rom?");
    private static readonly Finding AtAnOffset = new(ManifestFindings.Missing, SourcePlace.At("game.bin", 0x1A4), "Wrong.");
    private static readonly Finding InASetting = new(ManifestFindings.UnknownKey, new SourcePlace("--set cart:nmae"), "There is no key `cart:nmae`.");

    [Fact]
    public void There_is_one_run_of_a_named_tool()
    {
        var log = Log(AtALine);
        Assert.Equal("2.1.0", log.GetProperty("version").GetString());
        var run = Assert.Single(log.GetProperty("runs").EnumerateArray());
        Assert.Equal(("cartwright", "1.2.3"), (run.GetProperty("tool").GetProperty("driver").GetProperty("name").GetString(), run.GetProperty("tool").GetProperty("driver").GetProperty("version").GetString()));
    }

    [Fact]
    public void Every_result_points_at_its_rule()
    {
        var run = Log(AtALine, AtAnOffset, InASetting).GetProperty("runs")[0];
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");
        Assert.Equal(2, rules.GetArrayLength());
        foreach (var result in run.GetProperty("results").EnumerateArray())
            Assert.Equal(result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString());
    }

    [Fact]
    public void A_place_is_a_line_or_an_offset_of_a_file_or_nothing()
    {
        var results = Log(AtALine, AtAnOffset, InASetting).GetProperty("runs")[0].GetProperty("results");
        var line = results[0].GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.Equal("uri:cart.json", line.GetProperty("artifactLocation").GetProperty("uri").GetString());
        Assert.Equal((4, 7), (line.GetProperty("region").GetProperty("startLine").GetInt32(), line.GetProperty("region").GetProperty("startColumn").GetInt32()));
        Assert.Equal(0x1A4, results[1].GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("region").GetProperty("byteOffset").GetInt32());
        Assert.False(results[2].TryGetProperty("locations", out _));
    }

    [Theory]
    [InlineData(FindingSeverity.Error, "error")]
    [InlineData(FindingSeverity.Warning, "warning")]
    [InlineData(FindingSeverity.Note, "note")]
    public void Severities_are_levels(FindingSeverity severity, string level)
    {
        var rule = FindingCatalog.All.First(rule => rule.Severity == severity);
        var run = Log(new Finding(rule, SourcePlace.None, "Something.")).GetProperty("runs")[0];
        Assert.Equal(level, run.GetProperty("results")[0].GetProperty("level").GetString());
        Assert.Equal(level, run.GetProperty("tool").GetProperty("driver").GetProperty("rules")[0].GetProperty("defaultConfiguration").GetProperty("level").GetString());
    }

    private static JsonElement Log(params Finding[] findings)
    {
        using var log = JsonDocument.Parse(SarifWriter.Write([.. findings], "1.2.3", static file => file.StartsWith("--", StringComparison.Ordinal) ? null : "uri:" + file));
        return log.RootElement.Clone();
    }
}
