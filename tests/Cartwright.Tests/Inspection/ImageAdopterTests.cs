using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Tests.Oracles;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>An image, adopted and built, is the image again.</summary>
public sealed class ImageAdopterTests
{
    public static TheoryData<string> Names => OpenedExample.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_exchange_file_comes_out_again(string name)
    {
        var image = OpenedExample.Open(name);
        Assert.Equal(ExampleCart.All[name].File, BuildAgain(image));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Unusual_bytes_come_out_again_or_are_refused(string name)
    {
        var cart = ExampleCart.All[name];
        var places = OpenedExample.Open(name).Cart.Headers.Where(header => header.Table.Region is not null)
            .SelectMany(header => header.Entries.Select(entry => (header.Table.Region, entry.Offset)).Concat(header.Checksums.Select(entry => (header.Table.Region, entry.Offset))));
        foreach (var (region, offset) in places)
        {
            var image = OpenedExample.Open(name);
            var file = cart.File.ToArray();
            file[image.Parts.First(part => part.Region == region).Start + offset] ^= 0x15;
            image = OpenedExample.Open(cart, file);
            if (new ImageAdopter(image).Adopt(new FindingLog()) is not null)
                Assert.Equal(image.Cart.Bytes(region!).ToArray(), Build(image).Cart!.Bytes(region!).ToArray());
        }
    }

    [Fact]
    public void A_wrong_checksum_is_kept_by_name()
    {
        var cart = ExampleCart.All["lantern-tide-gb"];
        var file = cart.File.ToArray();
        file[0x14E] ^= 1;
        Assert.Equal(["globalChecksum"], new ImageAdopter(OpenedExample.Open(cart, file)).Adopt(new FindingLog())!.Kept);
    }

    [Fact]
    public void A_length_no_board_has_is_refused_where_a_container_states_it()
    {
        var cart = ExampleCart.All["lantern-tide-nes"];
        var log = new FindingLog();
        Assert.Null(new ImageAdopter(OpenedExample.Open(cart, cart.File[..^5])).Adopt(log));
        Assert.Contains("CW8016", log.ToSorted().Select(finding => finding.Code));
    }

    [Theory]
    [InlineData("gb", 0x4000)]
    [InlineData("gba", 0xEA61)]
    [InlineData("ngp", 36000)]
    [InlineData("vectrex", 3996)]
    [InlineData("coleco", 8191)]
    public void An_image_shorter_than_any_ROM_is_filled_up_for_the_chips_and_keeps_its_length(string name, int length)
    {
        var cart = ExampleCart.All["lantern-tide-" + name];
        var build = Build(OpenedExample.Open(cart, cart.File[..length]));
        Assert.Equal(cart.File[..length], build.Files[0].Parts[0].ToArray());
        Assert.True(cart.Platform.Layout(HeaderSettings.None).Regions[0].Sizes.Allows(build.Cart!.Rom.Regions[0].Length));
    }

    private static byte[] BuildAgain(OpenedImage image)
    {
        var build = Build(image);
        return [.. build.Platform!.Exchange(build.Cart!).SelectMany(part => part.ToArray())];
    }

    private static CartBuild Build(OpenedImage image)
    {
        var log = new FindingLog();
        var adopted = new ImageAdopter(image).Adopt(log);
        Assert.True(adopted is not null, string.Join('\n', log.ToSorted().Select(FindingText.Line)));
        using var folder = new TempFolder();
        File.WriteAllBytes(Path.Combine(folder.Path, "cart.json"), AdoptedManifest.Write(adopted, image.Found.Platform.Facts.Id, "adopted"));
        foreach (var (region, bytes) in adopted.Programs)
            File.WriteAllBytes(Path.Combine(folder.Path, AdoptedManifest.ProgramName(region)), bytes.ToArray());
        var build = CartBuilder.Default.Build(new BuildRequest(Path.Combine(folder.Path, "cart.json")));
        Assert.False(build.HasErrors, string.Join('\n', build.Findings.Select(FindingText.Line)));
        return build;
    }
}
