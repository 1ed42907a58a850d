using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What can be wrong with a ROM of the 8-bit Sega consoles besides the fields themselves.</summary>
public static class SegaFindings
{
    /// <summary>The header's mark is not there.</summary>
    public static readonly FindingRule NoMark = new("CW4340", FindingSeverity.Error, "Header mark missing",
        "Export consoles with a boot ROM refuse a ROM without `TMR SEGA`; and if code lies there, it is not where the program's author meant it to be free.",
        "Keep 0x7FF0-0x7FFF free in the linker's map (0x3FF0 in 16 KiB, 0x1FF0 in 8 KiB), or set `header.keep` to false to write over it.");

    /// <summary>A size nibble no boot ROM handles.</summary>
    public static readonly FindingRule BadRange = new("CW4341", FindingSeverity.Error, "Size nibble not usable",
        "A boot ROM sums something else than the header says, and refuses the ROM.", "State `sumRange` as 32KiB, which is right for any ROM of 32 KiB and more, or take it out.");

    /// <summary>The sum reaches beyond the ROM.</summary>
    public static readonly FindingRule RangeBeyondRom = new("CW4342", FindingSeverity.Error, "Checksum range larger than the ROM",
        "A boot ROM would sum what is not there.", "State a smaller `sumRange`, or take it out.");

    /// <summary>The region is that of the other console.</summary>
    public static readonly FindingRule OtherConsole = new("CW4343", FindingSeverity.Note, "Region of the other console",
        "Many images carry the other console's region, and no console refuses it; readers are misled.", "State the region of this console, if it is not meant.");

    /// <summary>Nothing at reset.</summary>
    public static readonly FindingRule NoReset = new("CW4344", FindingSeverity.Error, "Nothing at reset",
        "The processor starts at $0000.", "Link the start of the program to $0000.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoMark, BadRange, RangeBeyondRom, OtherConsole, NoReset];
}
