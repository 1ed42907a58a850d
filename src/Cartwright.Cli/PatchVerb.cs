using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright patch</c></summary>
internal static class PatchVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var image = new Argument<string>("image") { Description = "The image the patch is for." };
        var patch = new Argument<string>("patch") { Description = "The patch: IPS, BPS or VCDIFF, whatever its name." };
        var target = new Option<string?>("--out") { Description = "Writes the result to this file, which must not be there yet; without it, beside the image with `.patched` in its name.", HelpName = "file" };
        var platform = ImageInput.PlatformOption();
        var noMend = new Option<bool>("--no-mend") { Description = "Leaves size codes and checksums as the patch leaves them." };
        var board = BoardInput.OptionalBoardOption();
        var chips = BoardInput.ChipOption();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "patch",
            "Applies a patch to an image and puts size codes and checksums right; `patch make` makes one.",
            "cartwright patch game.gb spring.bps",
            "cartwright patch game.sfc fix.ips --out game-fixed.sfc",
            "cartwright patch game.md fix.ips --board md-double-8bit --chip U1=SST39SF020A --chip U2=SST39SF020A",
            "cartwright patch make game.gb game-new.gb --out spring.bps")
        {
            image, patch, target, platform, noMend, board, chips, json, PatchMakeVerb.Create(output, errors),
        };
        verb.SetAction(parsed =>
        {
            Board? onto = null;
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named) || (parsed.GetValue(board) is { } id && !BoardInput.TryFind(id, errors, out onto)))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var patcher = new ImagePatcher(new ImageOpener(PlatformCatalog.BuiltIn), named, !parsed.GetValue(noMend));
            var parts = BoardInput.Parts(parsed.GetValue(chips), log);
            var (file, name) = (parsed.GetRequiredValue(image), parsed.GetRequiredValue(patch));
            var result = ImageInput.Read(file, log) is { } bytes && ImageInput.Read(name, log) is { } held ? patcher.Apply((file, bytes), (name, held), log) : null;
            var changes = result is not null && onto is not null ? Chips(file, result, new ChipCutter(onto, parts, WordOrder.Bus), log) : [];
            var written = result is null || log.HasErrors ? null : NewFile.Write(NewFile.Beside(Path.GetFullPath(file), parsed.GetValue(target), "patched"), result.Bytes, log);
            var rewrites = changes.Select(change => (change, ChipRewrite.Of(change, parts.GetValueOrDefault(change.Chip.Site.Name)?.Text))).ToImmutableArray();
            return Report(file, result, rewrites, written, log, parsed.GetValue(json), output, errors);
        });
        return verb;
    }

    // The chips of the image as it was have been told of before, or are none of the patch's affair.
    private static ImmutableArray<ChipChange> Chips(string file, PatchedImage result, ChipCutter cutter, FindingLog log) =>
        result is { Before: { } before, Image: { } after } ? ChipChange.Between(cutter.Cut(before.Cart.Rom, file, new FindingLog()), cutter.Cut(after.Cart.Rom, file, log)) : [];

    private static int Report(string file, PatchedImage? result, ImmutableArray<(ChipChange Change, ChipRewrite? Rewrite)> chips, string? written, FindingLog log, bool json, TextWriter output, TextWriter errors)
    {
        var findings = log.ToSorted();
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteString("platform", result?.Image?.Found.Platform.Facts.Id);
                writer.WriteString("written", written);
                MendReport.WriteChanges(writer, "mended", result?.Mended ?? []);
                writer.WriteStartArray("banks");
                foreach (var change in result?.Banks ?? [])
                {
                    writer.WriteStartObject();
                    writer.WriteString("region", change.Region);
                    writer.WriteNumber("bank", change.Bank.Number);
                    writer.WriteNumber("offset", change.Bank.Offset);
                    writer.WriteNumber("length", change.Bank.Length);
                    writer.WriteNumber("changed", change.Changed);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
                WriteChips(writer, chips);
                Json.WriteFindings(writer, findings);
            });
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            if (result is not null && written is not null)
            {
                WriteText(output, file, result, chips, written);
            }
        }

        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }

    private static void WriteText(TextWriter output, string file, PatchedImage result, ImmutableArray<(ChipChange Change, ChipRewrite? Rewrite)> chips, string written)
    {
        output.WriteLine(result.Image is { } image ? $"{file}: {image.Found.Platform.Facts.Name}, {image.Cart.Layout.Variant}" : $"{file}: no clear platform");
        if (!result.Banks.IsEmpty)
        {
            output.WriteLine("Changed");
            Columns.Write(output, "  ", [.. result.Banks.Select(static change => new[]
            {
                change.Region, Number.Hex(change.Bank.Number, 2), $"{Number.Hex(change.Bank.Offset, 6)}-{Number.Hex(change.Bank.Offset + change.Bank.Length - 1, 6)}", string.Create(CultureInfo.InvariantCulture, $"{change.Changed} of {change.Bank.Length} bytes"),
            })]);
        }

        if (!chips.IsEmpty)
        {
            output.WriteLine("Chips to write again");
            Columns.Write(output, "  ", [.. chips.Select(static row => new[]
            {
                row.Change.Chip.Site.Name, row.Change.Chip.PartName ?? "", string.Create(CultureInfo.InvariantCulture, $"{row.Change.Changed} of {row.Change.Chip.Capacity} bytes"), row.Rewrite is { } rewrite ? PlanReport.Summary(rewrite.Plan) : "",
            })]);
        }

        if (!result.Mended.IsEmpty)
        {
            output.WriteLine("Put right");
            MendReport.WriteRows(output, result.Mended);
        }

        output.WriteLine($"Written to {written}");
    }

    private static void WriteChips(Utf8JsonWriter json, ImmutableArray<(ChipChange Change, ChipRewrite? Rewrite)> chips)
    {
        json.WriteStartArray("chips");
        foreach (var (change, rewrite) in chips)
        {
            json.WriteStartObject();
            json.WriteString("site", change.Chip.Site.Name);
            json.WriteString("part", change.Chip.PartName);
            json.WriteNumber("capacity", change.Chip.Capacity);
            json.WriteNumber("changed", change.Changed);
            if (rewrite?.Plan is { } plan)
            {
                PlanReport.WriteCounts(json, plan);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
