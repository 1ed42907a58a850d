using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Saves;

/// <summary>What a reckoning of a cell's life may have to say.</summary>
public static class BatteryFindings
{
    /// <summary>A value without a unit, with another unit, or outside what cells and memories have.</summary>
    public static FindingRule BadQuantity { get; } = new(
        "CW9530", Error, "No quantity",
        "A number without its unit, or with a unit of the wrong letter case, is a thousand times off without anybody seeing it.",
        "Write the number with a point and the unit as the data sheet does; m is a thousandth, u or \u00B5 a millionth.");

    /// <summary>The typical current is above the maximum.</summary>
    public static FindingRule TypicalAboveMaximum { get; } = new(
        "CW9531", Error, "Typical current above the maximum",
        "One of the two is wrong, or they are exchanged.",
        "Give the data sheet's typical retention current with --current and its maximum with --max-current.");

    /// <summary>Nobody said the maximum.</summary>
    /// <remarks>0.1 uA typical and 3 uA maximum for one RAM: NESdev forum, thread on SRAM retention current.</remarks>
    public static FindingRule NoMaximum { get; } = new(
        "CW9532", Warning, "No maximum current given",
        "Typical and maximum retention current of one and the same memory may differ thirty times, and nobody knows which one lies on the board.",
        "Add --max-current from the memory's data sheet, and promise no more years than that one gives.");

    /// <summary>More years than a cell has.</summary>
    public static FindingRule LongerThanTheCell { get; } = new(
        "CW9533", Note, "Longer than cells last",
        "With so small a current the cell's own ageing decides: seals dry out, contacts corrode, and no reckoning shows it.",
        "Count on 10 to 20 years at most, write the date on the cell, and look at it when the cartridge is open anyway.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [BadQuantity, TypicalAboveMaximum, NoMaximum, LongerThanTheCell];
}
