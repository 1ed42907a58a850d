using System.Reflection;
using Cartwright.Findings;
using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

public sealed class ProgramFindingsTests
{
    // Raised by whoever opens the file, not by the reader.
    private static readonly FindingRule[] OfTheDisk = [ProgramFindings.Missing, ProgramFindings.Unreadable, ProgramFindings.TooLarge];

    public static TheoryData<int> Cases => [.. Enumerable.Range(0, FaultCases.All.Count)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_faulty_file_gives_its_finding_and_no_other(int number)
    {
        var fault = FaultCases.All[number];
        var reading = Reading.Of(fault.File, fault.Bytes, fault.Format, new ProgramReadOptions { AddressUnit = fault.AddressUnit });
        var told = string.Join("; ", reading.Findings.Select(f => $"{f.Code} line {f.Place.Line}: {f.Message}"));
        Assert.True(reading.Findings is [{ } finding] && finding.Rule == fault.Rule && finding.Place.Line == fault.Line, $"{fault.Name}: {told}");
        Assert.Equal(fault.File, reading.Findings[0].Place.File);
    }

    [Fact]
    public void Every_rule_has_a_faulty_file()
    {
        var covered = FaultCases.All.Select(fault => fault.Rule).Concat(OfTheDisk).Append(ProgramFindings.MoreOfTheSame);
        Assert.Empty(ProgramFindings.All.Except(covered).Select(rule => rule.Code));
    }

    [Fact]
    public void The_list_holds_every_rule_once_in_order_of_codes()
    {
        var declared = typeof(ProgramFindings).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(FindingRule))
            .Select(property => (FindingRule)property.GetValue(null)!);
        Assert.Equal(declared.OrderBy(rule => rule.Code, StringComparer.Ordinal), ProgramFindings.All);
        Assert.Equal(ProgramFindings.All.Length, ProgramFindings.All.Select(rule => rule.Code).Distinct().Count());
        Assert.All(ProgramFindings.All, rule => Assert.Matches("^CW2[0-9]{3}$", rule.Code));
    }
}
