using System.CommandLine;
using System.Globalization;
using Cartwright.Findings;
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
        var json = Verb.JsonOption();
        var verb = new Verb(
            "patch",
            "Applies a patch to an image and puts size codes and checksums right; `patch make` makes one.",
            "cartwright patch game.gb spring.bps",
            "cartwright patch game.sfc fix.ips --out game-fixed.sfc",
            "cartwright patch make game.gb game-new.gb --out spring.bps")
        {
            image, patch, target, platform, noMend, json, PatchMakeVerb.Create(output, errors),
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var patcher = new ImagePatcher(new ImageOpener(PlatformCatalog.BuiltIn), named, !parsed.GetValue(noMend));
            var (file, name) = (parsed.GetRequiredValue(image), parsed.GetRequiredValue(patch));
            var result = ImageInput.Read(file, log) is { } bytes && ImageInput.Read(name, log) is { } changes ? patcher.Apply((file, bytes), (name, changes), log) : null;
            var written = result is null ? null : NewFile.Write(NewFile.Beside(Path.GetFullPath(file), parsed.GetValue(target), "patched"), result.Bytes, log);
            return Report(file, result, written, log, parsed.GetValue(json), output, errors);
        });
        return verb;
    }

    private static int Report(string file, PatchedImage? result, string? written, FindingLog log, bool json, TextWriter output, TextWriter errors)
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
                Json.WriteFindings(writer, findings);
            });
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            if (result is not null && written is not null)
            {
                WriteText(output, file, result, written);
            }
        }

        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }

    private static void WriteText(TextWriter output, string file, PatchedImage result, string written)
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

        if (!result.Mended.IsEmpty)
        {
            output.WriteLine("Put right");
            MendReport.WriteRows(output, result.Mended);
        }

        output.WriteLine($"Written to {written}");
    }
}
