using Cartwright.Headers;
using Cartwright.Platforms.Nes;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>Worked by hand from the formula in NESdev Wiki, NES 2.0.</summary>
public sealed class RomSizeTests
{
    private const long Unit = 16 * K;

    [Theory]
    [InlineData(40 * K, 0xF36)]
    [InlineData(24 * K, 0xF35)]
    [InlineData(3 << 20, 192)]
    [InlineData(64 << 20, 0xF68)]
    [InlineData(80 * K, 5)]
    [InlineData(0xEFF * 16 * K, 0xEFF)]
    [InlineData(0, 0)]
    public void Codes(long bytes, int code)
    {
        Assert.Equal(code, RomSize.Code(bytes, Unit));
        Assert.Equal(bytes, RomSize.Bytes(code, Unit));
    }

    [Theory]
    [InlineData(72 * K, 80 * K)]
    [InlineData(17 * K, 20 * K)]
    [InlineData(40 * K, 40 * K)]
    [InlineData(70 << 20, 80 << 20)]
    public void The_next_size_with_a_code(long bytes, long next) => Assert.Equal(next, RomSize.Next(bytes, Unit));

    [Fact]
    public void Largest_plain_sizes()
    {
        // 62,898,176 and 31,449,088 bytes: NESdev Wiki, NES 2.0.
        Assert.Equal(62_898_176, RomSize.LargestPlain * NesFields.PrgUnit);
        Assert.Equal(31_449_088, RomSize.LargestPlain * NesFields.ChrUnit);
    }

    [Property]
    public bool The_next_size_has_a_code_and_none_between_does(ushort kib)
    {
        var bytes = (kib % 2048 * (long)K) + 1;
        var next = RomSize.Next(bytes, Unit);
        for (var size = bytes; size < next; size++)
            if (RomSize.Code(size, Unit) is not null)
                return false;

        return RomSize.Code(next, Unit) is { } code && RomSize.Bytes(code, Unit) == next;
    }

    [Fact]
    public void A_40_KiB_program_gets_the_exponent_form()
    {
        var cart = Bench("mmc3", 40 * K, 8 * K, 8 * K).Size("prg", 40 * K).Assemble();
        Assert.Equal("4E 45 53 1A 36 01 40 08 00 0F 00 00 00 00 00 00", Header(cart));
    }

    [Fact]
    public void A_size_without_a_code_says_the_next_that_has_one()
    {
        var finding = Assert.Single(Bench("mmc3", 72 * K, 8 * K, 8 * K).Size("prg", 72 * K).Of(HeaderFindings.BadValue));
        Assert.Contains("0x012000 (72 KiB)", finding.Message, StringComparison.Ordinal);
        Assert.Contains("80KiB", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("48KiB", "CW4004")]
    [InlineData("many", "CW4003")]
    [InlineData("raw 0x2000", "CW4003")]
    [InlineData("raw 0x003", "CW4007")]
    public void A_stated_size_is_held_against_the_true_one(string text, string code) =>
        Assert.Contains(code, Stated(text).Codes());

    private static RomBench Stated(string text)
    {
        var bench = Clean().Header("prgSize", text);
        bench.TryAssemble();
        return bench;
    }
}
