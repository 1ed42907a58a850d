using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Manifests;

public sealed class ManifestOverridesTests
{
    [Fact]
    public void A_variable_goes_before_the_file_and_a_setting_before_both()
    {
        var variable = ManifestText.Environment(("CARTWRIGHT__cart__name", "from-variable"));
        var both = variable with { Settings = ManifestText.Set(("cart:name", "from-setting")).Settings };
        Assert.Equal("lantern-tide", ManifestText.Clean(ManifestText.Good).Cart.Name.Text);
        Assert.Equal("from-variable", ManifestText.Clean(ManifestText.Good, variable).Cart.Name.Text);
        Assert.Equal("from-setting", ManifestText.Clean(ManifestText.Good, both).Cart.Name.Text);
        Assert.Equal("from-setting", both.ByKey["CART:NAME"]);
    }

    [Fact]
    public void A_finding_about_a_setting_points_at_the_option()
    {
        var finding = Assert.Single(ManifestText.Of(ManifestText.Good, ManifestText.Set(("rom:fill", "much"))).Findings);
        Assert.Equal(("--set rom:fill", 0), (finding.Place.File, finding.Place.Line));
    }

    [Fact]
    public void A_finding_about_a_variable_points_at_the_variable_as_it_is_spelled()
    {
        var finding = Assert.Single(ManifestText.Of(ManifestText.Good, ManifestText.Environment(("CARTWRIGHT__ROM__Fill", "much"))).Findings);
        Assert.Equal("environment variable CARTWRIGHT__ROM__Fill", finding.Place.File);
    }

    [Fact]
    public void A_finding_about_the_file_s_own_value_points_at_the_file()
    {
        var read = ManifestText.With("\"rom\": { \"fill\": \"much\" }", ManifestText.Set(("rom:size", "1KiB")));
        Assert.Equal("cart.json", Assert.Single(read.Findings).Place.File);
    }

    [Theory]
    [InlineData("cart:nmae")]
    [InlineData("")]
    [InlineData(":")]
    [InlineData("::")]
    [InlineData("cart:")]
    [InlineData(":cart")]
    [InlineData("cart::name")]
    [InlineData("programs:x:file")]
    public void A_mistyped_setting_is_an_unknown_key(string key)
    {
        var finding = Assert.Single(ManifestText.Of(ManifestText.Good, ManifestText.Set((key, "x"))).Findings);
        Assert.Equal("CW1003", finding.Code);
    }

    [Fact]
    public void A_setting_adds_items_and_replaces_lists()
    {
        var manifest = ManifestText.With("\"images\": { \"formats\": [ \"raw\", \"s-record\" ] }", ManifestText.Set(("programs:1:file", "b.bin"), ("images:formats", "intel-hex"))).Manifest!;
        Assert.Equal(["main.bin", "b.bin"], manifest.Programs.Select(program => program.File.Text));
        Assert.Equal([ImageFormat.IntelHex], manifest.Images.Formats);
    }

    [Fact]
    public void Other_variables_do_not_count() =>
        Assert.Empty(ManifestText.Environment(("PATH", "x"), ("CARTWRIGHT_cart__name", "x"), ("XCARTWRIGHT__cart__name", "x")).ByKey);
}
