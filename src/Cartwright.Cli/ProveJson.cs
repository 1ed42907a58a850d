using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>Prints what a proof came to as JSON. A proof of one chip is told at the top; of several, chips and units are listed below it.</summary>
internal static class ProveJson
{
    public static void Write(TextWriter output, ProofReport? report, ProofTask task, ImmutableArray<Finding> findings) => Json.Write(output, json =>
    {
        if (report is not null)
        {
            Write(json, report, task);
        }

        Json.WriteFindings(json, findings);
    });

    private static void Write(Utf8JsonWriter json, ProofReport report, ProofTask task)
    {
        json.WriteBoolean("equal", report.IsEqual);
        json.WriteString("expected", report.Expected.File);
        Json.WriteTexts(json, "reads", task.Reads.Select(static read => read.File));
        if (report.Units is not [{ Name: null } single])
        {
            WriteUnits(json, report.Units);
            return;
        }

        if (single.Chips is [var chip])
        {
            WriteChip(json, chip);
            return;
        }

        WriteFaults(json, single.Chips.SelectMany(static chip => chip.Verdict.Faults.Select(fault => (chip.Subject, fault))));
        WriteChips(json, single);
    }

    private static void WriteUnits(Utf8JsonWriter json, ImmutableArray<UnitProof> units)
    {
        json.WriteStartArray("units");
        foreach (var unit in units)
        {
            json.WriteStartObject();
            json.WriteString("unit", unit.Name);
            json.WriteBoolean("equal", unit.IsEqual);
            WriteChips(json, unit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteShared(json, SharedLines.AcrossUnits(units), "units");
    }

    private static void WriteChips(Utf8JsonWriter json, UnitProof unit)
    {
        json.WriteStartArray("chips");
        foreach (var chip in unit.Chips)
        {
            json.WriteStartObject();
            json.WriteBoolean("equal", chip.Verdict.Equal);
            WriteChip(json, chip);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteShared(json, SharedLines.AcrossChips(unit), "sites");
    }

    private static void WriteShared(Utf8JsonWriter json, ImmutableArray<SharedLine> lines, string where)
    {
        json.WriteStartArray("sharedLines");
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("line", line.Line);
            if (line.Site is { } site)
            {
                json.WriteString("site", site);
            }

            Json.WriteTexts(json, where, line.Where);
            json.WriteNumber("outOf", line.OutOf);
            WriteShare(json, "chance", line.Chance);
            json.WriteBoolean("pointsAtTheBoard", line.PointsAtTheBoard);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteChip(Utf8JsonWriter json, ProofResult proof)
    {
        var (subject, verdict) = (proof.Subject, proof.Verdict);
        json.WriteString("site", subject.Site);
        json.WriteString("part", subject.Part?.Name);
        json.WriteNumber("size", subject.Expected.Length);
        json.WriteNumber("width", subject.Shape.Width);
        json.WriteString("readThrough", subject.IsThroughBoard ? "board" : "chip");
        WriteDigest(json, FileDigest.Of(subject.Expected));
        WriteReads(json, proof);
        DifferenceJson.Write(json, proof);
        WriteFaults(json, verdict.Faults.Select(fault => (subject, fault)));
        WriteShares(json, "explains", verdict.Explains);
        json.WriteStartArray("candidates");
        foreach (var candidate in verdict.Candidates)
        {
            json.WriteStartArray();
            foreach (var fault in candidate)
            {
                FaultJson.Write(json, subject, fault);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        WriteRunnerUp(json, subject, verdict);
        json.WriteString("next", verdict.Next);
    }

    private static void WriteReads(Utf8JsonWriter json, ProofResult proof)
    {
        json.WriteString("stability", proof.Stability);
        json.WriteStartArray("readbacks");
        foreach (var read in proof.Reads)
        {
            json.WriteStartObject();
            json.WriteNumber("insertion", read.Insertion);
            json.WriteNumber("programming", read.Programming);
            json.WriteNumber("size", read.Bytes.Length);
            WriteDigest(json, FileDigest.Of(read.Bytes));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (proof.Verdict.Statistics is not { } statistics)
        {
            return;
        }

        json.WriteStartObject("statistics");
        json.WriteNumber("reads", statistics.Reads);
        json.WriteString("rule", statistics.Rule);
        json.WriteNumber("ties", statistics.Ties);
        json.WriteNumber("varyingWords", statistics.VaryingWords);
        WriteShare(json, "within", statistics.Within);
        WriteShare(json, "between", statistics.Between);
        WriteShare(json, "errorRate", statistics.ErrorRate);
        json.WriteEndObject();
    }

    private static void WriteFaults(Utf8JsonWriter json, IEnumerable<(ProofSubject Subject, Fault Fault)> faults)
    {
        json.WriteStartArray("faults");
        foreach (var (subject, fault) in faults)
        {
            FaultJson.Write(json, subject, fault);
        }

        json.WriteEndArray();
    }

    private static void WriteRunnerUp(Utf8JsonWriter json, ProofSubject subject, Verdict verdict)
    {
        if (verdict.RunnerUp.IsEmpty)
        {
            json.WriteNull("runnerUp");
            return;
        }

        json.WriteStartObject("runnerUp");
        WriteFaults(json, verdict.RunnerUp.Select(fault => (subject, fault)));
        WriteShares(json, "explains", verdict.RunnerUpExplains);
        json.WriteEndObject();
    }

    private static void WriteShares(Utf8JsonWriter json, string name, Shares shares)
    {
        json.WriteStartObject(name);
        WriteShare(json, "all", shares.All);
        WriteShare(json, "telling", shares.Telling);
        json.WriteEndObject();
    }

    // Nearly all must not read as all.
    private static void WriteShare(Utf8JsonWriter json, string name, double? share)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(share is not { } value ? "null" : value is > 0.999999 and < 1 ? "0.999999" : value.ToString("0.######", CultureInfo.InvariantCulture));
    }

    private static void WriteDigest(Utf8JsonWriter json, FileDigest digest)
    {
        json.WriteString("crc32", digest.Crc32Text);
        json.WriteString("sha256", digest.Sha256);
    }
}
