using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright arrange find</c></summary>
internal static class ArrangeFindVerb
{
    private static readonly ImmutableSortedDictionary<string, ChipJoin> Joins = ManifestWords.Words(
        ("in-sequence", ChipJoin.InSequence), ("bytes-in-turn", ChipJoin.BytesInTurn), ("words-in-turn", ChipJoin.WordsInTurn), ("pairs-in-sequence", ChipJoin.PairsInSequence));

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var chips = new Argument<string[]>("chips") { Description = "What the chips hold, in any order: one to four files.", Arity = ArgumentArity.OneOrMore };
        var known = new Option<string?>("--image") { Description = "The image they should give; without it one is looked for that a platform knows by its marks and checksums.", HelpName = "file" };
        var platform = ImageInput.PlatformOption();
        var target = new Option<string?>("--out") { Description = "Writes the image, in the console's order, to this file, which must not be there yet.", HelpName = "file" };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "find",
            "Finds how chips of an unknown board make up an image: lanes, words, halves, bits, blocks.",
            "cartwright arrange find chip-a.bin chip-b.bin --out game.md",
            "cartwright arrange find chip.bin --image game.sfc")
        {
            chips, known, platform, target, json,
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var names = parsed.GetRequiredValue(chips).ToImmutableArray();
            var found = Find(names, parsed.GetValue(known), named, log);
            var written = !log.HasErrors && parsed.GetValue(target) is { } file ? NewFile.Write(Path.GetFullPath(file), found[0].Image, log) : null;
            Report(names, found, written, log, parsed.GetValue(json), output, errors);
            return log.HasErrors ? found.IsEmpty ? ExitCode.Refused : ExitCode.Found : ExitCode.Done;
        });
        return verb;
    }

    private static ImmutableArray<FoundArrangement> Find(ImmutableArray<string> names, string? known, Platform? named, FindingLog log)
    {
        var contents = names.Select(name => ImageInput.Read(name, log)).OfType<byte[]>().ToImmutableArray();
        var image = known is null ? null : ImageInput.Read(known, log);
        return log.HasErrors ? [] : new ArrangementFinder(new ImageOpener(PlatformCatalog.BuiltIn), named).Find(names, contents, image is null ? null : (known!, image), log);
    }

    private static void Report(ImmutableArray<string> names, ImmutableArray<FoundArrangement> found, string? written, FindingLog log, bool json, TextWriter output, TextWriter errors)
    {
        var findings = log.ToSorted();
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteString("written", written);
                writer.WriteStartArray("ways");
                foreach (var row in found)
                {
                    writer.WriteStartObject();
                    writer.WriteString("gives", row.Told);
                    writer.WriteStartArray("chips");
                    foreach (var chip in row.Way.Sequence)
                    {
                        writer.WriteStringValue(names[chip]);
                    }

                    writer.WriteEndArray();
                    writer.WriteString("join", ManifestWords.WordOf(Joins, row.Way.Join));
                    writer.WriteBoolean("halvesExchanged", row.Way.HalvesExchanged);
                    writer.WriteBoolean("bitsReversed", row.Way.BitsReversed);
                    writer.WriteString("order", ManifestWords.Word(row.Way.Order));
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
                Json.WriteFindings(writer, findings);
            });
            return;
        }

        ImageInput.WriteFindings(errors, findings);
        foreach (var row in found)
        {
            output.WriteLine($"Gives {row.Told}, {ByteSize.Words(row.Image.Length)}");
            foreach (var step in Steps(row.Way, names))
            {
                output.WriteLine("  " + step);
            }
        }

        if (written is not null)
        {
            output.WriteLine($"Written to {written}");
        }
    }

    private static IEnumerable<string> Steps(ChipArrangement way, ImmutableArray<string> names)
    {
        if (way.HalvesExchanged)
        {
            yield return "exchange the halves of each chip";
        }

        if (names.Length > 1)
        {
            var order = string.Join(", then ", way.Sequence.Select(chip => names[chip]));
            yield return way.Join switch
            {
                ChipJoin.BytesInTurn => $"take a byte of each chip in turn: {order}",
                ChipJoin.WordsInTurn => $"take a 16-bit word of each chip in turn: {order}",
                ChipJoin.PairsInSequence => $"take a byte of each chip of a pair in turn, one pair behind the other: {order}",
                _ => $"put one chip behind the other: {order}",
            };
        }

        if (way.BitsReversed)
        {
            yield return "reverse the bits of each byte";
        }

        yield return way.Order == ImageOrder.Console ? "that is the console's order" : $"bring the order `{ManifestWords.Word(way.Order)}` to the console's";
    }
}
