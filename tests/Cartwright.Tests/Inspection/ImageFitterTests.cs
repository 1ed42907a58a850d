using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>Images get the length a chip asks for, and nothing but fill.</summary>
public sealed class ImageFitterTests
{
    [Theory]
    [InlineData("gb")]
    [InlineData("gba")]
    [InlineData("ngp")]
    [InlineData("vectrex")]
    [InlineData("coleco")]
    public void A_short_image_is_filled_up(string name)
    {
        var cart = ExampleCart.All["lantern-tide-" + name];
        var image = OpenedExample.Open(cart, cart.File[..^101]);
        var fitted = Fit(image, strip: false, fillUp: true, out _)!;
        Assert.Equal(101, fitted.Added);
        Assert.Equal([.. cart.File[..^101], .. TestBytes.All(0xFF, 101)], fitted.Image.Bytes.ToArray());
    }

    [Fact]
    public void A_prefix_is_taken_off()
    {
        var cart = ExampleCart.All["lantern-tide-pce"];
        var image = OpenedExample.Open(cart, [(byte)(cart.File.Length / 8192), .. new byte[511], .. cart.File]);
        var fitted = Fit(image, strip: true, fillUp: false, out _)!;
        Assert.Equal((512, 0), (fitted.Stripped, fitted.Added));
        Assert.Equal(cart.File, fitted.Image.Bytes.ToArray());
    }

    [Fact]
    public void What_has_its_length_is_left_alone()
    {
        var image = OpenedExample.Open("lantern-tide-gb");
        var fitted = Fit(image, strip: true, fillUp: true, out _)!;
        Assert.Same(image, fitted.Image);
        Assert.False(fitted.IsChanged);
    }

    [Fact]
    public void A_container_says_how_long_the_image_is()
    {
        var cart = ExampleCart.All["lantern-tide-nes"];
        Assert.Null(Fit(OpenedExample.Open(cart, cart.File[..^8193]), strip: false, fillUp: true, out var codes));
        Assert.Equal(["CW8022"], codes);
    }

    private static FittedImage? Fit(OpenedImage image, bool strip, bool fillUp, out IReadOnlyList<string> codes)
    {
        var log = new FindingLog();
        var fitted = new ImageFitter(new ImageOpener(PlatformCatalog.BuiltIn), strip, fillUp).Fit(image, log);
        codes = [.. log.ToSorted().Select(finding => finding.Code)];
        return fitted;
    }
}
