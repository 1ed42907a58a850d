using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class SectorMapTests
{
    [Theory]
    [InlineData("16KiB 2x8KiB 32KiB 31x64KiB", "16KiB 2x8KiB 32KiB 31x64KiB", 2097152)]
    [InlineData("128x4K", "128x4KiB", 524288)]
    [InlineData("1x0x4000,2x8192, 0x8000", "16KiB 2x8KiB 32KiB", 65536)]
    [InlineData("3x128", "3x128", 384)]
    public void A_map_reads_as_it_is_written(string text, string written, long bytes)
    {
        Assert.True(SectorMapText.TryParse(text, out var map));
        Assert.Equal((written, bytes), (SectorMapText.Format(map), SectorGroup.TotalOf(map)));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" , ")]
    [InlineData("x4KiB")]
    [InlineData("0x")]
    [InlineData("2x")]
    [InlineData("-1x4KiB")]
    [InlineData("2x0")]
    [InlineData("4 KiB")]
    [InlineData("1048577x1")]
    [InlineData("999999999999x4KiB")]
    [InlineData("2000000000x2000000000")]
    [InlineData("2x1GiB")]
    [InlineData("sixteen")]
    public void What_is_no_map_is_refused(string text) => Assert.False(SectorMapText.TryParse(text, out _));

    [Fact]
    public void Every_map_of_the_catalogue_reads_back() => Assert.All(PartCatalog.BuiltIn.All.Where(static part => !part.Sectors.Map.IsEmpty), static part =>
    {
        Assert.True(SectorMapText.TryParse(SectorMapText.Format(part.Sectors.Map), out var map));
        Assert.Equal(part.Sectors.Map, map);
    });

    [Theory]
    [InlineData("MX29F400T", BootEnd.Top)]
    [InlineData("mx29f400b", BootEnd.Bottom)]
    [InlineData("MX29F400", null)]
    [InlineData("MX29F400T/B", null)]
    [InlineData("Am29F400B", null)]
    [InlineData("Am29F400BB", BootEnd.Bottom)]
    [InlineData("Am29F400BT-70", BootEnd.Top)]
    [InlineData("MBM29F400TC", BootEnd.Top)]
    [InlineData("TC58FVB160", BootEnd.Bottom)]
    [InlineData("28F400BX-T", BootEnd.Top)]
    [InlineData("M29W640GH", null)]
    [InlineData("SST39SF040", null)]
    public void The_name_says_at_which_end_the_small_sectors_are(string name, BootEnd? end) =>
        Assert.Equal(end, PartVariant.EndOf(PartCatalog.BuiltIn.Find(name)!, name));

    // Am29F400B: 16, 8, 8, 32 KiB and seven of 64 KiB from address 0 on the bottom-boot part, mirrored on the other.
    [Theory]
    [InlineData("Am29F400BB", "16KiB 2x8KiB 32KiB 7x64KiB")]
    [InlineData("Am29F400BT", "7x64KiB 32KiB 2x8KiB 16KiB")]
    [InlineData("Am29F400B", "")]
    [InlineData("M29W640GH", "128x64KiB")]
    [InlineData("M29W640GT", "")]
    [InlineData("MX29GL640EH", "")]
    [InlineData("MX29GL640ET", "127x64KiB 8x8KiB")]
    [InlineData("SST39SF040", "128x4KiB")]
    [InlineData("AT49F040", "")]
    public void The_sectors_are_those_of_the_variant(string name, string map)
    {
        var part = PartCatalog.BuiltIn.Find(name)!;
        Assert.Equal(map, SectorMapText.Format(PartVariant.MapOf(part, PartVariant.EndOf(part, name))));
    }
}
