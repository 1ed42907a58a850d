using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Patching;

namespace Cartwright.Cli;

/// <summary><c>cartwright patch make</c></summary>
internal static class PatchMakeVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var old = new Argument<string>("old") { Description = "The image as it was." };
        var changed = new Argument<string>("new") { Description = "The image as it is to be." };
        var target = new Option<string>("--out") { Description = "The patch, which must not be there yet; the ending .ips makes an IPS patch, any other a BPS patch.", HelpName = "file", Required = true };
        var verb = new Verb(
            "make",
            "Makes a patch that leads from one image to another, and applies it to be sure.",
            "cartwright patch make game.gb game-new.gb --out spring.bps")
        {
            old, changed, target,
        };
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var path = parsed.GetRequiredValue(target);
            var format = PatchFormats.ByEnding(path) is { CanMake: true } named ? named : PatchFormats.Bps;
            var written = ImageInput.Read(parsed.GetRequiredValue(old), log) is { } from && ImageInput.Read(parsed.GetRequiredValue(changed), log) is { } to
                && Patch.Make(format, from, to, log, new SourcePlace(path)) is { } patch
                ? NewFile.Write(Path.GetFullPath(path), patch, log)
                : null;
            ImageInput.WriteFindings(errors, log.ToSorted());
            if (written is not null)
            {
                output.WriteLine($"{format.Name}, {ByteSize.Words(new FileInfo(written).Length)}, applied and compared. Written to {written}");
            }

            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }
}
