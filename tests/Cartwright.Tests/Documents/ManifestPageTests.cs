using System.Text;
using Cartwright.Documents;
using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class ManifestPageTests
{
    private static readonly string Page = ManifestPage.Markdown();

    [Fact]
    public void The_page_of_the_manifest_is_up_to_date() => Approved.Equal("docs/manifest.md", Page);

    [Fact]
    public void Every_key_has_one_row() =>
        Assert.All(ManifestKeys.Rows, row => Assert.Single(Page.Split('\n'), line => line.StartsWith($"| `{row.Pattern}` |", StringComparison.Ordinal)));

    [Fact]
    public void Every_section_has_keys_or_sections_below() =>
        Assert.All(ManifestKeys.Groups, group => Assert.True(group.Keys.Any() || ManifestKeys.Groups.Any(other => other.Pattern.StartsWith(group.Pattern + ":", StringComparison.Ordinal)), group.Pattern));

    [Fact]
    public void The_example_is_read_without_a_finding()
    {
        var log = new FindingLog();
        var manifest = ManifestReader.Read("cart.json", Encoding.UTF8.GetBytes(ManifestPage.Example), ManifestOverrides.None, log);
        Assert.Empty(log.ToSorted().Select(finding => finding.Message));
        Assert.Equal("LANTERN TIDE", manifest!.Cart.Title?.Text);
    }

    // Worked by hand: 4 Mbit are 4 x 131072 bytes, 0.5 MiB are 524288, 256 Kbit are 32768.
    [Theory]
    [InlineData("| `4Mbit` | 524288 |")]
    [InlineData("| `0.5MiB` | 524288 |")]
    [InlineData("| `256Kbit` | 32768 |")]
    [InlineData("| `03:4000` | 0x03 | 0x4000 |")]
    [InlineData("| `12615680` | (in the number) | 0xC08000 |")]
    public void Notations_are_told_with_their_values(string line) => Assert.Contains(line, Page.Split('\n'));

    // The order the page promises: the file, then the environment, then --set.
    [Fact]
    public void A_setting_wins_over_a_variable_and_a_variable_over_the_file()
    {
        var text = Encoding.UTF8.GetBytes("""{ "cart": { "name": "file", "platform": "file", "title": "file" }, "programs": [ { "file": "a" }, { "file": "b" } ] }""");
        var overrides = ManifestOverrides.None with
        {
            Environment = ManifestOverrides.None.Environment.Add("CARTWRIGHT__cart__platform", "variable").Add("CARTWRIGHT__cart__title", "variable"),
            Settings = ManifestOverrides.None.Settings.Add("cart:title", "setting").Add("programs:0:file", "other"),
        };
        var manifest = ManifestReader.Read("cart.json", text, overrides, new FindingLog())!;
        Assert.Equal(("file", "variable", "setting"), (manifest.Cart.Name.Text, manifest.Cart.Platform.Text, manifest.Cart.Title?.Text));
        Assert.Equal(["other", "b"], manifest.Programs.Select(program => program.File.Text));
        Assert.Equal("environment variable CARTWRIGHT__cart__platform", manifest.Cart.Platform.Place.File);
        Assert.Equal("--set cart:title", manifest.Cart.Title?.Place.File);
    }
}
