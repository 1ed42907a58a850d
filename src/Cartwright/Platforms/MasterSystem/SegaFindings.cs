using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the checks of the three consoles may have to say.</summary>
public static class SegaFindings
{
    /// <summary>512 bytes in front of the program.</summary>
    public static readonly FindingRule CopierPrefix = new("CW4340", FindingSeverity.Error, "Copier prefix left in a program",
        "Everything lies 512 bytes too high, so the console starts in the prefix.", "Give the program `skip: 512`.");

    /// <summary>A program where the header belongs.</summary>
    public static readonly FindingRule CodeInHeader = new("CW4341", FindingSeverity.Error, "Program where the header belongs",
        "The linker must leave the header's 16 bytes free; a header and its checksum over code break the game.",
        "Keep the program out of those bytes, or set `header.internalHeader` to `none`.");

    /// <summary>No header.</summary>
    public static readonly FindingRule NoHeader = new("CW4342", FindingSeverity.Warning, "No header mark",
        "Export models of the Master System and all Game Gears with a boot ROM refuse a cartridge without TMR SEGA.", "Leave `header.internalHeader` and `header.mark` out if the cart is for them.");

    /// <summary>A size code that is wrong on consoles.</summary>
    public static readonly FindingRule FaultySize = new("CW4343", FindingSeverity.Error, "Faulty size code",
        "Consoles sum other bytes than the code says, or none, so no checksum can be right.", "Leave `header.checksumRange` out: 32KiB is right for every ROM of that size or more.");

    /// <summary>A size code beyond the ROM.</summary>
    public static readonly FindingRule RangeBeyondRom = new("CW4344", FindingSeverity.Error, "Checksum covers more than the ROM has",
        "The console sums bytes that no chip drives and refuses the cartridge.", "Leave `header.checksumRange` out.");

    /// <summary>A size code beyond the ROM on a console that does not look.</summary>
    public static readonly FindingRule RangeUnchecked = new("CW4345", FindingSeverity.Warning, "Size code says more than the ROM has",
        "The Game Gear does not verify the checksum, but readers and an adapter in another console may.", "Leave `header.checksumRange` out.");

    /// <summary>The checksum the wrong way round.</summary>
    public static readonly FindingRule HighByteFirst = new("CW4346", FindingSeverity.Note, "Checksum held high byte first",
        "The console reads the low byte first; an old specification says otherwise.", "Nothing: unless it is kept, the right one is written.");

    /// <summary>Reserved bytes.</summary>
    public static readonly FindingRule Reserved = new("CW4347", FindingSeverity.Note, "Reserved bytes in use",
        "Only 0000, FFFF and 2020 are seen there.", "Keep them at 0000.");

    /// <summary>A product code nobody chose.</summary>
    public static readonly FindingRule ToolDefault = new("CW4348", FindingSeverity.Note, "Product code is a tool's default",
        "9999 behind reserved bytes of FFFF is what a tool writes that was told nothing.", "State `header.productCode`, or leave it.");

    /// <summary>A region of the other console.</summary>
    public static readonly FindingRule RegionOfOther = new("CW4349", FindingSeverity.Warning, "Region of the other console",
        "Boot ROMs and readers go by it, though many images of both consoles have the other's.", "State a `header.region` of this console.");

    /// <summary>A region without a meaning.</summary>
    public static readonly FindingRule RegionUndefined = new("CW4350", FindingSeverity.Warning, "Region not defined",
        "Export models of the Master System are said to want 4.", "State `header.region` by name.");

    /// <summary>A product code that is not decimal.</summary>
    public static readonly FindingRule ProductCode = new("CW4351", FindingSeverity.Note, "Product code not decimal",
        "Its first two bytes are four decimal digits.", "State `header.productCode` as a number.");

    /// <summary>Nothing at the start.</summary>
    public static readonly FindingRule NoStart = new("CW4352", FindingSeverity.Error, "No program at $0000",
        "The processor starts there.", "Give the program its place: `offset` 0 for most.");

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
        "The tag's 16 bytes before the header must be free; a tag over code breaks the game.", "Keep the program out of those bytes, or take the `sdsc` fields out.");

    /// <summary>A pointer of the tag that leads nowhere.</summary>
    public static readonly FindingRule TagPointer = new("CW4357", FindingSeverity.Warning, "Author's tag points at no text",
        "Readers show the bytes from there on up to the next 00.", "Give the text's address, or `none`.");

    /// <summary>Numbers of the tag that are none.</summary>
    public static readonly FindingRule TagNumbers = new("CW4358", FindingSeverity.Warning, "Author's tag has no readable version or date",
        "Both are decimal digits, two in a byte, and the date is a day of the calendar.", "State `header.sdscVersion` and `header.sdscDate`.");

    /// <summary>Bank sums that do not agree.</summary>
    public static readonly FindingRule BankSums = new("CW4359", FindingSeverity.Note, "Bank sums do not agree",
        "Some ROMs hold a second checksum of their own before the header; its two words are each other's complement.", "Nothing, if these bytes are something else; they are never written here.");

    /// <summary>Bytes that are not seen.</summary>
    public static readonly FindingRule UnderRam = new("CW4360", FindingSeverity.Warning, "Program under the cartridge's RAM",
        "The console sees the RAM and not these bytes.", "Leave 0x2000-0x3FFF blank, or correct `header.cartridgeRam`.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        CopierPrefix, CodeInHeader, NoHeader, FaultySize, RangeBeyondRom, RangeUnchecked, HighByteFirst, Reserved, ToolDefault, RegionOfOther, RegionUndefined,
        ProductCode, NoStart, BlankStart, NoPause, NoInterrupt, CodeInTag, TagPointer, TagNumbers, BankSums, UnderRam,
    ];
}
