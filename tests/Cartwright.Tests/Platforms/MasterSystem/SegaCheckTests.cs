using Cartwright.Platforms;
using Cartwright.Platforms.MasterSystem;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.MasterSystem;

public sealed class SegaCheckTests
{
    private const string Mark = "544D522053454741";

    [Fact]
    public void A_copier_prefix() =>
        Only("CW4345", new RomBench(SegaPlatform.MasterSystem()).Program("rom", 0, [.. new byte[0x200], .. SegaPrograms.Bench().Assemble().Rom()]), others: true);

    [Fact]
    public void A_program_where_the_header_belongs() => Only("CW4340", SegaPrograms.Bench(at: 0x7FF0, digits: "CD0001C30002C9C9").Keep(true), others: true);

    [Fact]
    public void No_header_at_all()
    {
        var bench = SegaPrograms.Bench(at: 0x7FF0, digits: "CD0001C30002C9C9C9C9C9C9C9C9C9C9").Header("internalHeader", "none");
        Assert.Equal(SegaPrograms.Whole()[..0x7FF0], bench.Assemble().Rom()[..0x7FF0]);
        Assert.Equal("CD0001C30002C9C9C9C9C9C9C9C9C9C9", Convert.ToHexString(bench.TryAssemble()!.Rom()[0x7FF0..]));
        Assert.Equal(["CW4346", "CW4346"], bench.Codes());
    }

    [Fact]
    public void Another_mark() => Only("CW4340", SegaPrograms.Bench().Header("mark", "TMR ABCD"));

    [Theory]
    [InlineData("sms", "CW4342")]
    [InlineData("gg", "CW4347")]
    public void A_size_code_beyond_the_ROM_kept_on_purpose(string id, string code) =>
        Only(code, SegaPrograms.Bench(platform: PlatformCatalog.BuiltIn.Find(id)!, at: 0x7FF0, digits: Mark + (id == "sms" ? "0000000000000040" : "0000000000000070")).Keep(null, "sumRange"), others: true);

    [Fact]
    public void A_checksum_high_byte_first()
    {
        var sum = SegaPrograms.Read(SegaPrograms.Bench().Assemble().Rom()).Checksums[0].Computed;
        Only("CW4348", SegaPrograms.Bench(at: 0x7FF0, digits: Mark + "0000" + sum.ToString("X4") + "0000004C"), others: true);
    }

    [Theory]
    [InlineData("1234", true)]
    [InlineData("FFFF", false)]
    [InlineData("2020", false)]
    public void Reserved_bytes(string reserved, bool told) => Only(told ? "CW4349" : null, SegaPrograms.Bench().Header("reserved", reserved));

    [Fact]
    public void A_tools_default() => Only("CW4350", SegaPrograms.Bench().Header("reserved", "FFFF").Header("productCode", "9999"));

    [Theory]
    [InlineData("sms", "gg-japan", "CW4343")]
    [InlineData("sms", "gg-international", "CW4343")]
    [InlineData("sms", "sms-japan", null)]
    [InlineData("gg", "sms-export", "CW4343")]
    [InlineData("gg", "gg-export", null)]
    [InlineData("sms", "0x0F", "CW4351")]
    [InlineData("gg", "0x02", "CW4351")]
    public void Regions(string id, string region, string? code) => Only(code, SegaPrograms.Bench(platform: PlatformCatalog.BuiltIn.Find(id)!).Header("region", region));

    [Fact]
    public void A_product_code_that_is_not_decimal() => Only("CW4352", SegaPrograms.Bench().Header("productCode", "hex A01100"));

    [Fact]
    public void No_program_at_the_start() => Only("CW4344", new RomBench(SegaPlatform.MasterSystem()).Program("rom", 0x100, TestBytes.L(0x1000)));

    [Fact]
    public void An_erased_byte_at_the_start() => Only("CW4353", SegaPrograms.Bench(digits: "FF"));

    [Theory]
    [InlineData("sms", "CW4354")]
    [InlineData("sg1000", "CW4354")]
    [InlineData("gg", null)]
    public void No_pause_handler(string id, string? code) => Only(code, SegaPrograms.Bench(platform: PlatformCatalog.BuiltIn.Find(id)!, at: 0x66, digits: "FF"));

    [Fact]
    public void No_interrupt_handler() => Only("CW4355", SegaPrograms.Bench(at: 0x38, digits: "FF"));

    [Fact]
    public void A_program_where_the_tag_belongs() =>
        Only("CW4356", SegaPrograms.Bench(at: 0x7FE0, digits: "C9C9C9C9").Header("tagVersion", "1.00").Header("tagDate", "2026-01-01"));

    [Theory]
    [InlineData("tagAuthor", "0x0000", false)]
    [InlineData("tagName", "0x0000", true)]
    [InlineData("tagName", "0x0200", false)]
    [InlineData("tagNotes", "0x8000", true)]
    [InlineData("tagNotes", "0x0220", true)]
    [InlineData("tagNotes", "0xFFFF", false)]
    public void Pointers_of_a_tag(string field, string address, bool told) =>
        Only(told ? "CW4357" : null, SegaPrograms.Bench(at: 0x200, digits: "4C616E7465726E00").Header("tagVersion", "1.00").Header("tagDate", "2026-01-01").Header(field, address));

    [Fact]
    public void A_tag_without_a_date() => Only("CW4358", SegaPrograms.Bench().Header("tagVersion", "1.00").Header("tagDate", "hex 00000000"));

    // Codemasters Header, smspower.org: the second word is 10000h less the first.
    [Theory]
    [InlineData("02310126100534127856000000000000", true)]
    [InlineData("0231012610053412CCED000000000000", false)]
    [InlineData("02990126100534127856000000000000", false)]
    public void Bank_sums(string digits, bool told) => Only(told ? "CW4359" : null, SegaPrograms.Bench(at: 0x7FE0, digits: digits));

    [Theory]
    [InlineData("ram-at-2000", "CW4360")]
    [InlineData("without-ram", null)]
    public void A_program_under_the_cartridges_RAM(string ram, string? code) =>
        Only(code, SegaPrograms.Bench(platform: SegaPlatform.Sg1000()).Header("cartridgeRam", ram));

    [Fact]
    public void A_ROM_without_a_header_is_the_program()
    {
        var bench = SegaPrograms.Bench(0x6000, SegaPlatform.Sg1000());
        Assert.Equal(SegaPrograms.Whole(0x6000), bench.Assemble().Rom());
        Assert.Empty(bench.Codes());
    }

    [Theory]
    [InlineData("sms", "sega", "$8123", 0x8123)]
    [InlineData("sms", "sega", "05:8123", 0x14123)]
    [InlineData("sms", "sega", "$054123", 0x14123)]
    [InlineData("sms", "one-register", "05:8123", 0x14123)]
    [InlineData("sms", "four-register", "05:A123", 0xA123)]
    [InlineData("gg", "three-register", "05:0123", 0x14123)]
    public void Addresses(string id, string mapper, string text, long offset) => Assert.Equal(offset, Locate(id, mapper, text).Offset);

    [Theory]
    [InlineData("sms", "sega", "$C000", "work RAM")]
    [InlineData("sms", "sega", "100:8000", "last one")]
    [InlineData("sms", "linear", "05:8123", "no banks")]
    [InlineData("sms", "one-register", "05:4123", "banks are seen")]
    [InlineData("sg1000", "ram-at-2000", "$2000", "the cartridge's RAM")]
    [InlineData("sg1000", "ram-at-8000", "$8000", "behind the ROM")]
    [InlineData("sg1000", "without-ram", "01:10000", "16 bits")]
    public void Addresses_elsewhere(string id, string mapper, string text, string words) => Assert.Contains(words, Locate(id, mapper, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("sms", "sega", 0xA001, 0xC000)]
    [InlineData("sms", "sega", 0xC001, 0x10000)]
    [InlineData("sms", "linear", 0xC001, null)]
    [InlineData("sg1000", "without-ram", 0x4001, 0x6000)]
    [InlineData("sg1000", "ram-at-8000", 0x8001, null)]
    public void Sizes(string id, string variant, long needed, int? fit) => Assert.Equal(fit, Layout(id, variant).Regions[0].Sizes.Fit(needed));

    private static PlatformLayout Layout(string id, string variant) => PlatformCatalog.BuiltIn.Find(id)!.Layouts.First(layout => layout.Variant == variant);

    private static AddressPlace Locate(string id, string variant, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? Layout(id, variant).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string? code, RomBench bench, bool others = false)
    {
        bench.TryAssemble();
        var codes = bench.Codes().Where(found => !others || !found.StartsWith("CW40", StringComparison.Ordinal) && !found.StartsWith("CW30", StringComparison.Ordinal));
        Assert.Equal(code is null ? [] : [code], codes.Distinct());
    }
}
