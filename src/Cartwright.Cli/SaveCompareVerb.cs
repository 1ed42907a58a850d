using System.CommandLine;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save compare</c></summary>
internal static class SaveCompareVerb
{
    private const int MostRows = 32;

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var first = new Argument<string>("first") { Description = "The earlier save." };
        var second = new Argument<string>("second") { Description = "The later save." };
        var block = new Option<string>("--block") { Description = "Bytes of a block.", HelpName = "size", DefaultValueFactory = static _ => ByteSize.Format(SaveComparison.UsualBlock) };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "compare",
            "Says what changed from one save to another, block by block.",
            "cartwright save compare saves/000101.0001.2026-11-01.sav saves/000101.0002.2026-11-25.sav",
            "cartwright save compare before.sav after.sav --block 64")
        {
            first, second, block, json,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetValue(block) is { } text && (!ByteSize.TryParse(text, out var size) || size is < SaveComparison.SmallestBlock or > int.MaxValue))
            {
                result.AddError(FormattableString.Invariant($"--block takes {ByteSize.Forms}, {SaveComparison.SmallestBlock} bytes or more."));
            }
        });
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var (one, other) = (parsed.GetRequiredValue(first), parsed.GetRequiredValue(second));
            var (before, after) = (Read(one, log), Read(other, log));
            if (log.HasErrors || before is null || after is null)
            {
                ImageInput.WriteFindings(errors, log.ToSorted());
                return ExitCode.Refused;
            }

            _ = ByteSize.TryParse(parsed.GetRequiredValue(block), out var size);
            var comparison = SaveComparison.Of(before, after, (int)size);
            if (before.Length != after.Length)
            {
                log.Add(KeepFindings.Lengths, new SourcePlace(other), $"{one} has {ByteSize.Describe(before.Length)}, {other} has {ByteSize.Describe(after.Length)}.");
            }

            if (parsed.GetValue(json))
            {
                Json.Write(output, writer => WriteJson(writer, comparison, log));
            }
            else
            {
                ImageInput.WriteFindings(errors, log.ToSorted());
                WriteText(output, comparison);
            }

            return ExitCode.Done;
        });
        return verb;
    }

    private static byte[]? Read(string file, FindingLog log)
    {
        var bytes = ImageInput.Read(file, log);
        if (bytes is not null)
        {
            _ = SaveFileChecks.IsUsable(file, bytes, log);
        }

        return bytes;
    }

    private static void WriteText(TextWriter output, SaveComparison comparison)
    {
        output.WriteLine(comparison.ChangedBytes == 0 ? $"Nothing changed: {comparison.Summary}." : $"Changed: {comparison.Summary}.");
        WriteRows(output, $"blocks of {ByteSize.Words(comparison.BlockSize)}", comparison.Blocks.Length,
            [.. comparison.Blocks.Take(MostRows).Select(block => new[] { $"block {block.Number}", "at " + At(block.Number * (long)comparison.BlockSize), Bytes(block.ChangedBytes) })]);
        WriteRows(output, "runs", comparison.RunCount, [.. comparison.Runs.Take(MostRows).Select(static run => new[] { "at " + At(run.Offset), Bytes(run.Length) })]);
    }

    private static void WriteRows(TextWriter output, string name, int count, string[][] rows)
    {
        if (count == 0)
        {
            return;
        }

        output.WriteLine(FormattableString.Invariant($"{count} {name}:"));
        Columns.Write(output, "  ", rows);
        if (count > rows.Length)
        {
            output.WriteLine(FormattableString.Invariant($"  and {count - rows.Length} more"));
        }
    }

    private static string At(long offset) => FormattableString.Invariant($"{Number.Hex(offset, 6)} ({offset})");

    private static string Bytes(int count) => FormattableString.Invariant($"{count} byte{(count == 1 ? "" : "s")}");

    private static void WriteJson(Utf8JsonWriter json, SaveComparison comparison, FindingLog log)
    {
        json.WriteBoolean("same", comparison.IsSame);
        json.WriteNumber("firstLength", comparison.FirstLength);
        json.WriteNumber("secondLength", comparison.SecondLength);
        json.WriteNumber("changedBytes", comparison.ChangedBytes);
        json.WriteNumber("changedBits", comparison.ChangedBits);
        json.WriteNumber("blockSize", comparison.BlockSize);
        json.WriteStartArray("blocks");
        foreach (var block in comparison.Blocks)
        {
            json.WriteStartObject();
            json.WriteNumber("block", block.Number);
            json.WriteNumber("changedBytes", block.ChangedBytes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("runCount", comparison.RunCount);
        json.WriteStartArray("runs");
        foreach (var run in comparison.Runs)
        {
            json.WriteStartObject();
            json.WriteNumber("offset", run.Offset);
            json.WriteNumber("length", run.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Json.WriteFindings(json, log.ToSorted());
    }
}
