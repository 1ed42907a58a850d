using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>What examining says beyond the platform's own checks.</summary>
public sealed class ImageExaminationTests
{
    [Fact]
    public void Two_marks_in_one_file_decide_nothing()
    {
        var file = new byte[0x8000];
        "NES\u001A"u8.CopyTo(file);
        "SEGA MEGA DRIVE "u8.CopyTo(file.AsSpan(0x100));
        var log = new FindingLog();
        Assert.Null(new ImageOpener(PlatformCatalog.BuiltIn).Open("two.bin", file, null, log));
        var finding = Assert.Single(log.ToSorted());
        Assert.Equal("CW8002", finding.Code);
        Assert.Contains("md", finding.Message, StringComparison.Ordinal);
        Assert.Contains("nes", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_ends_before_its_header_is_told()
    {
        var log = new FindingLog();
        new ImageOpener(PlatformCatalog.BuiltIn).Open("short.bin", new byte[16], PlatformCatalog.BuiltIn.Find("snes"), log);
        Assert.Equal(["CW8003"], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void A_length_between_chips_is_noted()
    {
        var cart = ExampleCart.All["lantern-tide-gba"];
        Assert.Contains("CW8004", OpenedExample.Codes(OpenedExample.Open(cart, cart.File[..^12])));
    }

    [Theory]
    [InlineData("lantern-tide-gb", 0x14D, "CW8009")]
    [InlineData("lantern-tide-gb", 0x14F, "CW8008")]
    [InlineData("lantern-tide-snes", 0x7FDE, "CW8008")]
    public void A_wrong_checksum_is_an_error_where_the_console_checks_it(string name, int offset, string code)
    {
        var cart = ExampleCart.All[name];
        var file = cart.File.ToArray();
        file[offset] ^= 0x10;
        Assert.Contains(code, OpenedExample.Codes(OpenedExample.Open(cart, file)));
        Assert.DoesNotContain(code, OpenedExample.Codes(OpenedExample.Open(name)));
    }
}
