using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What can be wrong with a ROM of the 8-bit Sega consoles besides the fields themselves.</summary>
public static class SegaFindings
{
    /// <summary>The header's mark is not there.</summary>
    public static readonly FindingRule NoMark = new("CW4340", FindingSeverity.Error, "Header mark missing",
        "Export consoles with a boot ROM refuse a ROM without `TMR SEGA`; and if code lies there, it is not where the program's author meant it to be free.",
        "Keep 0x7FF0-0x7FFF free in the linker's map (0x3FF0 in 16 KiB, 0x1FF0 in 8 KiB), set `header.keep` to false to write over it, or `header.internalHeader` to `none` for a ROM without a header.");

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

    /// <summary>512 bytes in front of the program.</summary>
    public static readonly FindingRule CopierPrefix = new("CW4345", FindingSeverity.Error, "Copier prefix left in a program",
        "Everything lies 512 bytes too high, so the console starts in the prefix.", "Give the program `skip: 512`.");

    /// <summary>No header.</summary>
    public static readonly FindingRule NoHeader = new("CW4346", FindingSeverity.Warning, "No header mark",
        "Export models of the Master System and all Game Gears with a boot ROM refuse a cartridge without TMR SEGA.", "Leave `header.internalHeader` out if the cart is for them.");

    /// <summary>A size code beyond the ROM on a console that does not look.</summary>
    public static readonly FindingRule RangeUnchecked = new("CW4347", FindingSeverity.Warning, "Size code says more than the ROM has",
        "The Game Gear does not verify the checksum, but readers and an adapter in another console may.", "Leave `header.sumRange` out.");

    /// <summary>The checksum the wrong way round.</summary>
    public static readonly FindingRule HighByteFirst = new("CW4348", FindingSeverity.Note, "Checksum held high byte first",
        "The console reads the low byte first; an old specification says otherwise.", "Nothing: unless it is kept, the right one is written.");

    /// <summary>Reserved bytes.</summary>
    public static readonly FindingRule Reserved = new("CW4349", FindingSeverity.Note, "Reserved bytes in use",
        "Only 0000, FFFF and 2020 are seen there.", "Keep them at 0000.");

    /// <summary>A product code nobody chose.</summary>
    public static readonly FindingRule ToolDefault = new("CW4350", FindingSeverity.Note, "Product code is a tool's default",
        "9999 behind reserved bytes of FFFF is what a tool writes that was told nothing.", "State `header.productCode`, or leave it.");

    /// <summary>A region without a meaning.</summary>
    public static readonly FindingRule RegionUndefined = new("CW4351", FindingSeverity.Warning, "Region not defined",
        "Export models of the Master System are said to want 4.", "State `header.region` by name.");

    /// <summary>A product code that is not decimal.</summary>
    public static readonly FindingRule ProductCode = new("CW4352", FindingSeverity.Note, "Product code not decimal",
        "Its first two bytes are four decimal digits.", "State `header.productCode` as a number.");

    /// <summary>An erased byte at the start.</summary>
    public static readonly FindingRule BlankStart = new("CW4353", FindingSeverity.Warning, "Program starts with an erased byte",
        "The processor starts at $0000.", "Check `skip` and `offset` of the program.");

    /// <summary>No handler for the pause button.</summary>
    public static readonly FindingRule NoPause = new("CW4354", FindingSeverity.Warning, "No handler for the pause button",
        "The button cannot be switched off: the game crashes when it is pressed.", "Put at least ED 45 (retn) at $0066.");

    /// <summary>No handler for interrupts.</summary>
    public static readonly FindingRule NoInterrupt = new("CW4355", FindingSeverity.Note, "No interrupt handler",
        "The video chip's interrupts lead there once they are enabled; erased bytes there call themselves until the stack has overwritten RAM.", "Nothing, if interrupts stay off.");

    /// <summary>A tag where code is.</summary>
    public static readonly FindingRule CodeInTag = new("CW4356", FindingSeverity.Error, "Program where the author's tag belongs",
        "The tag's 16 bytes before the header must be free; a tag over code breaks the game.", "Keep the program out of those bytes, or take the `tag` fields out.");

    /// <summary>A pointer of the tag that leads nowhere.</summary>
    public static readonly FindingRule TagPointer = new("CW4357", FindingSeverity.Warning, "Author's tag points at no text",
        "Readers show the bytes from there on up to the next 00.", "Give the text's address, or 0xFFFF for none.");

    /// <summary>Numbers of the tag that are none.</summary>
    public static readonly FindingRule TagNumbers = new("CW4358", FindingSeverity.Warning, "Author's tag has no readable version or date",
        "Both are decimal digits, two in a byte, and the date is a day of the calendar.", "State `header.tagVersion` and `header.tagDate`.");

    /// <summary>Bank sums that do not agree.</summary>
    public static readonly FindingRule BankSums = new("CW4359", FindingSeverity.Note, "Bank sums do not agree",
        "Some ROMs hold a second checksum of their own before the header; its two words are each other's complement.", "Nothing, if these bytes are something else; they are never written here.");

    /// <summary>Bytes that are not seen.</summary>
    public static readonly FindingRule UnderRam = new("CW4360", FindingSeverity.Warning, "Program under the cartridge's RAM",
        "The console sees the RAM and not these bytes.", "Leave 0x2000-0x3FFF blank, or correct `header.cartridgeRam`.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NoMark, BadRange, RangeBeyondRom, OtherConsole, NoReset, CopierPrefix, NoHeader, RangeUnchecked, HighByteFirst, Reserved, ToolDefault, RegionUndefined, ProductCode,
        BlankStart, NoPause, NoInterrupt, CodeInTag, TagPointer, TagNumbers, BankSums, UnderRam,
    ];
}
