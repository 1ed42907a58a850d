using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>Opens exchange files of the examples, and what was made of them.</summary>
internal static class OpenedExample
{
    public static TheoryData<string> Names => [.. ExampleCart.All.Keys];

    public static OpenedImage Open(string name) => Open(ExampleCart.All[name], ExampleCart.All[name].File);

    public static OpenedImage Open(ExampleCart cart, byte[] file)
    {
        var log = new FindingLog();
        var image = new ImageOpener(PlatformCatalog.BuiltIn).Open(cart.Name, file, cart.Platform, log);
        Assert.Empty(log.ToSorted().Select(FindingText.Line));
        return image!;
    }

    public static MendedImage Mend(OpenedImage image, params string[] also) => ImageMender.Mend(image, also.ToHashSet(StringComparer.Ordinal));

    public static IEnumerable<string> Codes(OpenedImage image)
    {
        var log = new FindingLog();
        new ImageExamination(image, log).Run();
        return log.ToSorted().Select(finding => finding.Code);
    }
}
