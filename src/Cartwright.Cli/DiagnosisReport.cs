using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>Tells which faults a read of an image could not show.</summary>
internal static class DiagnosisReport
{
    private const int MostRows = 12;
    private const int MostLines = 24;
    private const int MostAlike = 4;

    public static void WriteText(TextWriter output, ImmutableArray<(ProofSubject Subject, ImageDiagnosis Diagnosis)> chips, bool isBrief)
    {
        foreach (var (subject, diagnosis) in chips)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{subject.Site}, {subject.Description}: of {diagnosis.Tried} single wiring faults {diagnosis.Invisible.Length} would not show, {diagnosis.Weak.Length} only in one to three words, {diagnosis.Alike.Sum(static group => group.Length)} not apart from another"));
            if (!isBrief)
            {
                WriteFaults(output, "Would not show at all", ByKind(subject, diagnosis.Invisible));
                WriteFaults(output, "Would show in one to three words, too few to be named", ByKind(subject, [.. diagnosis.Weak.Select(static row => row.Fault)]));
                WriteFaults(output, "Could not be told apart on this image", [.. diagnosis.Alike.Select(group => string.Join(" = ", group.Take(MostAlike).Select(fault => FaultWords.Name(subject, fault))) + (group.Length > MostAlike ? " = ..." : ""))]);
            }
        }

        if (!isBrief && !chips.IsEmpty)
        {
            output.WriteLine(chips.All(static chip => chip.Diagnosis.ShowsAll)
                ? "Every single wiring fault would show, each as itself. Levels and speed no image shows."
                : "`cartwright pattern fill` makes unused space telling; `cartwright pattern signature` makes an image that shows every line.");
        }
    }

    public static void WriteJson(TextWriter output, ImmutableArray<(ProofSubject Subject, ImageDiagnosis Diagnosis)> chips, ImmutableArray<Finding> findings) => Json.Write(output, json =>
    {
        json.WriteStartArray("chips");
        foreach (var (subject, diagnosis) in chips)
        {
            json.WriteStartObject();
            json.WriteString("site", subject.Site);
            json.WriteNumber("size", subject.Expected.Length);
            json.WriteNumber("tried", diagnosis.Tried);
            json.WriteBoolean("showsAll", diagnosis.ShowsAll);
            WriteFaults(json, "invisible", subject, diagnosis.Invisible);
            WriteFaults(json, "weak", subject, [.. diagnosis.Weak.Select(static row => row.Fault)]);
            json.WriteStartArray("alike");
            foreach (var group in diagnosis.Alike)
            {
                json.WriteStartArray();
                foreach (var fault in group)
                {
                    FaultJson.Write(json, subject, fault);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Json.WriteFindings(json, findings);
    });

    private static void WriteFaults(Utf8JsonWriter json, string name, ProofSubject subject, ImmutableArray<Fault> faults)
    {
        json.WriteStartArray(name);
        foreach (var fault in faults)
        {
            FaultJson.Write(json, subject, fault);
        }

        json.WriteEndArray();
    }

    private static void WriteFaults(TextWriter output, string title, ImmutableArray<string> rows)
    {
        if (rows.IsEmpty)
        {
            return;
        }

        output.WriteLine($"  {title}");
        foreach (var row in rows.Take(MostRows))
        {
            output.WriteLine($"    {row}");
        }

        if (rows.Length > MostRows)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    and {rows.Length - MostRows} more, which --json lists"));
        }
    }

    private static ImmutableArray<string> ByKind(ProofSubject subject, ImmutableArray<Fault> faults) =>
        [.. faults.GroupBy(static fault => fault.Kind).Select(group => Listed(subject, group.Key, [.. group]))];

    private static string Listed(ProofSubject subject, FaultKind kind, ImmutableArray<Fault> faults)
    {
        var lines = faults.Where(static fault => !fault.Lines.IsEmpty).Select(fault => string.Join('+', fault.Lines.Select(line => subject.Lines.Of(line).Chip))).Distinct().ToList();
        return lines.Count == 0 ? kind.Name
            : $"{kind.Name}: {string.Join(", ", lines.Take(MostLines))}{(lines.Count > MostLines ? string.Create(CultureInfo.InvariantCulture, $" and {lines.Count - MostLines} more") : "")}";
    }
}
