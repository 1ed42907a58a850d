using Cartwright.Platforms.Nes;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>The place of the vectors by mapper. Source: NESdev Wiki, List of mappers.</summary>
public sealed class VectorTests
{
    [Fact]
    public void A_bank_order_with_the_fixed_bank_first_is_an_error_that_says_where_the_vectors_are()
    {
        var finding = Assert.Single(Bare("uxrom").Program("prg", 0, Prg(16 * K)).Size("prg", 128 * K).Of(NesFindings.NoReset));
        Assert.Contains("last 16 KiB (0x01C000-0x01FFFF) holds nothing but 0xFF", finding.Message, StringComparison.Ordinal);
        Assert.Contains("bank 01 (0x002000-0x003FFF)", finding.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("uxrom")]
    [InlineData("mmc3")]
    [InlineData("unrom-512")]
    [InlineData("dxrom")]
    [InlineData("fme-7")]
    [InlineData("multicart-cpld")]
    public void Vectors_in_the_last_bank_alone_are_enough_where_it_is_fixed(string mapper) =>
        Assert.DoesNotContain(Vectors(Bench(mapper, 128 * K, 8 * K, 128 * K)), code => code is "CW4110" or "CW4111" or "CW4112" or "CW4113");

    [Theory]
    [InlineData("axrom", 32)]
    [InlineData("gtrom", 32)]
    [InlineData("inverted-unrom", 16)]
    public void Each_bank_that_can_come_up_is_named(string mapper, int kib)
    {
        var finding = Assert.Single(Bench(mapper, 128 * K, 0, 64 * K).Of(NesFindings.SomeBanks));
        Assert.Contains($"any bank of {kib} KiB", finding.Message, StringComparison.Ordinal);
        Assert.Contains(kib == 32 ? "bank 00 (0x000000-0x007FFF) has $0000" : "each of the banks 00-02 (0x000000-0x00BFFF) has $0000", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Banks_of_fill_are_told_together()
    {
        var finding = Assert.Single(Bare("axrom").Program("prg", 0, Prg(32 * K)).Size("prg", 256 * K).Of(NesFindings.SomeBanks));
        Assert.Contains("each of the banks 01-07 (0x008000-0x03FFFF) holds nothing but 0xFF", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_bank_with_a_vector_at_all_is_an_error() =>
        Assert.Single(Bare("axrom").Program("prg", 0, TestBytes.All(0x12, 32 * K)).Of(NesFindings.NoReset));

    [Theory]
    [InlineData(0x7FFF)]
    [InlineData(0x0000)]
    public void A_reset_below_8000_is_an_error(int reset) =>
        Assert.Single(Bare("nrom").Program("prg", 0, Prg(32 * K, 0, reset)).Of(NesFindings.ResetBelow));

    [Theory]
    [InlineData(0xFFFA)]
    [InlineData(0xFFFF)]
    public void A_reset_into_the_vectors_is_an_error(int reset) =>
        Assert.Single(Bare("nrom").Program("prg", 0, Prg(32 * K, 0, reset)).Of(NesFindings.NoReset));

    [Theory]
    [InlineData(0x8000)]
    [InlineData(0xFFF9)]
    public void A_reset_at_either_end_of_the_window_is_right(int reset) =>
        Assert.Empty(Vectors(Bare("nrom").Program("prg", 0, Prg(32 * K, 0, reset))));

    [Fact]
    public void Sixteen_KiB_are_seen_twice_so_that_8000_is_a_right_start() =>
        Assert.Empty(Vectors(Bare("nrom").Program("prg", 0, Prg(16 * K, 0, 0x8000))));

    [Theory]
    [InlineData("uxrom", 0x8000, "$C000-$FFFF")]
    [InlineData("mmc3", 0xC000, "$E000-$FFFF")]
    [InlineData("mmc2", 0x9FFF, "$A000-$FFFF")]
    [InlineData("nsf-style", 0xEFFF, "$F000-$FFFF")]
    public void A_reset_into_a_switched_window_is_a_warning(string mapper, int reset, string sure)
    {
        var finding = Assert.Single(Bare(mapper).Program("prg", 0, Prg(128 * K, 0, reset)).Of(NesFindings.ResetUnsure));
        Assert.Contains(sure, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mmc1_advises_a_stub_in_every_32_KiB_and_no_more() // the sources disagree, so it is no error
    {
        var bench = Bench("mmc1", 128 * K, 8 * K, 128 * K);
        Assert.Contains("each of the banks 00-02 (0x000000-0x017FFF) has $0000", Assert.Single(bench.Of(NesFindings.StubAdvised)).Message, StringComparison.Ordinal);
        Assert.False(bench.Log.HasErrors);
        Assert.Empty(Bench("mmc1", 128 * K, 8 * K, 32 * K).Of(NesFindings.StubAdvised));
    }

    [Fact]
    public void Nmi_and_irq_below_8000_are_notes()
    {
        var prg = Prg(32 * K);
        NesCart.Vectors(prg, prg.Length, 0x0200, 0x8000, 0x0000);
        var bench = Bare("nrom").Program("prg", 0, prg);
        Assert.Equal(["The NMI vector is $0200.", "The IRQ vector is $0000."], bench.Of(NesFindings.HandlerBelow).Select(finding => finding.Message));
    }

    [Fact]
    public void Fill_that_looks_like_a_vector_is_still_fill() =>
        Assert.Single(Bare("uxrom").Program("prg", 0, Prg(16 * K)).Size("prg", 64 * K, 0xEA).Of(NesFindings.NoReset));

    [Theory]
    [InlineData("1", 5)]
    [InlineData("206", 1)]
    public void Submappers_without_banks_start_anywhere(string mapper, int submapper) =>
        Assert.Empty(Vectors(Bare(mapper).Header("submapper", submapper.ToString()).Program("prg", 0, Prg(32 * K, 0, 0x8000))));

    private static RomBench Bare(string mapper) => new RomBench(new NesPlatform()).Header("mapper", mapper).Header("mirroring", "mapper-controlled");

    private static IEnumerable<string> Vectors(RomBench bench)
    {
        bench.TryAssemble();
        return bench.Codes().Where(code => string.CompareOrdinal(code, "CW4114") <= 0 || code == "CW4127");
    }
}
