using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Chips;

/// <summary>Everything a check of the chosen parts may have to say.</summary>
public static class PartFindings
{
    /// <summary>The catalogue has no part of that name.</summary>
    public static FindingRule Unknown { get; } = new(
        "CW5501", Error, "Unknown part",
        "Size, width and supply of the chip decide what its file looks like; without them no chip image can be made.",
        "Check the marking on the chip, or list the parts with `cartwright parts`; for a part the catalogue lacks state its `capacity` too.");

    /// <summary>The entry, or its capacity, was not seen in a source.</summary>
    public static FindingRule FromMemory { get; } = new(
        "CW5502", Note, "Catalogue data from memory",
        "Figures from memory have been wrong before; none of them makes Cartwright refuse a build.",
        "Compare capacity, data lines and supply with the chip's data sheet before you write it.");

    /// <summary>A low-voltage part on a bus of a higher voltage.</summary>
    /// <remarks>Limits of VCC + 0.5 V to VCC + 1 V on inputs: data sheets of SST29VF040, Am29LV040B and MX29LV320C. The circuit: NESdev forum,
    /// "Low voltage chip in SNES cart", and common practice.</remarks>
    public static FindingRule SupplyTooHigh { get; } = new(
        "CW5503", Warning, "Part for a lower voltage than the bus",
        "Inputs driven above the chip's own supply conduct through its protection diodes. That stresses the chip and the console's bus "
        + "drivers, and it fails late, after the cartridge has left the bench.",
        "Feed the chip from a regulator, translate or clamp every address and control line, and put a bus transceiver on the data lines. "
        + "A regulator alone, series resistors, or diodes in the supply do not do it. Or choose a part made for the bus. "
        + "The limits stand in the data sheet under absolute maximum ratings.");

    /// <summary>A part that needs a higher supply than the bus brings.</summary>
    public static FindingRule SupplyTooLow { get; } = new(
        "CW5504", Warning, "Part for a higher voltage than the bus",
        "Below its lowest supply a chip may read wrongly or only now and then, and what it drives may be too high for a console of that voltage.",
        "Choose a part whose supply range covers the bus, by its data sheet.");

    /// <summary>At most 100 erase cycles.</summary>
    public static FindingRule VeryLowEndurance { get; } = new(
        "CW5505", Warning, "Part that stands few rewrites",
        "A build that is written again and again during development wears such a chip out within weeks.",
        "Develop on a part with more cycles and keep this one for finished builds; the data sheet has the figure that counts.");

    /// <summary>At most 1000 erase cycles.</summary>
    public static FindingRule LowEndurance { get; } = new(
        "CW5506", Note, "Part with a limited number of rewrites",
        "Grades of the same chip differ; the lowest one is counted here.",
        "Look up the grade in the data sheet before you use the chip for daily builds.");

    /// <summary>Programming needs a voltage above the supply.</summary>
    public static FindingRule HighVoltage { get; } = new(
        "CW5507", Note, "Part written with a high voltage",
        "Not every writer can supply it, and the same voltage on a wrong pin destroys the chip.",
        "Make sure that the writer supports this very part, take the exact voltage from its data sheet, and put chips in and take them out "
        + "only while the writer is idle, the right way round.");

    /// <summary>The part is erased with ultraviolet light.</summary>
    /// <remarks>M27C256B data sheet, erasure; CIE 187:2010 for the exposure limit of 6 mJ/cm2 at 254 nm.</remarks>
    public static FindingRule UltravioletErase { get; } = new(
        "CW5508", Note, "Part erased with ultraviolet light",
        "Light of 254 nm hurts eyes and skin within seconds, and the pain comes hours later; daylight slowly erases an uncovered chip.",
        "Erase only in a closed eraser whose interlock works, never look at the tube, and cover the window with an opaque label after writing. "
        + "Dose and distance stand in the data sheets of chip and eraser.");

    /// <summary>Writing a page erases the whole page.</summary>
    /// <remarks>AT29C040A data sheet for the page size; that bytes left out become 0xFF is from memory.</remarks>
    public static FindingRule WholePages { get; } = new(
        "CW5509", Note, "Part written in whole pages",
        "Writing a page erases it first: bytes that are left out of the write become 0xFF.",
        "Always load whole pages, and select the exact part on the writer: sister parts differ in page size.");

    /// <summary>The part cannot carry a program.</summary>
    public static FindingRule NotRom { get; } = new(
        "CW5510", Error, "Part that cannot carry a program",
        "A program needs a memory that keeps its contents and answers on parallel address and data lines.",
        "Use a flash, EPROM or parallel EEPROM part at this site, and keep RAM and serial parts for save memory.");

    /// <summary>The part can be written once.</summary>
    public static FindingRule WrittenOnce { get; } = new(
        "CW5511", Note, "Part written once",
        "It has no window and no erase: a cell that was written stays so, and a wrong build means a new chip.",
        "Prove the build on an erasable part first, and blank-check the chip before you write it.");

    /// <summary>The part is smaller than what it must hold.</summary>
    public static FindingRule TooSmall { get; } = new(
        "CW5512", Error, "Part too small",
        "Bytes beyond the end of the chip would be lost, and the cartridge would show the first ones in their place.",
        "Use a larger part, more sites, or a smaller program.");

    /// <summary>The part is smaller than what it must hold, if memory serves.</summary>
    public static FindingRule TooSmallFromMemory { get; } = new(
        "CW5513", Warning, "Part probably too small",
        "The capacity in the catalogue is from memory and may be wrong; if it is right, the end of the contents would be lost.",
        "Check the capacity in the chip's data sheet.");

    /// <summary>The part has not the data lines of the site.</summary>
    public static FindingRule WrongWidth { get; } = new(
        "CW5514", Error, "Part of the wrong width",
        "The chip image would put bytes on data lines that the chip does not have, or leave half of its lines without a meaning.",
        "Choose a part with the data lines of the site, or a board with the width of the part.");

    /// <summary>The part has not the data lines of the site, if memory serves.</summary>
    public static FindingRule WrongWidthFromMemory { get; } = new(
        "CW5515", Warning, "Part probably of the wrong width",
        "The width in the catalogue is from memory and may be wrong; if it is right, the chip cannot serve this site.",
        "Check the data lines in the chip's data sheet.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        Unknown, FromMemory, SupplyTooHigh, SupplyTooLow, VeryLowEndurance, LowEndurance, HighVoltage, UltravioletErase,
        WholePages, NotRom, WrittenOnce, TooSmall, TooSmallFromMemory, WrongWidth, WrongWidthFromMemory,
    ];
}
