using System.Collections.Immutable;
using Cartwright.Chips;
using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class PartChecksTests
{
    private const int Kibi = 1024;
    private static readonly SourcePlace Place = SourcePlace.AtLine("cart.json", 12, 15);

    [Fact]
    public void A_fitting_part_leaves_nothing_to_say() => Assert.Empty(Check("SST39SF040", 5, 8, 512 * Kibi));

    [Fact]
    public void An_unknown_part_is_an_error_that_names_the_nearest()
    {
        var log = new FindingLog();
        Assert.Null(PartChecks.Find("SST39SF400", "U1", log, Place));
        var finding = Assert.Single(log.ToSorted());
        Assert.Equal((PartFindings.Unknown, Place), (finding.Rule, finding.Place));
        Assert.Contains("SST39SF040", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_known_part_is_found_without_a_finding()
    {
        var log = new FindingLog();
        Assert.Equal("SST39SF040", PartChecks.Find("sst39sf040", "U1", log, Place)?.Name);
        Assert.Equal(0, log.Count);
    }

    [Fact]
    public void Too_small_says_by_how_much_and_what_would_do()
    {
        var finding = Assert.Single(Check("SST39SF010A", 5, 8, 512 * Kibi));
        Assert.Equal(PartFindings.TooSmall, finding.Rule);
        Assert.Equal(FindingSeverity.Error, finding.Severity);
        Assert.Equal("U1: SST39SF010A holds 0x020000 (128 KiB), 0x060000 (384 KiB) too few.", finding.Message);
        Assert.Equal("a part of at least 0x080000 (512 KiB)", finding.Expected);
        var proposed = Proposed(finding);
        Assert.Equal(5, proposed.Length);
        Assert.All(proposed, name => Assert.DoesNotContain(Check(name, 5, 8, 512 * Kibi), static other => other.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void Exactly_full_is_not_too_small_and_one_byte_more_is()
    {
        Assert.Empty(Check("SST39SF010A", 5, 8, 128 * Kibi));
        Assert.Contains("0x000001 (1 byte) too few", Assert.Single(Check("SST39SF010A", 5, 8, (128 * Kibi) + 1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_large_for_every_part_says_so() =>
        Assert.Contains("no part that would do", Find(PartFindings.TooSmall, "SST39SF040", 5, 8, 1L << 40).Advice, StringComparison.Ordinal);

    [Fact]
    public void Parts_of_another_voltage_are_proposed_only_when_no_other_will_do_and_with_a_word_about_it() =>
        Assert.Contains(
            "level translation of their own: ",
            Find(PartFindings.TooSmall, "SST39SF040", 5, 8, 16384 * Kibi).Advice,
            StringComparison.Ordinal);

    // All of Am27C64 is from memory; of M27C512 the programming voltage was seen, not the capacity.
    [Theory]
    [InlineData("Am27C64")]
    [InlineData("M27C512")]
    public void A_capacity_from_memory_only_warns(string name)
    {
        var findings = Check(name, 5, 8, 512 * Kibi);
        Assert.DoesNotContain(findings, static finding => finding.Severity == FindingSeverity.Error);
        var finding = Assert.Single(findings, static finding => finding.Rule == PartFindings.TooSmallFromMemory);
        Assert.Contains("from memory", finding.Message, StringComparison.Ordinal);
        Assert.Contains("data sheet", finding.Advice, StringComparison.Ordinal);
        Assert.Contains(findings, static finding => finding.Rule == PartFindings.FromMemory);
    }

    [Fact]
    public void A_capacity_that_was_seen_of_a_partly_verified_row_is_an_error() =>
        Find(PartFindings.TooSmall, "Am29F040B", 5, 8, 1024 * Kibi);

    [Theory]
    [InlineData("SST39SF040", 16, "is 8-bit, the site has 16 data lines")]
    [InlineData("M27C322", 8, "is 16-bit, the site has 8 data lines")]
    public void The_wrong_width_is_an_error(string name, int width, string words)
    {
        var finding = Find(PartFindings.WrongWidth, name, 5, width, 512 * Kibi);
        Assert.Equal(FindingSeverity.Error, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(Proposed(finding));
    }

    [Fact]
    public void A_width_from_memory_only_warns()
    {
        var findings = Check("M27C4002", 5, 8, 1);
        Assert.Contains(findings, static finding => finding.Rule == PartFindings.WrongWidthFromMemory);
        Assert.DoesNotContain(findings, static finding => finding.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void Selectable_parts_serve_both_widths()
    {
        Assert.Empty(Check("Am29F400BB", 5, 8, 512 * Kibi));
        Assert.Empty(Check("Am29F400BB", 5, 16, 512 * Kibi));
    }

    [Theory]
    [InlineData("SST39VF040", "do not stand 5 V (")]
    [InlineData("M29W040B", "is not known")]
    public void A_three_volt_part_on_a_five_volt_bus_is_a_warning_with_the_remedy(string name, string words)
    {
        var finding = Find(PartFindings.SupplyTooHigh, name, 5, 8, 1);
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.Contains("transceiver on the data lines", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Tolerant_inputs_do_not_make_the_supply_pin_tolerant()
    {
        var part = PartCatalog.BuiltIn.Find("SST39VF040")!;
        var tolerant = part with { Supply = part.Supply with { FiveVoltTolerantInputs = FiveVoltTolerance.Yes } };
        var finding = Assert.Single(Check(tolerant, new PartUse(5, 8, 1, "U1")));
        Assert.Equal(PartFindings.SupplyTooHigh, finding.Rule);
        Assert.Contains("its supply pin does not", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_three_volt_part_on_its_own_bus_is_fine() => Assert.Empty(Check("SST39VF040", 3.3, 8, 1));

    [Fact]
    public void A_five_volt_part_on_a_low_bus_is_a_warning() =>
        Assert.Contains("the bus has only 3.3 V", Find(PartFindings.SupplyTooLow, "SST39SF040", 3.3, 8, 1).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("MX29F1615", 16, "rated for 100 erase and write cycles, a figure seen")]
    [InlineData("W27C512", 8, "rated for 100 erase and write cycles, a figure from memory")]
    public void A_hundred_cycles_are_a_warning_with_the_origin_of_the_figure(string name, int width, string words) =>
        Assert.Contains(words, Find(PartFindings.VeryLowEndurance, name, 5, width, 1).Message, StringComparison.Ordinal);

    [Fact]
    public void A_thousand_cycles_are_a_note() =>
        Assert.Contains("1000 or 10000", Find(PartFindings.LowEndurance, "W29C040", 5, 8, 1).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("M27C322", 16, "in volts: 12.")]
    [InlineData("M27C256B", 8, "in volts: 12.75 (from memory).")]
    [InlineData("W27C512", 8, "in volts: 12 program / 14 erase.")]
    public void A_programming_voltage_is_noted_with_its_origin(string name, int width, string words) =>
        Assert.Contains(words, Find(PartFindings.HighVoltage, name, 5, width, 1).Message, StringComparison.Ordinal);

    [Fact]
    public void A_windowed_part_brings_the_caution_about_the_lamp() =>
        Assert.Contains("never look at the tube", Find(PartFindings.UltravioletErase, "M27C801", 5, 8, 1).Advice, StringComparison.Ordinal);

    [Fact]
    public void A_part_without_a_window_is_written_once()
    {
        Find(PartFindings.WrittenOnce, "AT27C010", 5, 8, 1);
        Assert.DoesNotContain(Check("AT27C010", 5, 8, 1), static finding => finding.Rule == PartFindings.UltravioletErase);
    }

    [Fact]
    public void A_page_write_part_names_its_page() =>
        Assert.Contains("256-byte page", Find(PartFindings.WholePages, "AT29C040A", 5, 8, 1).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("HM62256A", "is SRAM and cannot")]
    [InlineData("FM1808", "is FRAM and cannot")]
    [InlineData("24C16", "is serial EEPROM and cannot")]
    public void Save_memory_cannot_carry_a_program_and_nothing_else_is_said(string name, string words)
    {
        var finding = Assert.Single(Check(name, 5, 8, 1));
        Assert.Equal(PartFindings.NotRom, finding.Rule);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_row_from_memory_is_ever_an_error_of_size_or_width() =>
        Assert.All(
            PartCatalog.BuiltIn.All.Where(static part => part.IsRom && part.Evidence.Status == PartStatus.FromMemory),
            static part => Assert.DoesNotContain(
                Check(part, new PartUse(5, part.Supports(8) ? 16 : 8, 1L << 40, "U1")),
                static finding => finding.Severity == FindingSeverity.Error));

    [Fact]
    public void Codes_are_unique_and_in_order()
    {
        var codes = PartFindings.All.Select(static rule => rule.Code).ToArray();
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
        Assert.All(codes, static code => Assert.StartsWith("CW55", code, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_rule_is_raised_by_some_part_of_the_catalogue()
    {
        var log = new FindingLog();
        PartChecks.Find("no such part", "U1", log, Place);
        foreach (var part in PartCatalog.BuiltIn.All)
        {
            PartChecks.Check(part, new PartUse(5, 8, 1024 * Kibi, "U1"), log, Place);
            PartChecks.Check(part, new PartUse(3.3, 16, 1024 * Kibi, "U1"), log, Place);
        }

        Assert.Empty(PartFindings.All.Except(log.ToSorted().Select(static finding => finding.Rule)));
    }

    private static Finding Find(FindingRule rule, string name, double volts, int width, long bytes) =>
        Assert.Single(Check(name, volts, width, bytes), finding => finding.Rule == rule);

    private static ImmutableArray<Finding> Check(string name, double volts, int width, long bytes) =>
        Check(PartCatalog.BuiltIn.Find(name)!, new PartUse(volts, width, bytes, "U1"));

    private static ImmutableArray<Finding> Check(Part part, PartUse use)
    {
        var log = new FindingLog();
        PartChecks.Check(part, use, log, Place);
        Assert.All(log.ToSorted(), static finding => Assert.Equal(Place, finding.Place));
        return log.ToSorted();
    }

    private static string[] Proposed(Finding finding) =>
        finding.Advice[(finding.Advice.LastIndexOf(": ", StringComparison.Ordinal) + 2)..].TrimEnd('.').Split(", ");
}
