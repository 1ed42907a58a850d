using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Proofs;

namespace Cartwright.Cli;

/// <summary>Tells what a proof came to, for the bench.</summary>
internal static class ProveReport
{
    private static readonly ImmutableArray<string> NotShown =
    [
        "What a clean read cannot show:",
        "  levels and speed: a chip that is too slow, or of another supply, reads right on the bench and fails in the console;",
        "  a wiring the chip was also written through: read it once on another machine;",
        "  a fault on a line that this image does not tell: --diagnosable lists them.",
    ];

    public static void Write(TextWriter output, ProofReport report, bool isBrief)
    {
        foreach (var unit in report.Units)
        {
            foreach (var chip in unit.Chips)
            {
                output.WriteLine(Line(unit, chip));
                if (!isBrief)
                {
                    ChipReport.Write(output, chip);
                }
            }

            WriteShared(output, SharedLines.AcrossChips(unit), unit.Name is null ? "" : unit.Name + ": ", "chips", "look at what they share: the edge contact, the board's trace");
        }

        if (report.Units.Length > 1)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{report.Units.Count(static unit => unit.IsEqual)} of {report.Units.Length} units equal"));
            WriteShared(output, SharedLines.AcrossUnits(report.Units), "", "faulty units", "look at the board, the stencil and the footprint before the solder of one unit");
        }

        if (report.IsEqual && !isBrief)
        {
            foreach (var line in NotShown)
            {
                output.WriteLine(line);
            }
        }
    }

    private static string Line(UnitProof unit, ProofResult chip)
    {
        var verdict = chip.Verdict;
        var what = verdict.Equal ? "equal"
            : !verdict.Faults.IsEmpty ? $"not equal: {FaultWords.Names(chip.Subject, verdict.Faults)}"
            : chip.HasCandidates ? $"not equal, left open; the first candidate: {FaultWords.Names(chip.Subject, verdict.Candidates[0])}"
            : "not equal, left open";
        return $"{(unit.Name is null ? "" : unit.Name + ", ")}{chip.Subject.Site}: {what}";
    }

    private static void WriteShared(TextWriter output, ImmutableArray<SharedLine> shared, string prefix, string what, string look)
    {
        foreach (var line in shared)
        {
            var name = line.Site is null ? $"{line.Line} of the bus" : $"{line.Site}, {line.Line}";
            var advice = line.PointsAtTheBoard ? $"; {look}" : "; that may still be chance";
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{prefix}{name} is named at {line.Where.Length} of {line.OutOf} {what} ({string.Join(", ", line.Where)}); by chance once in {Math.Max(1, Math.Round(1 / line.Chance)):0} times{advice}."));
        }
    }
}
