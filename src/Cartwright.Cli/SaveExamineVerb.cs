using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save examine</c></summary>
internal static class SaveExamineVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The save." };
        var platform = new Option<string?>("--platform") { Description = "Thinks of saves of this platform only.", HelpName = "id" };
        var manifest = new Option<string?>("--manifest") { Description = "The cart.json of the game: says whether the save fits its cart.", HelpName = "file" };
        var json = Verb.JsonOption();
        var verb = new Verb("examine", "Says what a save probably is, in which layout, and whether its bytes look like a save at all.", "cartwright save examine game.sav", "cartwright save examine game.sav --platform md", "cartwright save examine game.sav --manifest cart.json")
        {
            file, platform, manifest, json,
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var name = parsed.GetRequiredValue(file);
            var bytes = ImageInput.Read(name, log);
            var cart = bytes is not null && parsed.GetValue(manifest) is { } path ? Demand(path, log) : null;
            var platforms = cart?.Platform ?? named?.Facts.Id;
            var examined = bytes is null || log.HasErrors ? null
                : SaveExamination.Of(name, bytes, platforms is null ? [.. PlatformCatalog.BuiltIn.All.Select(static known => known.Facts.Id)] : [platforms], cart, log);
            if (examined is not null && cart is { Structure.SaysNothing: false })
            {
                _ = new SaveStructure(cart.Structure).Check(bytes, new SourcePlace(name), log);
            }

            Report(name, bytes, examined, log, parsed.GetValue(json), output, errors);
            return examined is null ? ExitCode.Refused : log.HasErrors ? ExitCode.Found : ExitCode.Done;
        });
        return verb;
    }

    private static SaveDemand? Demand(string path, FindingLog log)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(ManifestInput.Path(path)));
        log.AddAll(build.Findings.Where(static finding => finding.Severity == FindingSeverity.Error));

        return build.Platform is { } platform && !build.HasErrors ? new SaveDemand(platform.Facts.Id, build.Cart is { } cart ? platform.SaveSize(cart) : null) { Structure = build.Manifest!.Save } : null;
    }

    private static void Report(string name, byte[]? bytes, SaveExamination? examined, FindingLog log, bool json, TextWriter output, TextWriter errors)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteString("file", name);
                if (examined is not null)
                {
                    WriteJson(writer, examined, FileDigest.Of(bytes));
                }

                Json.WriteFindings(writer, log.ToSorted());
            });
            return;
        }

        if (examined is not null)
        {
            WriteText(output, name, examined, FileDigest.Of(bytes));
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
    }

    private static void WriteText(TextWriter output, string name, SaveExamination examined, FileDigest digest)
    {
        output.WriteLine(name);
        Columns.Write(output, "  ", [["size", ByteSize.Describe(digest.Size)], ["CRC-32", digest.Crc32Text], ["SHA-256", digest.Sha256]]);
        output.WriteLine(examined.Candidates.IsEmpty ? "It is no save that is known here." : "What it can be, the best founded first");
        var shown = examined.Candidates.Where(row => row.Strength > 0 || examined.Candidates[0].Strength == 0).ToList();
        Columns.Write(output, "  ", [.. shown.Select(static row => new[] { row.Platform, row.Kind.Id, row.Form.ToString(), Strength(row), string.Join("; ", row.Reasons) })]);
        if (shown.Count < examined.Candidates.Length)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {examined.Candidates.Length - shown.Count} smaller with filler behind them, which --json lists"));
        }

        if (!examined.Deciding.IsEmpty)
        {
            output.WriteLine("What decides");
            Columns.Write(output, "  ", [.. examined.Deciding.Select(static line => new[] { line })]);
        }
    }

    private static string Strength(SaveCandidate candidate) => candidate.Strength switch { > 1 => "likely", 1 => "possible", _ => "less likely" };

    private static void WriteJson(Utf8JsonWriter json, SaveExamination examined, FileDigest digest)
    {
        json.WriteStartObject("digests");
        BuildRecord.WriteDigest(json, digest);
        json.WriteEndObject();
        json.WriteStartArray("candidates");
        foreach (var row in examined.Candidates)
        {
            json.WriteStartObject();
            json.WriteString("platform", row.Platform);
            json.WriteString("kind", row.Kind.Id);
            json.WriteString("layout", row.Form.ToString());
            json.WriteNumber("size", row.Size);
            json.WriteString("certainty", Strength(row));
            Json.WriteTexts(json, "reasons", row.Reasons);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Json.WriteTexts(json, "deciding", examined.Deciding);
    }
}
