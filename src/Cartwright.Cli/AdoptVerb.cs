using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright adopt</c></summary>
internal static class AdoptVerb
{
    private const string ManifestName = "cart.json";

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The image." };
        var target = new Option<string?>("--out") { Description = "The cart folder, new or empty; without it, a folder beside the image with its name.", HelpName = "folder" };
        var platform = ImageInput.PlatformOption();
        var verb = new Verb(
            "adopt",
            "Makes a cart folder of an existing image: a manifest and programs that build the same bytes again.",
            "cartwright adopt game.gb",
            "cartwright adopt game.sfc --out game")
        {
            file, target, platform,
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var name = parsed.GetRequiredValue(file);
            var folder = Path.GetFullPath(parsed.GetValue(target) ?? Path.ChangeExtension(Path.GetFullPath(name), null));
            var done = ImageInput.Open(name, named, log) is { } image && CartFolder.IsFree(folder, remedy: null, log) && new ImageAdopter(image).Adopt(log) is { } cart && Write(image, cart, folder, log)
                ? (Image: image, Cart: cart)
                : default;
            ImageInput.WriteFindings(errors, log.ToSorted());
            if (done.Image is not null)
            {
                WriteText(output, done.Image, done.Cart, folder);
            }

            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    // The files are put in place only when a build of them, in a folder of its own, gave the image again.
    private static bool Write(OpenedImage image, AdoptedCart cart, string folder, FindingLog log)
    {
        var name = CartFolder.NameOf(folder);
        ImmutableArray<OutputFile> files =
        [
            NewFile.Of(ManifestName, AdoptedManifest.Write(cart, image.Found.Platform.Facts.Id, name)),
            .. cart.Programs.Select(static program => NewFile.Of(AdoptedManifest.ProgramName(program.Key), program.Value)),
        ];
        var trial = Directory.CreateTempSubdirectory("cartwright-");
        try
        {
            OutputFiles.Write(trial.FullName, files, new SourcePlace(image.File), log);
            var build = log.HasErrors ? null : CartBuilder.Default.Build(new BuildRequest(Path.Combine(trial.FullName, ManifestName)));
            if (build is not { HasErrors: false, Cart: { } built } || !image.IsSameAs(built))
            {
                log.Add(InspectionFindings.NotAdopted, new SourcePlace(image.File), "A build of the manifest did not give the image again."
                    + string.Concat(build?.Findings.Where(static finding => finding.Severity == FindingSeverity.Error).Take(1).Select(static finding => " " + finding.Message) ?? []));
                return false;
            }
        }
        finally
        {
            trial.Delete(recursive: true);
        }

        OutputFiles.Write(folder, files, new SourcePlace(folder), log);
        return !log.HasErrors;
    }

    private static void WriteText(TextWriter output, OpenedImage image, AdoptedCart cart, string folder)
    {
        output.WriteLine($"{image.File}: {image.Found.Platform.Facts.Name}, {image.Cart.Layout.Variant}");
        if (!cart.Kept.IsEmpty)
        {
            output.WriteLine($"Kept as bytes of the program, as no value gives them: {string.Join(", ", cart.Kept)}");
        }

        if (cart.RomLength is { } length)
        {
            output.WriteLine($"No ROM has {ByteSize.Describe(length)}: chip files are filled up, and the file for emulators and readers keeps its length");
        }

        output.WriteLine($"Built again and compared: every byte of the ROM is the same. Written into {folder}");
    }
}
