using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Platforms.Snes;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesPlatformTests
{
    [Theory]
    [InlineData("snes")]
    [InlineData("SNES")]
    [InlineData("super-famicom")]
    [InlineData("sfc")]
    [InlineData("super-nintendo")]
    public void The_catalogue_knows_it(string name) => Assert.IsType<SnesPlatform>(PlatformCatalog.BuiltIn.Find(name));

    [Fact]
    public void Lorom_counts_when_nothing_is_said() =>
        Assert.Equal("lorom", new SnesPlatform().Layout(HeaderSettings.None).Variant);

    [Fact]
    public void Every_bit_of_the_header_has_an_owner()
    {
        foreach (var table in new SnesPlatform().Layouts.SelectMany(layout => layout.Headers))
        {
            var owned = new byte[table.Length];
            foreach (var field in table.Fields)
            {
                var mask = new byte[field.Length];
                field.Codec.Mask(mask);
                for (var i = 0; i < mask.Length; i++)
                    owned[field.Offset + i] |= mask[i];
            }

            foreach (var row in table.Checksums)
                owned.AsSpan(row.Offset, row.Length).Fill(0xFF);

            Assert.All(owned, bits => Assert.Equal(0xFF, bits));
        }
    }

    [Fact]
    public void The_exchange_file_is_called_sfc() =>
        Assert.Equal("sfc", new SnesPlatform().Extension(SnesBench.Clean(SnesMapping.Lorom).Assemble()));

    [Fact]
    public void Vectors_stay_the_program_s()
    {
        var bank = SnesBench.Bank(SnesMapping.Hirom);
        for (var i = 0xFFE0; i < 0xFFFC; i++)
            bank[i] = (byte)(i | 0x80);

        var cart = SnesBench.Empty(SnesMapping.Hirom).Program("rom", 0, bank).Assemble();
        Assert.Equal(bank.AsSpan(0xFFE0), cart.Bytes("rom").Slice(0xFFE0, 0x20));
    }

    [Fact]
    public void Finding_codes_ascend_within_the_platform_s_range()
    {
        var codes = SnesFindings.All.Select(rule => rule.Code).ToArray();
        Assert.Equal(codes.Order(StringComparer.Ordinal).Distinct(), codes);
        Assert.All(codes, code => Assert.InRange(int.Parse(code[2..]), 4150, 4189));
    }
}
