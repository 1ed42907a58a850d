using Cartwright.Findings;
using Cartwright.Saves;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class BatteryTests
{
    // NESdev forum, thread on SRAM retention current: 300 mAh at 0.1 uA typical and 3 uA maximum. The 27 years of 1 uA: time-nuts list, March 2015, with 240 mAh.
    [Theory]
    [InlineData("300mAh", "0.1uA", 342)]
    [InlineData("300mAh", "3uA", 11)]
    [InlineData("240mAh", "1uA", 27)]
    public void Published_examples_come_out_on_paper(string charge, string current, int years) =>
        Assert.Equal(years, (int)Life(charge, current, 1).YearsOnPaper);

    // The same list: self-discharge of 1 % a year brings 27 years down to 10 to 20.
    [Fact]
    public void Self_discharge_brings_a_microampere_down_to_twenty_years() => Assert.Equal(20.4m, decimal.Round(Life("225mAh", "1uA", 1).Years, 1));

    [Fact]
    public void Without_self_discharge_the_years_are_those_on_paper() =>
        Assert.Equal(Life("225mAh", "3uA", 0).YearsOnPaper, Life("225mAh", "3uA", 0).Years);

    // However small the current, a cell that loses 1 % of its capacity a year is empty after a hundred.
    [Property]
    public bool Self_discharge_bounds_the_years(ushort nanoamperes) =>
        new BatteryLife(0.225m, (nanoamperes + 1) * 0.000_000_001m, 1).Years is > 0 and < 100;

    [Theory]
    [InlineData("3uA", 0.000_003)]
    [InlineData(" 3 uA ", 0.000_003)]
    [InlineData("3\u00B5A", 0.000_003)]
    [InlineData("3\u03BCA", 0.000_003)]
    [InlineData("0.003mA", 0.000_003)]
    [InlineData("3000nA", 0.000_003)]
    [InlineData("1A", 1)]
    [InlineData("0.001nA", 0.000_000_000_001)]
    public void A_current_is_read_with_its_unit(string text, double amperes) => Assert.Equal((decimal)amperes, ElectricalQuantity.Current.Parse(text));

    [Theory]
    [InlineData("")]
    [InlineData("3")]
    [InlineData("uA")]
    [InlineData("3UA")]
    [InlineData("3MA")]
    [InlineData("3ma")]
    [InlineData("3mAh")]
    [InlineData("-3uA")]
    [InlineData("3,5uA")]
    [InlineData("1e3uA")]
    [InlineData("1.2.3uA")]
    [InlineData(".uA")]
    [InlineData("0uA")]
    [InlineData("0.0000000000000000000000000001uA")]
    [InlineData("2A")]
    [InlineData("99999999999999999999999999999999uA")]
    [InlineData("3uA 4uA")]
    public void What_is_no_current_is_not_read(string text) => Assert.Null(ElectricalQuantity.Current.Parse(text));

    [Theory]
    [InlineData("225mAh", 0.225)]
    [InlineData("0.225 Ah", 0.225)]
    [InlineData("1000Ah", 1000)]
    public void A_charge_is_read_with_its_unit(string text, double ampereHours) => Assert.Equal((decimal)ampereHours, ElectricalQuantity.Charge.Parse(text));

    [Theory]
    [InlineData("225mA")]
    [InlineData("225mah")]
    [InlineData("225MAh")]
    [InlineData("1001Ah")]
    [InlineData("0mAh")]
    public void What_is_no_charge_is_not_read(string text) => Assert.Null(ElectricalQuantity.Charge.Parse(text));

    [Theory]
    [InlineData("1%", 1.0)]
    [InlineData("0.5 %", 0.5)]
    [InlineData("0%", 0.0)]
    [InlineData("100%", 100.0)]
    [InlineData("101%", null)]
    [InlineData("1", null)]
    [InlineData("-1%", null)]
    [InlineData("%", null)]
    public void A_self_discharge_has_its_percent_sign(string text, double? percent) => Assert.Equal((decimal?)percent, BatteryLife.ParsePercent(text));

    [Theory]
    [InlineData(0.000_001, 0.000_003)]
    [InlineData(0.000_000_1, null, "CW9532", "CW9533")]
    [InlineData(0.000_000_1, 0.000_003, "CW9533")]
    [InlineData(0.000_003, 0.000_001, "CW9531")]
    [InlineData(0.000_003, 0.000_003)]
    public void What_was_given_is_looked_at(double typical, double? maximum, params string[] codes)
    {
        var log = new FindingLog();
        new BatteryEstimate(0.2m, 1, (decimal)typical, (decimal?)maximum).Check(log);
        Assert.Equal(codes, log.ToSorted().Select(finding => finding.Code));
    }

    [Theory]
    [InlineData("Copy the save first")]
    [InlineData("Never charge a lithium cell")]
    [InlineData("plus")]
    [InlineData("diode")]
    [InlineData("Never solder on the cell")]
    [InlineData("collection point")]
    [InlineData("data sheets")]
    public void The_cautions_name_what_hurts(string words) => Assert.Contains(BatteryCautions.All, caution => caution.Contains(words, StringComparison.Ordinal));

    private static BatteryLife Life(string charge, string current, decimal percent) =>
        new(ElectricalQuantity.Charge.Parse(charge)!.Value, ElectricalQuantity.Current.Parse(current)!.Value, percent);
}
