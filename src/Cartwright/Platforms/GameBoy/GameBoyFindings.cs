using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.GameBoy;

/// <summary>What can be wrong with a Game Boy ROM besides the fields themselves.</summary>
public static class GameBoyFindings
{
    /// <summary>Nothing at the entry.</summary>
    public static readonly FindingRule NoEntry = new("CW4190", FindingSeverity.Error, "Nothing at the entry",
        "The console starts at $0100, and would run fill bytes.", "Link code to $0100, or state `entry`: `00C35001` is nop and jp $0150.");

    /// <summary>The entry is all zero.</summary>
    public static readonly FindingRule EmptyEntry = new("CW4191", FindingSeverity.Warning, "Entry holds no code",
        "Four zero bytes do nothing, and the console goes on into the boot bitmap, which is no code.", "Put a jump at $0100, or state `entry`: `00C35001` is nop and jp $0150.");

    /// <summary>The entry is all 0xFF.</summary>
    public static readonly FindingRule FilledEntry = new("CW4192", FindingSeverity.Note, "Entry holds FF",
        "0xFF is the instruction rst $38: the game starts only if its code is there.", "Nothing, if $0038 begins the game.");

    /// <summary>The entry jumps to where no program is.</summary>
    public static readonly FindingRule EntryNowhere = new("CW4193", FindingSeverity.Error, "Entry jumps to no code",
        "The console would run fill bytes or empty RAM.", "Correct the jump at $0100, or put the program where it goes.");

    /// <summary>The boot bitmap is not right.</summary>
    public static readonly FindingRule BitmapWrong = new("CW4194", FindingSeverity.Error, "Boot bitmap is wrong",
        "The console compares these bytes and stops when they differ.", "Leave the bytes blank and they are written, or state `bitmap` as `write`; to keep other bytes on purpose state it as `keep`.");

    /// <summary>The boot bitmap is right only as far as the colour models look.</summary>
    public static readonly FindingRule BitmapHalfRight = new("CW4195", FindingSeverity.Error, "Boot bitmap is right only in its first half",
        "The colour models compare 24 bytes and start; the first models compare all 48 and hang.", "Leave the bytes blank and they are written, or state `bitmap` as `write`.");

    /// <summary>Another boot bitmap was kept on purpose.</summary>
    public static readonly FindingRule BitmapKept = new("CW4196", FindingSeverity.Warning, "Other boot bitmap kept",
        "Consoles that compare the bytes do not start the cartridge.", "Nothing, if that is meant; otherwise state `bitmap` as `write`.");

    /// <summary>More than 32 KiB without a controller.</summary>
    public static readonly FindingRule NeedsController = new("CW4197", FindingSeverity.Error, "More than 32 KiB without a bank controller",
        "The console sees 32 KiB at once; a controller shows the rest.", "State the board's controller as `cartridgeType`, such as `mbc5`; on a board that switches 32 KiB at once give every 32 KiB bank an entry and a whole header.");

    /// <summary>A latch cart whose banks all start.</summary>
    public static readonly FindingRule LatchCart = new("CW4198", FindingSeverity.Note, "Every 32 KiB bank starts by itself",
        "Taken for a board that switches 32 KiB at once.", "Nothing, if the board does; otherwise state its controller as `cartridgeType`.");

    /// <summary>A latch cart with banks that do not start.</summary>
    public static readonly FindingRule LatchGap = new("CW4199", FindingSeverity.Warning, "A 32 KiB bank that does not start",
        "After power-on the latch may show any bank, and the console needs an entry and a whole header in it.", "Give every 32 KiB bank an entry, the boot bitmap and a right header checksum.");

    /// <summary>A latch cart without the mark loaders look for.</summary>
    public static readonly FindingRule LatchMark = new("CW4200", FindingSeverity.Warning, "Latch board without its mark",
        "Loaders take the cartridge type for a latch board only together with destination 0xD1.", "State `destination` as `0xD1`.");

    /// <summary>ROM larger than the controller can show.</summary>
    public static readonly FindingRule RomTooLarge = new("CW4201", FindingSeverity.Error, "ROM larger than the controller can show",
        "What lies beyond is never seen.", "State another controller as `cartridgeType`, or make the ROM smaller.");

    /// <summary>ROM and RAM too large together.</summary>
    public static readonly FindingRule TooMuchTogether = new("CW4202", FindingSeverity.Error, "ROM and RAM too large together",
        "The controller's upper lines select either banks of ROM or banks of RAM.", "Make one of them smaller, or state `mbc5` types as `cartridgeType`.");

    /// <summary>Fits only a rare or uncertain limit.</summary>
    public static readonly FindingRule UncertainLimit = new("CW4203", FindingSeverity.Warning, "Near the edge of what the controller can show",
        "Boards and loaders may not show all of it.", "Check the board, or state another controller as `cartridgeType`.");

    /// <summary>RAM larger than the controller can show.</summary>
    public static readonly FindingRule RamTooLarge = new("CW4204", FindingSeverity.Warning, "RAM larger than the controller can show",
        "The upper banks are never seen.", "State a smaller `saveRam`, or another controller.");

    /// <summary>A type with RAM, and no size.</summary>
    public static readonly FindingRule NoRamSize = new("CW4205", FindingSeverity.Warning, "RAM without a size",
        "Loaders give the game no RAM, and saves vanish.", "State `saveRam`, such as `8KiB`.");

    /// <summary>A size, and a type without RAM.</summary>
    public static readonly FindingRule NoRamType = new("CW4206", FindingSeverity.Warning, "RAM size without RAM",
        "The cartridge type says there is no RAM: on some software saves vanish.", "State a `cartridgeType` with RAM, such as `mbc5-ram-battery`, or take `saveRam` out.");

    /// <summary>A size for RAM inside the controller.</summary>
    public static readonly FindingRule RamInside = new("CW4207", FindingSeverity.Warning, "RAM size for memory inside the controller",
        "The controller's own memory is not counted here.", "Take `saveRam` out.");

    /// <summary>The unused RAM size code.</summary>
    public static readonly FindingRule UnusedRamCode = new("CW4208", FindingSeverity.Warning, "Unused RAM size code 01",
        "Some boards and software take it for none, some for 2 KiB.", "State `saveRam` as `8KiB`.");

    /// <summary>RAM that forgets.</summary>
    public static readonly FindingRule NoBattery = new("CW4209", FindingSeverity.Note, "RAM without a battery",
        "What the game keeps there is gone after power-off, and loaders keep no save.", "Nothing, if it is work memory; for saves state the type with `-battery`.");

    /// <summary>Banks MBC1 does not show.</summary>
    public static readonly FindingRule HiddenBanks = new("CW4210", FindingSeverity.Note, "Banks MBC1 does not show at $4000",
        "The bank register's 0 acts as 1 in each group of 32 banks: the next bank is seen instead.", "Keep these banks empty or their contents twice, or use the mode that shows them at $0000.");

    /// <summary>The menu of an MMM01 cart does not start.</summary>
    public static readonly FindingRule MenuNotStarting = new("CW4211", FindingSeverity.Error, "The MMM01 menu does not start",
        "After power-on the console sees the last 32 KiB, and needs an entry and a whole header there.", "Put the menu program into the last 32 KiB, and state `cartridgeType` as an `mmm01` type: its bitmap and header checksum are written then.");

    /// <summary>A type of no known name.</summary>
    public static readonly FindingRule UnknownType = new("CW4212", FindingSeverity.Warning, "Cartridge type without a name",
        "Loaders will not know what is on the board.", "State a `cartridgeType` by name.");

    /// <summary>A type never sold.</summary>
    public static readonly FindingRule RareType = new("CW4213", FindingSeverity.Note, "Cartridge type never sold",
        "No commercial board had RAM without a controller, and loaders differ.", "Nothing, if the board is made so.");

    /// <summary>A controller that may be too slow.</summary>
    public static readonly FindingRule SingleSpeed = new("CW4214", FindingSeverity.Note, "Controller not guaranteed at double speed",
        "Of the controllers only MBC5 is guaranteed in the colour model's double-speed mode.", "Stay at single speed, or use an MBC5 board.");

    /// <summary>SGB flag that is not read.</summary>
    public static readonly FindingRule SgbIgnored = new("CW4215", FindingSeverity.Warning, "SGB flag is ignored",
        "The Super Game Boy reads the flag only when the old licensee is 33.", "Take `oldLicensee` out, and 33 is written.");

    /// <summary>A new licensee that is not read, or that is missing.</summary>
    public static readonly FindingRule Licensee = new("CW4216", FindingSeverity.Note, "Licensees do not go together",
        "The new licensee is read when the old one is 33, and only then.", "State `newLicensee` and leave `oldLicensee` out, or neither.");

    /// <summary>A byte that is neither value.</summary>
    public static readonly FindingRule Filler = new("CW4217", FindingSeverity.Note, "Header byte looks like filler",
        "The field has fewer values; consoles do not mind.", "Nothing, or state the field.");

    /// <summary>A CGB flag with further bits.</summary>
    public static readonly FindingRule OddFlag = new("CW4218", FindingSeverity.Note, "CGB flag with unusual bits",
        "Bit 7 alone turns the colour functions on; with bit 2 or 3 the console starts in odd palette states.", "State `cgbFlag` as `compatible` or `only`.");

    /// <summary>No title.</summary>
    public static readonly FindingRule NoTitle = new("CW4219", FindingSeverity.Note, "No title",
        "Readers and menus show the title.", "Give the cart a `title`.");

    /// <summary>A title that is not in capitals.</summary>
    public static readonly FindingRule LowerCase = new("CW4220", FindingSeverity.Note, "Title not in capitals",
        "Titles are customarily upper-case ASCII; some menus have no other letters.", "Write the title in capitals.");

    /// <summary>A title filled up with spaces.</summary>
    public static readonly FindingRule Blanks = new("CW4221", FindingSeverity.Note, "Title filled up with spaces",
        "Titles are customarily filled up with 00.", "Take the spaces off its end.");

    /// <summary>A title that is no text.</summary>
    public static readonly FindingRule NoText = new("CW4222", FindingSeverity.Note, "Title is no text",
        "Readers show the title as letters.", "State the title, and set `header.keep` to false if the program holds these bytes.");

    /// <summary>A manufacturer code that cannot be told from the title.</summary>
    public static readonly FindingRule CodeHidden = new("CW4223", FindingSeverity.Note, "Manufacturer code reads as title",
        "A code is known by four capitals or digits after a zero byte: behind a title of 11 letters, or with other letters, it is read as title.", "Use a title of at most 10 letters and a code of four capitals or digits.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NoEntry, EmptyEntry, FilledEntry, EntryNowhere, BitmapWrong, BitmapHalfRight, BitmapKept, NeedsController, LatchCart, LatchGap, LatchMark,
        RomTooLarge, TooMuchTogether, UncertainLimit, RamTooLarge, NoRamSize, NoRamType, RamInside, UnusedRamCode, NoBattery, HiddenBanks,
        MenuNotStarting, UnknownType, RareType, SingleSpeed, SgbIgnored, Licensee, Filler, OddFlag, NoTitle, LowerCase, Blanks, NoText, CodeHidden,
    ];
}
