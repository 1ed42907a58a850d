using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Faults in one line, for whoever looks into a wrong answer.</summary>
internal static class FaultText
{
    public static string Of(ImmutableArray<Fault> faults) => "[" + string.Join(", ", faults.Select(Of)) + "]";

    private static string Of(Fault fault) => string.Join(
        ' ',
        new[]
        {
            fault.Kind,
            string.Join(' ', fault.Lines),
            fault.Lines.Length > 1 ? fault.Wins : "",
            fault.Kind.EndsWith("open", StringComparison.Ordinal) ? fault.Follows : "",
            string.Join(',', fault.Map),
            string.Join(',', fault.Order),
            fault.How,
            fault.Inner is { } inner ? Of(inner) : "",
            FormattableString.Invariant($"{Numbers(fault)}"),
        }.Where(static word => word.Length > 0));

    private static string Numbers(Fault fault) => string.Join(
        ' ',
        new (string Name, int Value)[] { ("size", fault.Size), ("bankSize", fault.BankSize), ("bank", fault.Bank), ("by", fault.By), ("length", fault.Length), ("start", fault.Start), ("period", fault.Period), ("at", fault.At), ("run", fault.Run) }
            .Where(static row => row.Value != 0)
            .Select(static row => FormattableString.Invariant($"{row.Name}={row.Value}")));
}
