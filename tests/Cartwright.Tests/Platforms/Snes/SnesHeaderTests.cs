using Cartwright.Headers;
using Cartwright.Platforms.Snes;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesHeaderTests
{
    // Field, value, offset from $FFB0 and bytes: fullsnes, cartridge chapters; SNESdev Wiki, ROM header.
    [Theory]
    [InlineData("title", "TIDE", 0x10, "544944452020202020202020202020202020202020")]
    [InlineData("makerCode", "QS", 0x00, "5153")]
    [InlineData("gameCode", "ALTJ", 0x02, "414C544A")]
    [InlineData("gameCode", "AB", 0x02, "41422020")]
    [InlineData("reserved", "01 02 03 04 05 06", 0x06, "010203040506")]
    [InlineData("expansionFlash", "64KiB", 0x0C, "06")]
    [InlineData("expansionRam", "32KiB", 0x0D, "05")]
    [InlineData("specialVersion", "7", 0x0E, "07")]
    [InlineData("chipsetSubtype", "spc7110", 0x0F, "00")]
    [InlineData("chipsetSubtype", "st010", 0x0F, "01")]
    [InlineData("chipsetSubtype", "st018", 0x0F, "02")]
    [InlineData("chipsetSubtype", "cx4", 0x0F, "10")]
    [InlineData("speed", "slow", 0x25, "20")]
    [InlineData("speed", "fast", 0x25, "30")]
    [InlineData("mapMode", "lorom", 0x25, "20")]
    [InlineData("mapMode", "hirom", 0x25, "21")]
    [InlineData("mapMode", "sdd1", 0x25, "22")]
    [InlineData("mapMode", "sa1", 0x25, "23")]
    [InlineData("mapMode", "exhirom", 0x25, "25")]
    [InlineData("mapMode", "spc7110", 0x25, "2A")]
    [InlineData("mapMode", "0x07", 0x25, "27")]
    [InlineData("mapModeMark", "0x05", 0x25, "A0")]
    [InlineData("chipset", "rom", 0x26, "00")]
    [InlineData("chipset", "rom-ram", 0x26, "01")]
    [InlineData("chipset", "rom-ram-battery", 0x26, "02")]
    [InlineData("chipset", "rom-dsp", 0x26, "03")]
    [InlineData("chipset", "rom-dsp-ram-battery", 0x26, "05")]
    [InlineData("chipset", "rom-gsu", 0x26, "13")]
    [InlineData("chipset", "rom-gsu-ram", 0x26, "14")]
    [InlineData("chipset", "rom-gsu-ram-battery", 0x26, "15")]
    [InlineData("chipset", "rom-gsu-ram-battery-fast", 0x26, "1A")]
    [InlineData("chipset", "rom-obc1-ram-battery", 0x26, "25")]
    [InlineData("chipset", "rom-ram-battery-sa1", 0x26, "32")]
    [InlineData("chipset", "rom-sa1-ram", 0x26, "34")]
    [InlineData("chipset", "rom-sa1-ram-battery", 0x26, "35")]
    [InlineData("chipset", "rom-sdd1", 0x26, "43")]
    [InlineData("chipset", "rom-sdd1-ram-battery", 0x26, "45")]
    [InlineData("chipset", "rom-srtc-ram-battery", 0x26, "55")]
    [InlineData("chipset", "rom-other", 0x26, "E3")]
    [InlineData("chipset", "rom-other-ram-battery", 0x26, "E5")]
    [InlineData("chipset", "rom-custom", 0x26, "F3")]
    [InlineData("chipset", "rom-custom-ram-battery", 0x26, "F5")]
    [InlineData("chipset", "rom-custom-battery", 0x26, "F6")]
    [InlineData("chipset", "rom-custom-ram-battery-clock", 0x26, "F9")]
    [InlineData("chipset", "0x33", 0x26, "33")]
    [InlineData("romSize", "32KiB", 0x27, "05")]
    [InlineData("romSize", "raw 0x01", 0x27, "01")]
    [InlineData("saveRam", "none", 0x28, "00")]
    [InlineData("saveRam", "2KiB", 0x28, "01")]
    [InlineData("saveRam", "8KiB", 0x28, "03")]
    [InlineData("saveRam", "256Kbit", 0x28, "05")]
    [InlineData("saveRam", "64KiB", 0x28, "06")]
    [InlineData("saveRam", "128KiB", 0x28, "07")]
    [InlineData("developerId", "none", 0x2A, "00")]
    [InlineData("developerId", "extended", 0x2A, "33")]
    [InlineData("developerId", "0x01", 0x2A, "01")]
    [InlineData("version", "3", 0x2B, "03")]
    public void A_stated_value_is_written(string field, string value, int offset, string bytes)
    {
        var rom = SnesBench.Clean(SnesMapping.Lorom).Header(field, value).Assemble().Rom();
        Assert.Equal(bytes, Convert.ToHexString(rom, SnesMapping.Lorom.Header + offset, bytes.Length / 2));
    }

    [Theory]
    [InlineData("japan", 0x00)]
    [InlineData("north-america", 0x01)]
    [InlineData("europe", 0x02)]
    [InlineData("scandinavia", 0x03)]
    [InlineData("finland", 0x04)]
    [InlineData("denmark", 0x05)]
    [InlineData("france", 0x06)]
    [InlineData("netherlands", 0x07)]
    [InlineData("spain", 0x08)]
    [InlineData("germany", 0x09)]
    [InlineData("italy", 0x0A)]
    [InlineData("china", 0x0B)]
    [InlineData("indonesia", 0x0C)]
    [InlineData("south-korea", 0x0D)]
    [InlineData("common", 0x0E)]
    [InlineData("canada", 0x0F)]
    [InlineData("brazil", 0x10)]
    [InlineData("australia", 0x11)]
    [InlineData("other-x", 0x12)]
    [InlineData("other-y", 0x13)]
    [InlineData("other-z", 0x14)]
    [InlineData("0x20", 0x20)]
    public void A_region_is_a_country_code(string region, byte code) =>
        Assert.Equal(code, SnesBench.Clean(SnesMapping.Lorom).Header("region", region).Assemble().Bytes("rom")[0x7FD9]);

    [Theory]
    [InlineData("title", "TWENTY-TWO LETTERS LONG")]
    [InlineData("makerCode", "QSX")]
    [InlineData("reserved", "00")]
    [InlineData("region", "atlantis")]
    [InlineData("chipset", "rom-toaster")]
    [InlineData("saveRam", "3KiB")]
    [InlineData("romSize", "96KiB")]
    [InlineData("mapMode", "0x10")]
    [InlineData("speed", "faster")]
    [InlineData("version", "256")]
    [InlineData("mapping", "midrom")]
    [InlineData("battery", "perhaps")]
    public void A_value_the_field_cannot_hold_is_an_error(string field, string value)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header(field, value);
        bench.TryAssemble();
        Assert.Equal(1, bench.Count(HeaderFindings.BadValue));
    }

    [Theory]
    [InlineData("lorom", 0x007FD5, 0x20)]
    [InlineData("hirom", 0x00FFD5, 0x21)]
    [InlineData("exhirom", 0x40FFD5, 0x25)]
    [InlineData("exlorom", 0x407FD5, 0x22)]
    public void The_mapping_settles_place_and_map_mode(string name, int offset, byte mode)
    {
        var mapping = SnesMapping.Named(name);
        var cart = SnesBench.Clean(mapping).Assemble();
        Assert.Equal(mode, cart.Bytes("rom")[offset]);
        Assert.Equal(name, cart["mapMode"]);
        Assert.Equal("LANTERN TIDE         "u8, cart.Bytes("rom").Slice(mapping.Title, 21));
    }

    // Sources disagree on $22: the place of the header decides how it is shown, and either spelling writes it back.
    [Theory]
    [InlineData("lorom", "sdd1", "sdd1", 0x2)]
    [InlineData("exlorom", "sdd1", "exlorom", 0x2)]
    [InlineData("exlorom", "exlorom", "exlorom", 0x2)]
    [InlineData("exlorom", "lorom", "lorom", 0x0)]
    public void The_disputed_map_mode_goes_by_the_place(string mapping, string stated, string shown, int mode)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping)).Header("mapMode", stated);
        var cart = bench.Assemble();
        Assert.Equal(shown, cart["mapMode"]);
        Assert.Equal(mode, cart.Bytes("rom")[SnesMapping.Named(mapping).Header + 0x25] & 0xF);
        Assert.Equal(0, bench.Count(SnesFindings.MapModeMismatch));
    }

    [Theory]
    [InlineData(null, null, "rom")]
    [InlineData("none", "true", "rom")]
    [InlineData("8KiB", null, "rom-ram-battery")]
    [InlineData("8KiB", "True", "rom-ram-battery")]
    [InlineData("8KiB", "False", "rom-ram")]
    public void The_chipset_follows_from_save_ram_and_battery(string? saveRam, string? battery, string chipset)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom);
        if (saveRam is not null)
            bench.Header("saveRam", saveRam);
        if (battery is not null)
            bench.Header("battery", battery);

        Assert.Equal(chipset, bench.Assemble()["chipset"]);
    }

    [Theory]
    [InlineData("makerCode", "QS")]
    [InlineData("gameCode", "ALTJ")]
    [InlineData("reserved", "000000000000")]
    [InlineData("expansionFlash", "none")]
    [InlineData("expansionRam", "none")]
    [InlineData("specialVersion", "0")]
    [InlineData("chipsetSubtype", "st018")]
    [InlineData("chipset", "rom-custom-battery")]
    [InlineData("developerId", "0x33")]
    public void Any_extended_field_makes_the_extended_header(string field, string value)
    {
        var cart = SnesBench.Empty(SnesMapping.Lorom).Program("rom", 0, SnesBench.Bank(SnesMapping.Lorom)[..0x7FB0]).Program("rom", 0x7FFC, [0, 0x80, 0, 0x80])
            .Header(field, value).Assemble();
        Assert.Equal(0x33, cart.Bytes("rom")[0x7FDA]);
        Assert.Equal(new byte[6], cart.Bytes("rom").Slice(0x7FB6, 6));
        Assert.Equal(7, cart.Headers[0].Entries.Count(entry => entry.Field.When is not null));
    }

    [Fact]
    public void Without_extended_fields_the_area_is_the_program_s()
    {
        var cart = SnesBench.Clean(SnesMapping.Lorom, bank => bank.AsSpan(0x7FB0, 0x10).Fill(0xEA)).Assemble();
        Assert.False(cart.Bytes("rom").Slice(0x7FB0, 0x10).ContainsAnyExcept((byte)0xEA));
        Assert.Equal(0x00, cart.Bytes("rom")[0x7FDA]);
        Assert.DoesNotContain(cart.Headers[0].Entries, entry => entry.Field.When is not null);
    }

    [Fact]
    public void Code_where_the_extended_header_goes_is_never_written_over_in_silence()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => bank.AsSpan(0x7FB0, 0x10).Fill(0xEA)).Header("gameCode", "ALTJ");
        bench.TryAssemble();
        Assert.True(bench.Log.HasErrors);
        Assert.Equal(1, bench.Count(HeaderFindings.Clash));
    }

    [Fact]
    public void The_early_form_of_the_extended_header_has_the_sub_type_alone()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => bank.AsSpan(0x7FB0, 0x0F).Fill(0xEA))
            .Header("title", "hex " + Convert.ToHexString("LANTERN TIDE        \0"u8)).Header("developerId", "none").Header("chipset", "rom-custom").Header("chipsetSubtype", "cx4");
        var cart = bench.Assemble();
        Assert.Equal(0x10, cart.Bytes("rom")[0x7FBF]);
        Assert.False(cart.Bytes("rom").Slice(0x7FB0, 0x0F).ContainsAnyExcept((byte)0xEA));
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("cx4", SnesBench.Read(SnesMapping.Lorom, cart.Bytes("rom"))["chipsetSubtype"]);
    }

    [Fact]
    public void A_kept_early_form_stays_early()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank =>
        {
            SnesBench.ForeignHeader(0x20).AsSpan(0, 0x20).CopyTo(bank.AsSpan(0x7FC0));
            bank[0x7FBF] = 0x10;
            bank[0x7FD4] = 0x00;
            bank[0x7FD6] = 0xF3;
        }).Keep(true);
        var rom = bench.Assemble().Rom();
        Assert.Equal(0x00, rom[0x7FDA]);
        Assert.Equal(0x10, rom[0x7FBF]);
        Assert.Equal(0, bench.Count(SnesFindings.ExtendedIgnored));
    }

    [Fact]
    public void Title_and_version_come_from_the_cart()
    {
        var cart = new RomBench(new SnesPlatform()) { Title = "Lantern Tide", Revision = "2" }.Program("rom", 0, SnesBench.Bank(SnesMapping.Lorom)).Assemble();
        Assert.Equal("Lantern Tide", cart["title"]);
        Assert.Equal("2", cart["version"]);
    }

    [Fact]
    public void A_title_is_asked_for_when_neither_cart_nor_program_has_one()
    {
        var bench = new RomBench(new SnesPlatform()) { Title = null }.Program("rom", 0, SnesBench.Bank(SnesMapping.Lorom));
        bench.TryAssemble();
        Assert.Equal(1, bench.Count(HeaderFindings.MissingField));
    }

    [Fact]
    public void A_program_with_a_whole_header_of_its_own_can_keep_it()
    {
        var bench = SnesBench.Clean(SnesMapping.Hirom, bank =>
        {
            SnesBench.ForeignHeader(0x31).AsSpan(0, 0x20).CopyTo(bank.AsSpan(0xFFC0));
            "QSALTE"u8.CopyTo(bank.AsSpan(0xFFB0));
            byte[] fields = [0x35, 0x06, 0x05, 0x01, 0x33, 0x02];
            fields.CopyTo(bank, 0xFFD6);
        }).Keep(true);
        var cart = bench.Assemble();
        Assert.Equal(["QS", "ALTE", "fast", "rom-sa1-ram-battery", "32KiB", "north-america", "2"],
            new[] { "makerCode", "gameCode", "speed", "chipset", "saveRam", "region", "version" }.Select(field => cart[field]));
        Assert.DoesNotContain(bench.Log.ToSorted(), finding => finding.Rule == HeaderFindings.KeptWrong);
        Assert.All(cart.Headers[0].Checksums, entry => Assert.True(entry.Right));
    }

    [Fact]
    public void A_program_with_another_chipset_is_not_written_over_in_silence()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => bank[0x7FD6] = 0x35);
        Assert.Equal(0x35, bench.Assemble().Bytes("rom")[0x7FD6]);
    }
}
