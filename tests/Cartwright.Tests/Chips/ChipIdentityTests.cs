using Cartwright.Chips;
using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class ChipIdentityTests
{
    // Codes from the data sheets of the parts.
    [Theory]
    [InlineData("BF B7", "SST39SF040")]
    [InlineData("0xBF 0x00B7", "SST39SF040")]
    [InlineData("00BF 00B7", "SST39SF040")]
    [InlineData("7F 1C 2249", "EN29LV160A T/B")]
    [InlineData("1C 2249", "EN29LV160A T/B")]
    [InlineData("01 2249", "Am29LV160D T/B")]
    [InlineData("01 49", "Am29LV160D T/B")]
    [InlineData("01 227E 2210 2201", "Am29LV640M T/B")]
    [InlineData("01 7E 10 00", "Am29LV640M T/B")]
    [InlineData("1E1E F8F8", "AT27C800")]
    public void Parts_that_answer_so_are_found(string words, string part) => Assert.Contains(part, Fitting(words));

    [Theory]
    [InlineData("7F BF B7")]
    [InlineData("BF B8")]
    [InlineData("01 2201")]
    [InlineData("01 2249 2249 2249")]
    [InlineData("DA B7")]
    public void Others_are_not(string words) => Assert.Empty(Fitting(words));

    [Fact]
    public void Every_part_with_codes_is_found_by_them() => Assert.All(
        PartCatalog.BuiltIn.All.Where(static part => part.Identity.ManufacturerId.Length > 0 && part.Identity.DeviceId.Length is 2 or 4),
        static part => Assert.Contains(part.Name, Fitting($"{part.Identity.ManufacturerId[..2]} {part.Identity.DeviceId}")));

    [Theory]
    [InlineData("BF")]
    [InlineData("")]
    [InlineData("7F 7F")]
    [InlineData("BF B7 B8")]
    [InlineData("BF GG")]
    [InlineData("BF 123")]
    [InlineData("1234 B7")]
    [InlineData("BF -1")]
    [InlineData("7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F 7F BF B7")]
    public void What_is_no_identity_is_refused(string words) => Assert.False(ChipIdentity.TryParse(words.Split(' ', StringSplitOptions.RemoveEmptyEntries), out _));

    [Theory]
    [InlineData("BF B7", "")]
    [InlineData("1E 8C", "CW5562")]
    [InlineData("FF FF", "CW5561 CW5563")]
    [InlineData("00 00", "CW5561 CW5563")]
    [InlineData("4C 4C", "CW5561 CW5563")]
    [InlineData("A9 00", "CW5561 CW5563")]
    [InlineData("AE 00", "CW5563")]
    [InlineData("BF", "CW5560")]
    public void What_is_doubtful_is_told(string words, string codes)
    {
        var log = new FindingLog();
        var identity = IdentityChecks.Read(words.Split(' '), log);
        Assert.Equal(log.HasErrors, identity is null);
        Assert.Equal(codes, string.Join(' ', log.ToSorted().Select(static finding => finding.Code)));
    }

    // JEP106: the eighth bit makes the number of ones odd. 1E is Atmel's own for EPROMs.
    [Fact]
    public void All_makers_codes_but_one_have_odd_parity_and_stand_in_order()
    {
        Assert.Equal([0x1E], MakerCodes.All.Where(static code => !MakerCodes.HasOddParity(code.Seen)).Select(static code => code.Seen));
        Assert.Equal(MakerCodes.All.OrderBy(static code => (code.Seen, code.Bank)), MakerCodes.All);
    }

    [Theory]
    [InlineData(0x1C, 1, "Mitsubishi/Eon")]
    [InlineData(0x1C, 2, "Eon")]
    [InlineData(0x4A, 5, "Excel Semiconductor")]
    [InlineData(0x4A, 2, "")]
    [InlineData(0xBF, 1, "SST")]
    public void Makers_of_several_banks_look_alike(byte seen, int bank, string names) =>
        Assert.Equal(names, string.Join('/', MakerCodes.Of(seen, bank).Select(static code => code.Name)));

    [Fact]
    public void Every_makers_code_of_the_catalogue_has_a_name() => Assert.All(
        PartCatalog.BuiltIn.All.Where(static part => part.Identity.ManufacturerId.Length > 0),
        static part => Assert.NotEmpty(MakerCodes.Of(Convert.FromHexString(part.Identity.ManufacturerId[..2])[0], 1)));

    private static IEnumerable<string> Fitting(string words) => PartCatalog.BuiltIn.All.Where(Parse(words).Fits).Select(static part => part.Name);

    private static ChipIdentity Parse(string words)
    {
        Assert.True(ChipIdentity.TryParse(words.Split(' '), out var identity));
        return identity!;
    }
}
