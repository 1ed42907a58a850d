using System.CommandLine;
using Cartwright.Inspection;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright examine</c></summary>
internal static class ExamineVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var files = new Argument<string[]>("files") { Description = "Images, or folders of images.", Arity = ArgumentArity.OneOrMore };
        var platform = ImageInput.PlatformOption();
        var brief = new Option<bool>("--brief") { Description = "Says one line for each image." };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "examine",
            "Tells what an existing image is: platform, header, checksums, sizes, banks, and what is wrong with it.",
            "cartwright examine game.sfc",
            "cartwright examine --brief backups",
            "cartwright examine --json --platform msx game.rom")
        {
            files, platform, brief, json,
        };
        verb.SetAction(parsed => ImageInput.TryFind(parsed.GetValue(platform), errors, out var named)
            ? Run(parsed.GetRequiredValue(files), named, parsed.GetValue(brief), parsed.GetValue(json), output, errors)
            : ExitCode.Refused);
        return verb;
    }

    private static int Run(string[] names, Platform? platform, bool brief, bool json, TextWriter output, TextWriter errors)
    {
        var files = names.SelectMany(Files).ToList();
        var examined = new ExaminedImage[files.Count];
        // Every image is let go as soon as its line is made: a folder may hold more than memory does.
        var lines = new string[files.Count];
        Parallel.For(0, files.Count, i =>
        {
            var image = ExaminedImage.Of(files[i], platform);
            lines[i] = brief ? ExamineReport.Line(image) : "";
            examined[i] = brief && !json ? image with { Image = null } : image;
        });
        if (json)
        {
            ExamineJson.Write(output, examined);
        }
        else if (brief)
        {
            foreach (var line in lines)
            {
                output.WriteLine(line);
            }
        }
        else
        {
            WriteReports(output, errors, examined);
        }

        return examined.Any(static image => image.Findings.Any(static finding => finding.Rule == InspectionFindings.NotThere)) ? ExitCode.Refused
            : examined.Any(static image => image.Errors > 0) ? ExitCode.Found
            : ExitCode.Done;
    }

    private static void WriteReports(TextWriter output, TextWriter errors, ExaminedImage[] examined)
    {
        foreach (var image in examined)
        {
            if (image.Image is { } opened)
            {
                ExamineReport.Write(output, opened);
            }

            ImageInput.WriteFindings(errors, image.Findings);
        }
    }

    private static IEnumerable<string> Files(string name) =>
        Directory.Exists(name) ? Directory.EnumerateFiles(name, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [name];
}
