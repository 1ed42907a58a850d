using Cartwright.Findings;
using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

public sealed class PatchFormatsTests
{
    [Fact]
    public void A_patch_is_known_by_its_bytes()
    {
        Assert.Equal(PatchFormats.Ips, PatchFormats.Recognise("PATCHEOF"u8));
        Assert.Equal(PatchFormats.Bps, PatchFormats.Recognise("BPS1"u8));
        Assert.Equal(PatchFormats.Vcdiff, PatchFormats.Recognise([0xD6, 0xC3, 0xC4, 0x00]));
        Assert.Null(PatchFormats.Recognise("BPS2"u8));
        Assert.Null(PatchFormats.Recognise([]));
    }

    [Fact]
    public void A_format_is_found_by_name_and_by_ending()
    {
        Assert.All(PatchFormats.All, format => Assert.Same(format, PatchFormats.Find(format.Name.ToLowerInvariant())));
        Assert.All(PatchFormats.All, format => Assert.Same(format, PatchFormats.ByEnding("tide" + format.Ending.ToUpperInvariant())));
        Assert.Null(PatchFormats.Find("zip"));
        Assert.Null(PatchFormats.ByEnding("tide.zip"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("504B0304")]
    [InlineData("504154")]
    public void Anything_else_is_told(string bytes)
    {
        Assert.Equal(["CW7001"], PatchBench.Apply([1], PatchBench.Hex(bytes)).Codes);
        Assert.Null(Patch.Describe(PatchBench.Hex(bytes)));
    }

    [Fact]
    public void VCDIFF_is_read_only()
    {
        Assert.Equal(["IPS", "BPS"], PatchFormats.All.Where(format => format.CanMake).Select(format => format.ToString()));
        Assert.Throws<ArgumentException>(() => Patch.Make(PatchFormats.Vcdiff, [], [], new FindingLog(), SourcePlace.None));
    }
}
