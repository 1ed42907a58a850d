using System.Globalization;
using System.Text.RegularExpressions;
using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

/// <summary>The rules the table of pin-outs must hold, whatever is added to it later.</summary>
public sealed partial class PinOutRulesTests
{
    private static readonly string[] MayRepeat = ["VCC", "GND", "NC", "DU"];

    private static readonly string[] Others =
    [
        "VCC", "VCCQ", "VIO", "GND", "NC", "DU", "CE#", "CE0", "CE1", "CE1#", "CE2", "OE#", "OE#/VPP", "WE#", "PGM#", "VPP", "VPEN", "ACC", "WP#/ACC", "WP#", "WP",
        "BYTE#", "BYTE#/VPP", "RESET#", "RP#", "RY/BY#", "STS", "LB#", "UB#", "D15/A-1", "CS", "SK", "DI", "DO", "ORG", "PE", "SDA", "SCL", "E0", "E1", "E2",
    ];

    [Fact]
    public void Counts_by_status_are_as_published()
    {
        int Count(PinOutStatus status) => PinOutCatalog.BuiltIn.All.Count(pinOut => pinOut.Status == status);
        Assert.Equal((39, 9, 15, 40), (Count(PinOutStatus.Seen), Count(PinOutStatus.Library), Count(PinOutStatus.Derived), Count(PinOutStatus.FromMemory)));
    }

    [Fact]
    public void Each_has_the_pins_of_its_package() =>
        All(pinOut => Name().Match(pinOut.Name) is { Success: true } match && match.Groups["pins"].Value == pinOut.PinCount.ToString(CultureInfo.InvariantCulture));

    [Fact]
    public void Signals_are_known_and_stand_once()
    {
        All(pinOut => pinOut.Signals.All(signal => Others.Contains(signal) || Line().IsMatch(signal)));
        All(pinOut => pinOut.Signals.Except(MayRepeat).Count() == pinOut.Signals.Count(signal => !MayRepeat.Contains(signal)));
        All(pinOut => pinOut.PinOf("VCC") is not null && pinOut.PinOf("GND") is not null);
    }

    [Fact]
    public void Parallel_ones_have_all_data_lines_and_no_gap_in_the_address() => All(pinOut =>
    {
        var addresses = pinOut.Signals.Count(static signal => signal.StartsWith('A') && signal != "ACC");
        var data = pinOut.Signals.Count(static signal => signal.StartsWith('D') && char.IsAsciiDigit(signal[^1]) && signal != "DU");
        return addresses == 0 || (data is 8 or 16
            && Enumerable.Range(0, addresses).All(line => pinOut.PinOf($"A{line}") is not null)
            && Enumerable.Range(0, data).All(line => pinOut.PinOfData(line) is not null)
            && pinOut.PinOf("OE#") is not null);
    });

    [Fact]
    public void Every_pin_out_of_a_part_exists() =>
        Assert.All(PartCatalog.BuiltIn.All, static part => Assert.Equal(part.Pinouts, PinOutCatalog.BuiltIn.Of(part).Select(static pinOut => pinOut.Name)));

    [Fact]
    public void Data_lines_are_those_of_the_parts() => Assert.All(PartCatalog.BuiltIn.All, static part => Assert.All(PinOutCatalog.BuiltIn.Of(part), pinOut =>
    {
        Assert.Equal(part.DataBus is PartDataBus.Sixteen or PartDataBus.Selectable, pinOut.PinOfData(15) is not null);
        Assert.Equal(part.DataBus == PartDataBus.Serial, pinOut.PinOfData(0) is null);
        Assert.True(part.DataBus != PartDataBus.Selectable || pinOut.PinOf("BYTE#") is not null);
    }));

    [Fact]
    public void Notes_stand_at_pins_and_sources_are_named_except_from_memory()
    {
        All(pinOut => pinOut.Notes.Keys.All(pin => pin >= 1 && pin <= pinOut.PinCount));
        All(pinOut => (pinOut.Source == "from memory") == (pinOut.Status == PinOutStatus.FromMemory));
    }

    private static void All(Predicate<PinOut> rule) => Assert.Empty(PinOutCatalog.BuiltIn.All.Where(pinOut => !rule(pinOut)).Select(static pinOut => pinOut.Name));

    [GeneratedRegex("^(?<letters>[A-Z]+)(?<pins>[0-9]+)-[0-9A-Za-z-]+$")]
    private static partial Regex Name();

    [GeneratedRegex("^[AD][0-9]{1,2}$")]
    private static partial Regex Line();
}
