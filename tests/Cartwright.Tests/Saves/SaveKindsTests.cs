using Cartwright.Platforms;
using Cartwright.Saves;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveKindsTests
{
    [Fact]
    public void Every_kind_is_of_platforms_there_are() =>
        Assert.All(SaveKinds.All.SelectMany(kind => kind.Platforms), id => Assert.Equal(id, PlatformCatalog.BuiltIn.Find(id)?.Facts.Id));

    [Fact]
    public void A_platform_has_each_word_once() =>
        Assert.All(PlatformCatalog.BuiltIn.All, platform => Assert.Distinct(SaveKinds.Of(platform.Facts.Id).Select(kind => kind.Id)));

    [Fact]
    public void Sizes_are_in_order_and_every_kind_can_be_read_packed() =>
        Assert.All(SaveKinds.All, kind =>
        {
            Assert.NotEmpty(kind.Sizes);
            Assert.Equal(kind.Sizes.Order().Distinct(), kind.Sizes);
            Assert.Contains("packed", kind.Layouts);
        });

    // Pan Docs, the table of RAM sizes of the cartridge header: 8, 32, 64 and 128 KiB.
    [Theory]
    [InlineData("gb", "sram", 8192, 32768, 65536, 131072)]
    // GBATEK, GBA Cart Backup IDs: EEPROM of 512 bytes or 8 KiB, flash of 64 or 128 KiB.
    [InlineData("gba", "eeprom", 512, 8192)]
    [InlineData("gba", "flash", 65536, 131072)]
    public void Sizes_are_those_of_the_documents(string platform, string kind, params int[] sizes) =>
        Assert.Equal(sizes, SaveKinds.Of(platform).Single(row => row.Id == kind).Sizes);
}
