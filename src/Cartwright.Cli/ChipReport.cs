using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>Tells what the reads of one chip came to.</summary>
internal static class ChipReport
{
    private const int MostRows = 8;
    private const int MostCandidates = 6;

    public static void Write(TextWriter output, ProofResult proof)
    {
        Columns.Write(output, "  ", [.. Facts(proof)]);
        if (proof.Verdict.Equal)
        {
            return;
        }

        if (proof.IsComparable)
        {
            WriteWhere(output, proof);
        }

        WriteFaults(output, proof);
        WriteExplained(output, proof);
        WriteCandidates(output, proof);
        if (proof.Verdict.Next is { } next)
        {
            output.WriteLine("  Next");
            output.WriteLine($"    {next}");
        }
    }

    private static IEnumerable<string[]> Facts(ProofResult proof)
    {
        var (subject, map) = (proof.Subject, proof.Differences);
        var digest = FileDigest.Of(subject.Expected);
        yield return ["chip", $"{subject.Description}, {(subject.IsThroughBoard ? "read through the board" : "read by itself")}"];
        yield return ["reads", Reads(proof)];
        if (proof.Verdict.Statistics is { } statistics && proof.Reads.Length > 1)
        {
            yield return ["agreement", Agreement(statistics)];
        }

        if (!proof.IsComparable)
        {
            yield return ["length", $"read {ByteSize.Describe(proof.Reads[0].Bytes.Length)}, expected {ByteSize.Describe(subject.Expected.Length)}"];
        }
        else
        {
            yield return ["words", map.WrongWords == 0
                ? Text($"{map.WordCount} compared, none wrong")
                : Text($"{map.WrongWords} of {map.WordCount} wrong ({Percent((double)map.WrongWords / map.WordCount)}), the first at {Number.Hex((long)map.First * subject.Shape.Bytes, 6)}: {Word(subject, map.FirstRead)} in place of {Word(subject, map.FirstExpected)}")];
        }

        if (proof.MaskedBytes > 0)
        {
            yield return ["left out", $"{ByteSize.Words(proof.MaskedBytes)} that may differ"];
        }

        yield return ["CRC-32", digest.Crc32Text + " of what it should hold"];
        yield return ["SHA-256", digest.Sha256];
    }

    private static string Reads(ProofResult proof)
    {
        var insertions = proof.Reads.Select(static read => read.Insertion).Distinct().Count();
        var programmings = proof.Reads.Select(static read => read.Programming).Distinct().Count();
        var where = (insertions > 1 ? Text($", in {insertions} insertions") : "") + (programmings > 1 ? Text($", after {programmings} programmings") : "");
        return proof.Stability switch
        {
            "stable" => Text($"{proof.Reads.Length}, all the same{where}"),
            "varying" => Text($"{proof.Reads.Length}, which vary{where}"),
            _ => proof.Verdict.Equal ? "1" : "1; whether it is the same every time only a second read tells",
        };
    }

    private static string Agreement(ReadStatistics statistics) => Text(
        $"by {statistics.Rule}; {statistics.VaryingWords} words vary, {statistics.Ties} ties, bit errors {Percent(statistics.ErrorRate)} of a read{Between("within an insertion", statistics.Within)}{Between("between insertions", statistics.Between)}");

    private static string Between(string where, double? share) => share is { } value ? $"; {Percent(value)} of the bits differ {where}" : "";

    private static void WriteWhere(TextWriter output, ProofResult proof)
    {
        var (subject, map) = (proof.Subject, proof.Differences);
        output.WriteLine("  Where");
        WriteBlocks(output, subject.BankSize > 0 ? "bank" : "sixteenth", map.Banks);
        WriteBlocks(output, "sector", map.Sectors);
        if (subject.Shape.Width == 16)
        {
            output.WriteLine(Text($"    D0 to D7 wrong in {map.WrongLowBytes} words, D8 to D15 in {map.WrongHighBytes}"));
        }

        var lines = map.DataLines.Where(static line => line.ReadHigh + line.ReadLow > 0).ToList();
        if (lines.Count == subject.Shape.Width && lines.TrueForAll(static line => line.ReadHigh > 0 && line.ReadLow > 0))
        {
            output.WriteLine("    every data line, both ways");
            return;
        }

        Columns.Write(output, "    ", [.. lines.Select(line => new[] { subject.Lines.Of(Text($"D{line.Line}")).Chip, Text($"high in place of low in {line.ReadHigh}"), Text($"low in place of high in {line.ReadLow}") })]);
    }

    private static void WriteBlocks(TextWriter output, string what, ImmutableArray<DifferenceRow> rows)
    {
        var wrong = rows.Where(static row => row.WrongWords > 0).ToList();
        if (rows.IsEmpty)
        {
            return;
        }

        output.WriteLine(Text($"    {wrong.Count} of {rows.Length} {what}s"));
        if (wrong.Count == rows.Length)
        {
            return;
        }

        Columns.Write(output, "      ", [.. wrong.Take(MostRows).Select(row => new[] { Text($"{what} {row.Number}"), Number.Hex(row.Offset, 6), ByteSize.Words(row.Length), Text($"{row.WrongWords} wrong") })]);
        if (wrong.Count > MostRows)
        {
            output.WriteLine(Text($"      and {wrong.Count - MostRows} more"));
        }
    }

    private static void WriteFaults(TextWriter output, ProofResult proof)
    {
        if (proof.Verdict.Faults.IsEmpty)
        {
            output.WriteLine("  Left open");
            output.WriteLine(proof.HasCandidates ? "    Nothing is named: no one explanation of every word is left." : "    Nothing is named: nothing that is known explains what was read.");
            return;
        }

        output.WriteLine(proof.Verdict.Faults.Length == 1 ? "  Fault" : "  Faults");
        foreach (var fault in proof.Verdict.Faults)
        {
            output.WriteLine($"    {FaultWords.Sentence(proof.Subject, fault)}");
            Columns.Write(output, "      ", [.. fault.Lines.Select(line => new[] { LineText(proof.Subject, line), PinText.Of(proof.Subject, line) })]);
            if (PinText.Caution(proof.Subject, fault) is { } caution)
            {
                output.WriteLine($"      {caution}");
            }

            foreach (var sentence in PinText.Beside(proof.Subject, fault))
            {
                output.WriteLine($"      {sentence}");
            }

            output.WriteLine($"      {fault.Kind.Look}");
        }

        if (proof.Verdict.Faults.Any(static fault => !fault.Lines.IsEmpty))
        {
            output.WriteLine("    Switch off and take the cartridge out before you touch a joint.");
        }
    }

    private static string LineText(ProofSubject subject, string line) =>
        subject.Lines.Of(line) is var name && name.Bus is { } bus ? $"{name.Chip} of the chip, {bus} of the bus" : name.Chip;

    private static void WriteExplained(TextWriter output, ProofResult proof)
    {
        var verdict = proof.Verdict;
        if (!verdict.Faults.IsEmpty)
        {
            output.WriteLine($"    This explains {Percent(verdict.Explains.All)} of all words, and {Percent(verdict.Explains.Telling)} of those it changes.");
        }

        if (!verdict.RunnerUp.IsEmpty)
        {
            output.WriteLine($"    The next best, {FaultWords.Names(proof.Subject, verdict.RunnerUp)}, explains {Percent(verdict.RunnerUpExplains.All)} and {Percent(verdict.RunnerUpExplains.Telling)}.");
        }
    }

    private static void WriteCandidates(TextWriter output, ProofResult proof)
    {
        var verdict = proof.Verdict;
        if (verdict.Candidates.IsEmpty)
        {
            return;
        }

        output.WriteLine(!verdict.Faults.IsEmpty ? "  The same read could come from"
            : $"  {(proof.HasCandidates ? "Candidates" : "Tried")}; the first explains {Percent(verdict.Explains.All)} of all words, and {Percent(verdict.Explains.Telling)} of those it changes");
        foreach (var candidate in verdict.Candidates.Take(MostCandidates))
        {
            output.WriteLine($"    {FaultWords.Names(proof.Subject, candidate)}");
        }

        if (verdict.Candidates.Length > MostCandidates)
        {
            output.WriteLine(Text($"    and {verdict.Candidates.Length - MostCandidates} more, which --json lists"));
        }
    }

    private static string Word(ProofSubject subject, int word) => word.ToString(subject.Shape.Width == 8 ? "X2" : "X4", CultureInfo.InvariantCulture);

    // Nearly all is not all.
    private static string Percent(double share) => Text($"{(share < 1 ? Math.Min(99.99, 100 * share) : 100):0.##} %");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
