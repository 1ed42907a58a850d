using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Inspection;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>An exchange file is taken apart into what it was made of.</summary>
public sealed class ImageOpenerTests
{
    public static TheoryData<string> Names => OpenedExample.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_regions_are_those_it_was_made_of(string name)
    {
        var made = ExampleCart.All[name].Cart.Rom.Regions;
        var read = OpenedExample.Open(name).Cart.Rom.Regions;
        Assert.Equal(made.Select(region => region.Name), read.Select(region => region.Name));
        Assert.All(made, region =>
        {
            // A container may hold a small ROM as often as its window shows it.
            var bytes = read.Single(own => own.Name == region.Name).Bytes.ToArray();
            Assert.Equal(region.Bytes.ToArray(), bytes[..region.Length]);
            Assert.True(Mirror.IsMirrored(bytes, region.Length));
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_headers_say_what_was_written(string name)
    {
        var image = OpenedExample.Open(name);
        Assert.Equal(Texts(ExampleCart.All[name].Cart.Headers), Texts(image.Cart.Headers));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Examining_it_finds_what_building_it_found(string name)
    {
        var platform = ExampleCart.All[name].Platform;
        var built = ExampleCart.All[name].Build.Findings.Where(finding => platform.Findings.Contains(finding.Rule)).Select(finding => finding.Code);
        Assert.Subset(built.ToHashSet(), OpenedExample.Codes(OpenedExample.Open(name)).Where(code => platform.Findings.Any(rule => rule.Code == code)).ToHashSet());
    }

    [Fact]
    public void Prefix_and_order_are_taken_off()
    {
        var cart = ExampleCart.All["lantern-tide-md"];
        var swapped = new byte[cart.File.Length];
        WordSwap.Swap16(cart.File, swapped);
        var image = OpenedExample.Open(cart, [.. new byte[CopierPrefix.Length], .. swapped]);
        Assert.Equal(ImageOrder.ByteSwapped, image.Found.Claim.Order);
        Assert.Equal(cart.File, image.Cart.Rom.Regions[0].Bytes.ToArray());
        Assert.Contains("CW8005", OpenedExample.Codes(image));
        Assert.Contains("CW8006", OpenedExample.Codes(image));
    }

    [Fact]
    public void What_lies_behind_the_container_s_sizes_is_told()
    {
        var cart = ExampleCart.All["lantern-tide-nes"];
        var image = OpenedExample.Open(cart, [.. cart.File, .. new byte[4096]]);
        Assert.Contains("CW4132", OpenedExample.Codes(image));
        Assert.DoesNotContain("CW8007", OpenedExample.Codes(image));
    }

    [Fact]
    public void What_lies_behind_packets_is_told()
    {
        var cart = ExampleCart.All["lantern-tide-c64"];
        Assert.Contains("CW8007", OpenedExample.Codes(OpenedExample.Open(cart, [.. cart.File, .. new byte[100]])));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(64 << 20)]
    public void Blank_files_are_not_recognised(int length)
    {
        var log = new FindingLog();
        Assert.Null(new ImageOpener(PlatformCatalog.BuiltIn).Open("blank.bin", new byte[length], null, log));
        Assert.Equal(["CW8001"], log.ToSorted().Select(finding => finding.Code));
    }

    // Cut, blanked and scrambled files of every platform, read as what they were.
    [Theory]
    [MemberData(nameof(Names))]
    public void Whatever_the_bytes_are_there_is_an_answer(string name)
    {
        var cart = ExampleCart.All[name];
        foreach (var file in TestImages.Spoilt(cart.File))
        {
            var log = new FindingLog();
            if (new ImageOpener(PlatformCatalog.BuiltIn).Open("spoilt.bin", file, cart.Platform, log) is { } image)
            {
                new ImageExamination(image, log).Run();
                Assert.Equal(file.Length, OpenedExample.Mend(image).Bytes.Length);
            }
            else
            {
                Assert.True(log.HasErrors);
            }
        }
    }

    private static IEnumerable<string> Texts(IEnumerable<HeaderImage> headers) =>
        headers.SelectMany(header => header.Entries.Select(entry => $"{entry.Field.Name} {entry.Offset} {entry.Text}")
            .Concat(header.Checksums.Select(entry => $"{entry.Row.Name} {entry.Offset} {entry.Stored} {entry.Computed}")));
}
