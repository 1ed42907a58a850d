using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Roms;

/// <summary>A bus-conflict table must hold the values that are written over it. Source: NESdev Wiki, Bus conflict.</summary>
public sealed class ConflictTableCheckTests
{
    [Theory]
    [InlineData("\"offset\": \"0x90\", \"count\": 4", true)]
    [InlineData("\"offset\": \"0x90\", \"count\": 5", false)]
    [InlineData("\"offset\": \"0x91\", \"first\": 1, \"count\": 3", true)]
    [InlineData("\"offset\": \"0x92\", \"values\": [ 2, 3, \"0xEE\" ]", true)]
    [InlineData("\"offset\": \"0x92\", \"values\": [ 2, 4 ]", false)]
    public void A_table_holds_its_own_values_or_is_told(string table, bool right)
    {
        using var bench = new CartBench($"\"conflictTables\": [ {{ {table} }} ]");
        bench.Write("main.bin", [.. new byte[16], 0, 1, 2, 3, 0xEE, .. new byte[43]]);
        Assert.Equal(right, !bench.Build().Findings.Any(finding => finding.Rule == RomFindings.ConflictTable));
    }
}
