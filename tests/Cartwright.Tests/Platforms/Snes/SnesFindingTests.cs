using Cartwright.Findings;
using Cartwright.Platforms.Snes;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesFindingTests
{
    [Theory]
    [InlineData("lorom", new string[0])]
    [InlineData("hirom", new string[0])]
    [InlineData("exhirom", new[] { "CW4167" })]
    [InlineData("exlorom", new[] { "CW4167" })]
    public void A_clean_cart_has_nothing_but_its_size_to_note(string mapping, string[] codes)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping));
        bench.Assemble();
        Assert.Equal(codes, bench.Codes());
    }

    [Theory]
    [InlineData("lorom", 0x8000, 0x20)]
    [InlineData("hirom", 0x20000, 0x21)]
    public void A_copier_prefix_is_told_and_how_to_skip_it(string name, int length, byte mode)
    {
        var mapping = SnesMapping.Named(name);
        var file = new byte[length + 512];
        SnesBench.ForeignHeader(mode).CopyTo(file, mapping.Title + 512);
        var bench = SnesBench.Empty(mapping).Program("rom", 0, file);
        bench.TryAssemble();
        var finding = Assert.Single(bench.Log.ToSorted(), finding => finding.Rule == SnesFindings.CopierPrefix);
        Assert.Contains("skip: 512", finding.Advice, StringComparison.Ordinal);
        Assert.Equal(0, bench.Count(SnesFindings.ResetBelowRom));
    }

    [Theory]
    [InlineData(0x8200, 0x7FC0)]
    [InlineData(0x8400, 0x81C0)]
    public void A_length_or_a_header_alone_is_no_copier_prefix(int length, int header)
    {
        var file = new byte[length];
        SnesBench.ForeignHeader(0x20).CopyTo(file, header);
        var bench = SnesBench.Empty(SnesMapping.Lorom).Program("rom", 0, file);
        bench.TryAssemble();
        Assert.Equal(0, bench.Count(SnesFindings.CopierPrefix));
    }

    [Fact]
    public void A_cart_without_reset_vector_does_not_start()
    {
        var bench = SnesBench.Empty(SnesMapping.Lorom).Program("rom", 0, TestBytes.All(0x78, 0x1000));
        bench.TryAssemble();
        AssertOnly(bench, SnesFindings.NoResetVector);
    }

    [Theory]
    [InlineData(0x7FFF)]
    [InlineData(0x0000)]
    public void A_reset_vector_below_the_rom_does_not_start(int reset)
    {
        var bench = SnesBench.Clean(SnesMapping.Hirom, bank => SnesBench.SetWord(bank, SnesMapping.Hirom, 0xFFFC, reset));
        bench.TryAssemble();
        AssertOnly(bench, SnesFindings.ResetBelowRom);
    }

    [Theory]
    [InlineData("lorom", 0x1000)]
    [InlineData("hirom", 0x9000)]
    [InlineData("exhirom", 0x409000)]
    [InlineData("exlorom", 0x401000)]
    public void A_reset_vector_must_lead_into_a_program(string name, int covered)
    {
        var mapping = SnesMapping.Named(name);
        byte[] vectors = [0x00, 0x90, 0x00, 0x90];
        var bench = SnesBench.Empty(mapping).Program("rom", mapping.Offset(0xFFFC), vectors).Program("rom", covered - 16, TestBytes.All(0x78, 16));
        bench.TryAssemble();
        Assert.Equal(1, bench.Count(SnesFindings.ResetOutsideProgram));

        var right = SnesBench.Empty(mapping).Program("rom", mapping.Offset(0xFFFC), vectors).Program("rom", covered - 16, TestBytes.All(0x78, 17));
        right.Assemble();
        Assert.Equal(0, right.Count(SnesFindings.ResetOutsideProgram));
    }

    [Theory]
    [InlineData(0x00, true)]
    [InlineData(0x02, true)]
    [InlineData(0xDB, true)]
    [InlineData(0xFF, true)]
    [InlineData(0x18, false)]
    [InlineData(0x4C, false)]
    [InlineData(0x5C, false)]
    public void A_doubtful_first_instruction_is_told(byte opcode, bool doubtful)
    {
        var bench = SnesBench.Clean(SnesMapping.Hirom, bank => bank[0x8000] = opcode);
        bench.Assemble();
        AssertOnly(bench, doubtful ? SnesFindings.ResetOpcode : null);
    }

    [Theory]
    [InlineData(0xFFE4, "COP")]
    [InlineData(0xFFE6, "BRK")]
    [InlineData(0xFFE8, "ABORT")]
    [InlineData(0xFFEA, "NMI")]
    [InlineData(0xFFEE, "IRQ")]
    [InlineData(0xFFF4, "COP (emulation)")]
    [InlineData(0xFFF8, "ABORT (emulation)")]
    [InlineData(0xFFFA, "NMI (emulation)")]
    [InlineData(0xFFFE, "IRQ/BRK (emulation)")]
    public void A_handler_below_the_rom_is_noted(int vector, string name)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => SnesBench.SetWord(bank, SnesMapping.Lorom, vector, 0x0000));
        bench.Assemble();
        AssertOnly(bench, SnesFindings.HandlerBelowRom);
        Assert.Contains($"The {name} vector at $00:{vector:X4} is $0000", bench.Log.ToSorted()[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("exhirom", 0x00FFC0, 0x25)]
    [InlineData("exlorom", 0x007FC0, 0x32)]
    public void Halves_in_the_order_of_the_banks_are_an_error(string name, int title, byte mode)
    {
        var bench = SnesBench.Empty(SnesMapping.Named(name)).Program("rom", title, SnesBench.ForeignHeader(mode)).Program("rom", 0x400000, TestBytes.L(0x10000));
        bench.TryAssemble();
        Assert.Equal(1, bench.Count(SnesFindings.HalvesSwapped));
        Assert.Equal(0, bench.Count(SnesFindings.HeaderElsewhere));
    }

    // Builders of such ROMs often place a copy of the header in the first half.
    [Fact]
    public void A_copy_of_the_header_in_the_first_half_is_no_swap()
    {
        var bench = SnesBench.Clean(SnesMapping.Exlorom).Program("rom", 0x7FC0, SnesBench.ForeignHeader(0x32));
        bench.Assemble();
        AssertOnly(bench, SnesFindings.UnevenSize);
    }

    [Theory]
    [InlineData("lorom", 0xFFC0, 0x21, "hirom")]
    [InlineData("hirom", 0x7FC0, 0x20, "lorom")]
    public void A_header_of_another_mapping_is_told(string mapping, int title, byte mode, string other)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping)).Program("rom", 0x10000, TestBytes.L(0x10000));
        bench.Assemble();
        AssertOnly(bench, null);

        var foreign = SnesBench.Empty(SnesMapping.Named(mapping)).Program("rom", title, SnesBench.ForeignHeader(mode));
        foreign.TryAssemble();
        var finding = Assert.Single(foreign.Log.ToSorted(), finding => finding.Rule == SnesFindings.HeaderElsewhere);
        Assert.Contains(other, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0x21, 0x20000, true)]
    [InlineData(0x35, 0x20000, true)]
    [InlineData(0x2A, 0x20000, true)]
    [InlineData(0x20, 0x20000, false)]
    [InlineData(0x21, 0x10000, false)]
    public void An_interleaved_program_is_told(byte mode, int length, bool interleaved)
    {
        var file = TestBytes.L(length);
        SnesBench.ForeignHeader(mode).CopyTo(file, 0x7FC0);
        var bench = SnesBench.Empty(SnesMapping.Lorom).Program("rom", 0, file).Keep(true);
        bench.TryAssemble();
        Assert.Equal(interleaved ? 1 : 0, bench.Count(SnesFindings.Interleaved));
    }

    [Theory]
    [InlineData("lorom", "hirom", true)]
    [InlineData("lorom", "sa1", false)]
    [InlineData("lorom", "sdd1", false)]
    [InlineData("hirom", "spc7110", false)]
    [InlineData("hirom", "exhirom", true)]
    [InlineData("exhirom", "hirom", true)]
    [InlineData("exlorom", "lorom", false)]
    [InlineData("exlorom", "exhirom", true)]
    public void A_map_mode_of_another_mapping_is_told(string mapping, string mode, bool told)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping)).Header("mapMode", mode);
        bench.Assemble();
        Assert.Equal(told ? 1 : 0, bench.Count(SnesFindings.MapModeMismatch));
    }

    [Theory]
    [InlineData("rom", "8KiB", true)]
    [InlineData("rom-dsp", "8KiB", true)]
    [InlineData("rom-ram", "none", true)]
    [InlineData("rom-ram-battery", "none", true)]
    [InlineData("rom-sa1-ram-battery", "none", true)]
    [InlineData("rom-ram", "8KiB", false)]
    [InlineData("rom-sa1-ram-battery", "32KiB", false)]
    [InlineData("rom-gsu", "none", false)]
    public void Chipset_and_save_ram_must_agree(string chipset, string saveRam, bool told)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("chipset", chipset).Header("saveRam", saveRam);
        bench.Assemble();
        AssertOnly(bench, told ? SnesFindings.ChipsetRam : null);
    }

    [Fact]
    public void Ram_of_a_coprocessor_counts()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("chipset", "rom-gsu-ram").Header("expansionRam", "32KiB").Header("makerCode", "QS").Header("gameCode", "ALTJ");
        bench.Assemble();
        AssertOnly(bench, null);
    }

    [Theory]
    [InlineData("region", "0x15")]
    [InlineData("chipset", "0x63")]
    [InlineData("chipsetSubtype", "0x33")]
    [InlineData("saveRam", "raw 0x09")]
    [InlineData("romSize", "raw 0x20")]
    public void A_code_in_no_list_is_noted(string field, string value)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header(field, value);
        bench.Assemble();
        Assert.Equal(1, bench.Count(SnesFindings.UndocumentedValue));
    }

    [Theory]
    [InlineData("makerCode", "QS")]
    [InlineData("chipsetSubtype", "st018")]
    [InlineData("chipset", "rom-custom")]
    public void Extended_fields_without_the_developer_id_do_not_count(string field, string value)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header(field, value).Header("developerId", "none");
        bench.Assemble();
        AssertOnly(bench, SnesFindings.ExtendedIgnored);
    }

    [Fact]
    public void An_extended_header_without_codes_is_noted()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("gameCode", "ALTJ");
        bench.Assemble();
        AssertOnly(bench, SnesFindings.ExtendedIncomplete);
    }

    [Theory]
    [InlineData("ALTE", "japan", true)]
    [InlineData("ALTJ", "north-america", true)]
    [InlineData("ALTE", "north-america", false)]
    [InlineData("ALTP", "europe", false)]
    [InlineData("ALTP", "finland", false)]
    [InlineData("AB", "europe", false)]
    public void Game_code_and_region_must_agree(string code, string region, bool told)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("makerCode", "QS").Header("gameCode", code).Header("region", region);
        bench.Assemble();
        AssertOnly(bench, told ? SnesFindings.GameCodeRegion : null);
    }

    [Fact]
    public void A_title_filled_up_with_zeros_is_noted()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("title", "hex " + Convert.ToHexString("LANTERN TIDE\0\0\0\0\0\0\0\0\0"u8));
        bench.Assemble();
        AssertOnly(bench, SnesFindings.TitleZeros);
    }

    [Fact]
    public void Fast_rom_asks_for_fast_parts()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header("speed", "fast");
        bench.Assemble();
        AssertOnly(bench, SnesFindings.FastParts);
        Assert.Contains("120 ns", bench.Log.ToSorted()[0].Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0x18000, "2 times")]
    [InlineData(0x28000, "4 times")]
    [InlineData(0x38000, "2 times")]
    public void A_size_that_is_no_power_of_two_is_noted(int size, string words)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Size("rom", size);
        bench.Assemble();
        AssertOnly(bench, SnesFindings.UnevenSize);
        Assert.Contains(words, bench.Log.ToSorted()[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("exhirom", 0x7E0000, 0x8000, true)]
    [InlineData("exhirom", 0x7E8000, 0x8000, false)]
    [InlineData("exhirom", 0x7F7FFF, 1, true)]
    [InlineData("exlorom", 0x7EFFFF, 1, false)]
    [InlineData("exlorom", 0x7FFFFF, 1, true)]
    public void Bytes_behind_work_ram_are_told(string mapping, int offset, int length, bool hidden)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping)).Program("rom", offset, TestBytes.All(0x55, length));
        bench.Assemble();
        AssertOnly(bench, hidden ? SnesFindings.HiddenBytes : null);
    }

    [Fact]
    public void A_rom_that_ends_behind_work_ram_is_told_too()
    {
        var bench = SnesBench.Clean(SnesMapping.Exlorom).Program("rom", 0x7F0000, TestBytes.All(0x55, 1)).Size("rom", 0x7F8000);
        bench.Assemble();
        Assert.Equal(1, bench.Count(SnesFindings.HiddenBytes));
    }

    [Theory]
    [InlineData("hirom", 0x300000, true)]
    [InlineData("exhirom", 0x500000, true)]
    [InlineData("hirom", 0x200000, false)]
    public void The_disputed_sum_is_noted(string mapping, int size, bool told)
    {
        var bench = SnesBench.Clean(SnesMapping.Named(mapping)).Header("mapMode", "spc7110").Size("rom", size);
        bench.Assemble();
        Assert.Equal(told ? 1 : 0, bench.Count(SnesFindings.DisputedSum));
    }

    private static void AssertOnly(RomBench bench, FindingRule? rule) =>
        Assert.Equal(rule is null ? [] : [rule.Code], bench.Codes());
}
