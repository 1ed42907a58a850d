using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary>What the verbs for existing images have in common: the file, and the platform the user may name.</summary>
internal static class ImageInput
{
    public static Option<string?> PlatformOption() => new("--platform") { Description = "Reads the image as one of this platform, whatever it looks like.", HelpName = "id" };

    /// <summary>The platform the user names; false when there is none of that name, which has been told then.</summary>
    public static bool TryFind(string? name, TextWriter errors, out Platform? platform)
    {
        platform = name is null ? null : PlatformCatalog.BuiltIn.Find(name);
        if (name is not null && platform is null)
        {
            errors.WriteLine(NotFound.Line("platform", name, PlatformCatalog.BuiltIn.Question(name), "platforms"));
        }

        return name is null || platform is not null;
    }

    /// <summary>Reads and opens one image; null when it cannot be.</summary>
    public static OpenedImage? Open(string file, Platform? platform, FindingLog log) =>
        Read(file, log) is { } bytes ? new ImageOpener(PlatformCatalog.BuiltIn).Open(file, bytes, platform, log) : null;

    /// <summary>Reads a whole file; null when it cannot be.</summary>
    public static byte[]? Read(string file, FindingLog log) => ImageFile.Read(file, log);

    public static void WriteFindings(TextWriter errors, ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            errors.WriteLine(FindingText.Line(finding));
        }
    }
}
