using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright mend</c></summary>
internal static class MendVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The image." };
        var platform = ImageInput.PlatformOption();
        var target = new Option<string?>("--out") { Description = "Writes the mended image to this file, which must not be there yet; without it, beside the image with `.mended` in its name.", HelpName = "file" };
        var inPlace = new Option<bool>("--in-place") { Description = "Writes over the image, and keeps it as it was beside itself with `.before` at the end of its name." };
        var check = new Option<bool>("--check") { Description = "Only says what would be changed: exit code 1 if anything would." };
        var also = new Option<string[]>("--also") { Description = "Puts this checksum or field right too, although what it holds may be meant.", HelpName = "name" };
        var strip = new Option<bool>("--strip") { Description = "Takes off bytes in front that are not part of the image, such as a copier's prefix or a load address." };
        var fillUp = new Option<bool>("--fill-up") { Description = "Lengthens an image that has no legal size to the next one, with the platform's fill." };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "mend",
            "Puts right the size codes, fixed marks and checksums of an existing image.",
            "cartwright mend game.gb",
            "cartwright mend --in-place game.sfc",
            "cartwright mend --check game.md --also checksum",
            "cartwright mend --strip --fill-up game.vec")
        {
            file, platform, target, inPlace, check, also, strip, fillUp, json,
        };
        verb.Validators.Add(result =>
        {
            if ((result.GetValue(inPlace) ? 1 : 0) + (result.GetValue(check) ? 1 : 0) + (result.GetValue(target) is null ? 0 : 1) > 1)
            {
                result.AddError("--out, --in-place and --check exclude each other: choose one.");
            }
        });
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var name = parsed.GetRequiredValue(file);
            var fitter = new ImageFitter(new ImageOpener(PlatformCatalog.BuiltIn), parsed.GetValue(strip), parsed.GetValue(fillUp));
            var names = parsed.GetValue(also) ?? [];
            if (ImageInput.Open(name, named, log) is not { } image || !MendChecks.CanMend(image, log) || !MendChecks.KnowsNames(image, names, new SourcePlace("--also"), log) || fitter.Fit(image, log) is not { } fitted)
            {
                return MendReport.Write(null, null, null, log, parsed.GetValue(json), output, errors);
            }

            var mended = ImageMender.Mend(fitted.Image, names.ToHashSet(StringComparer.OrdinalIgnoreCase));
            var changed = mended.IsChanged || fitted.IsChanged;
            var written = changed && !parsed.GetValue(check) ? Write(image, mended, parsed.GetValue(target), parsed.GetValue(inPlace), log) : null;
            var code = MendReport.Write(fitted, mended, written, log, parsed.GetValue(json), output, errors);
            return code == ExitCode.Done && parsed.GetValue(check) && changed ? ExitCode.Found : code;
        });
        return verb;
    }

    private static string? Write(OpenedImage image, MendedImage mended, string? target, bool inPlace, FindingLog log)
    {
        var own = Path.GetFullPath(image.File);
        var path = inPlace ? own : NewFile.Beside(own, target, "mended");
        var kept = own + ".before";
        if (!NewFile.IsFree(inPlace ? kept : path, log))
        {
            return null;
        }

        ImmutableArray<OutputFile> files = [NewFile.Of(path, mended.Bytes), .. inPlace ? [NewFile.Of(kept, image.Bytes)] : ImmutableArray<OutputFile>.Empty];
        OutputFiles.Write(Path.GetDirectoryName(path)!, files, new SourcePlace(image.File), log);
        return log.HasErrors ? null : path;
    }
}
