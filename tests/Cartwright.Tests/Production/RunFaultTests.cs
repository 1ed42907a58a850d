using System.Text;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Production;
using Xunit;

namespace Cartwright.Tests.Production;

/// <summary>What is wrong with a run is told before anything is written.</summary>
public sealed class RunFaultTests
{
    private static readonly UnitField Owner = new("owner", UnitFieldKind.Text, 0, 8, SourcePlace.None);

    [Theory]
    [InlineData("CW5801", """{ "name": "a", "kind": "seed", "offset": 4096, "width": 4 }""")]
    [InlineData("CW5802", """{ "name": "a", "kind": "serial", "offset": "131070", "width": 4 }""")]
    [InlineData("CW5802", """{ "name": "a", "kind": "serial", "region": "chr", "offset": 0, "width": 4 }""")]
    [InlineData("CW5803", """{ "name": "a", "kind": "serial", "offset": 4096, "width": 4 }, { "name": "b", "kind": "serial", "offset": 4099, "width": 4 }""")]
    [InlineData("CW5803", """{ "name": "a", "kind": "serial", "offset": "0x18C", "width": 4 }""")]
    [InlineData("CW5804", """{ "name": "a", "kind": "serial", "offset": 4096, "width": 2 }""")]
    [InlineData("CW5805", """{ "name": "a", "kind": "serial", "offset": 4096, "width": 8, "alphabet": "012", "checkDigit": "luhn" }""")]
    [InlineData("CW5812", """{ "name": "a", "kind": "serial", "offset": 4096, "width": 8 }, { "name": "A", "kind": "seed", "offset": 5000, "width": 8 }""")]
    public void A_field_that_cannot_be_is_told(string code, string fields)
    {
        using var run = new RunBench(fields);
        Assert.Contains(code, run.Run(123, 1));
        Assert.False(Directory.Exists(run.Folder));
    }

    [Theory]
    [InlineData("""{ "kind": "serial", "offset": 4096, "width": 4 }""")]
    [InlineData("""{ "name": "a", "offset": 4096, "width": 4 }""")]
    [InlineData("""{ "name": "a", "kind": "serial", "width": 4 }""")]
    [InlineData("""{ "name": "a", "kind": "serial", "offset": 4096 }""")]
    [InlineData("""{ "name": "a", "kind": "cereal", "offset": 4096, "width": 4 }""")]
    [InlineData("""{ "name": "a", "kind": "serial", "offset": 4096, "width": 0 }""")]
    [InlineData("""{ "name": "a", "kind": "serial", "offset": 4096, "width": 4, "alphabet": "00" }""")]
    public void A_field_that_is_not_whole_stops_the_build(string field)
    {
        using var run = new RunBench(field);
        Assert.True(run.Build().HasErrors);
    }

    [Fact]
    public void A_label_that_names_nothing_is_told()
    {
        using var run = new RunBench(members: """, "label": "no {seriel}" """);
        Assert.Equal(["CW5809"], run.Run(1, 1));
    }

    [Fact]
    public void No_units_are_told()
    {
        using var run = new RunBench();
        Assert.Equal(["CW5811"], run.Run([]));
    }

    [Fact]
    public void A_field_over_a_program_is_noted()
    {
        using var run = new RunBench("""{ "name": "a", "kind": "serial", "offset": "0x200", "width": 4 }""");
        var log = new FindingLog();
        new ProductionRun(run.Build(), new RunRequest(run.Folder, SourcePlace.None, [RunUnit.Numbered(1)])).Make(log);
        Assert.Equal(["CW5810"], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void A_table_of_a_spreadsheet_is_read()
    {
        var units = Read("\uFEFFserial,owner\r\n7,\"Ida \"\"W.\"\"\"\r\n8,Ben", out var codes);
        Assert.Empty(codes);
        Assert.Equal([7, 8], units.Select(unit => unit.Serial));
        Assert.Equal("Ida \"W.\"", units[0].Texts["OWNER"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("serial\n1\n")]
    [InlineData("serial,owner,colour\n1,a,b\n")]
    [InlineData("serial,owner\none,a\n")]
    [InlineData("serial,owner\n1\n")]
    [InlineData("serial,owner\n-1,a\n")]
    public void A_table_that_is_wrong_is_told(string table)
    {
        Assert.Empty(Read(table, out var codes));
        Assert.Equal(["CW5808"], codes);
    }

    private static RunUnit[] Read(string table, out IReadOnlyList<string> codes)
    {
        var log = new FindingLog();
        var units = UnitTable.Read("units.csv", Encoding.UTF8.GetBytes(table), [Owner], log);
        codes = [.. log.ToSorted().Select(finding => finding.Code)];
        return [.. units];
    }
}
