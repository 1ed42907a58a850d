using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary>One file that was examined.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Image">The image; null when it could not be read as one.</param>
/// <param name="Findings">All there is to say.</param>
internal sealed record ExaminedImage(string File, OpenedImage? Image, ImmutableArray<Finding> Findings)
{
    public static ExaminedImage Of(string file, Platform? platform)
    {
        var log = new FindingLog();
        var image = ImageInput.Open(file, platform, log);
        if (image is not null)
        {
            new ImageExamination(image, log).Run();
        }

        return new ExaminedImage(file, image, log.ToSorted());
    }

    public int Errors => Findings.Count(static finding => finding.Severity == FindingSeverity.Error);

    public int Warnings => Findings.Count(static finding => finding.Severity == FindingSeverity.Warning);
}
