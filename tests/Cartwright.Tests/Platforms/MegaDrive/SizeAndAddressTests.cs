using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

public sealed class SizeAndAddressTests
{
    private static PlatformLayout Linear => MegaDriveBench.Platform.Layouts[0];

    private static PlatformLayout Paged => MegaDriveBench.Platform.Layouts[1];

    [Theory]
    [InlineData(0x200, 128 << 10)]
    [InlineData((128 << 10) + 1, 256 << 10)]
    [InlineData(300 << 10, 512 << 10)]
    [InlineData(600 << 10, 1 << 20)]
    [InlineData((1 << 20) + 2, 2 << 20)]
    [InlineData(5 << 19, 4 << 20)]
    [InlineData(4 << 20, 4 << 20)]
    public void Fit_takes_the_next_customary_size(int needed, int size)
    {
        Assert.Equal(size, Linear.Regions[0].Sizes.Fit(needed));
        Assert.Equal(size, Paged.Regions[0].Sizes.Fit(needed));
    }

    [Fact]
    public void Only_pages_fit_beyond_4_MiB()
    {
        Assert.Null(Linear.Regions[0].Sizes.Fit((4 << 20) + 1));
        Assert.Equal(9 << 19, Paged.Regions[0].Sizes.Fit((4 << 20) + 1));
        Assert.Equal(8 << 20, Paged.Regions[0].Sizes.Fit((15 << 19) + 1));
        Assert.Null(Paged.Regions[0].Sizes.Fit((8 << 20) + 1));
    }

    [Theory]
    [InlineData(0x200, true)]
    [InlineData(0x1FE, false)]
    [InlineData(0x201, false)]
    [InlineData(5 << 19, true)]
    [InlineData(3 << 20, true)]
    [InlineData((4 << 20) + 2, false)]
    public void Any_even_length_may_be_stated(int size, bool legal) => Assert.Equal(legal, Linear.Regions[0].Sizes.Allows(size));

    [Theory]
    [InlineData(null, null, "linear", "SEGA MEGA DRIVE")]
    [InlineData("pages", null, "pages", "SEGA SSF")]
    [InlineData("PAGES", null, "pages", "SEGA SSF")]
    [InlineData(null, "SEGA SSF", "pages", "SEGA SSF")]
    [InlineData(null, "SEGA GENESIS", "linear", "SEGA GENESIS")]
    [InlineData("linear", "SEGA SSF", "linear", "SEGA SSF")]
    [InlineData("twelve", null, "linear", "SEGA MEGA DRIVE")]
    public void The_mapper_chooses_the_layout(string? mapper, string? system, string variant, string written)
    {
        var bench = MegaDriveBench.Bench(MegaDriveBench.Program(0x400));
        if (mapper is not null)
            bench.Header("mapper", mapper);

        if (system is not null)
            bench.Header("systemType", system);

        var cart = bench.TryAssemble()!;
        Assert.Equal(variant, cart.Layout.Variant);
        Assert.Equal(written, cart["systemType"]);
        Assert.Equal("md", MegaDriveBench.Platform.Extension(cart));
    }

    [Theory]
    [InlineData(0x000000, 0x400000)]
    [InlineData(0x200000, 0x200000)]
    [InlineData(0x3FFFFF, 1)]
    public void Addresses_of_the_rom_are_offsets(long address, long run) =>
        Assert.Equal(AddressPlace.In("rom", address, run), Linear.Addresses.Locate(new ConsoleAddress(null, address), _ => null));

    [Theory]
    [InlineData(0x400000, "expansion")]
    [InlineData(0x880000, "no cartridge ROM")]
    [InlineData(0xA00000, "Z80")]
    [InlineData(0xA10003, "console's own registers")]
    [InlineData(0xA130F1, "cartridge's registers")]
    [InlineData(0xA14000, "console's own registers")]
    [InlineData(0xC00004, "video processor")]
    [InlineData(0xFF0000, "work RAM; give the segment a load address in the ROM")]
    [InlineData(0xFFFF0000, "$FFFF0000 ($FF0000 on the bus) is work RAM")]
    [InlineData(0xE0FF0000, "is work RAM")]
    [InlineData(0x01000200, "24 bits")]
    public void Other_addresses_are_told_apart(long address, string part)
    {
        var place = Linear.Addresses.Locate(new ConsoleAddress(null, address), _ => null);
        Assert.Null(place.Region);
        Assert.Contains(part, place.Problem, StringComparison.Ordinal);
    }

    // Slots and pages of 512 KiB: "Going beyond 4MB".
    [Theory]
    [InlineData(0, 0x000200, 0x000200, 0x7FE00)]
    [InlineData(9, 0x280000, 0x480000, 0x80000)]
    [InlineData(15, 0x3FFFFF, 0x7FFFFF, 1)]
    [InlineData(3, 0x001234, 0x181234, 0x7EDCC)]
    public void A_page_may_be_seen_in_any_slot(long page, long address, long offset, long run) =>
        Assert.Equal(AddressPlace.In("rom", offset, run), Paged.Addresses.Locate(new ConsoleAddress(page, address), _ => null));

    [Theory]
    [InlineData(16, 0x000000)]
    [InlineData(0, 0x400000)]
    public void Pages_and_slots_end_somewhere(long page, long address) =>
        Assert.Contains("00 to 0F", Paged.Addresses.Locate(new ConsoleAddress(page, address), _ => null).Problem, StringComparison.Ordinal);

    [Fact]
    public void Pages_need_the_mapper()
    {
        Assert.Contains("`mapper`", Linear.Addresses.Locate(new ConsoleAddress(1, 0x80000), _ => null).Problem, StringComparison.Ordinal);
        Assert.Equal(AddressPlace.In("rom", 0x480000, 0x380000), Paged.Addresses.Locate(new ConsoleAddress(null, 0x480000), _ => null));
        Assert.Contains("no cartridge ROM", Paged.Addresses.Locate(new ConsoleAddress(null, 0x800000), _ => null).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("md")]
    [InlineData("mega-drive")]
    [InlineData("Genesis")]
    public void The_platform_is_found_by_each_of_its_names(string name)
    {
        var facts = PlatformCatalog.BuiltIn.Find(name)!.Facts;
        Assert.Equal("md", facts.Id);
        Assert.Equal(16, facts.BusWidth);
        Assert.Equal(ByteOrder.BigEndian, facts.ByteOrder);
        Assert.Equal(5.0, facts.BusVolts);
    }

    [Fact]
    public void The_end_is_worked_out_and_a_wrong_one_is_told()
    {
        Assert.Equal("0x0007FFFF", MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Size("rom", 0x80000).Assemble()["romEnd"]);
        var bench = MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("romEnd", "131072");
        bench.TryAssemble();
        Assert.Equal([HeaderFindings.StatedWrong.Code, "CW4241"], bench.Codes());
    }
}
