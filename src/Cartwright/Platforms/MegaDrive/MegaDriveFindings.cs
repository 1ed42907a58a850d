using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>What can be wrong with a Mega Drive ROM besides single header fields.</summary>
public static class MegaDriveFindings
{
    /// <summary>No program puts anything at the reset vectors.</summary>
    public static readonly FindingRule NoVectors = new("CW4230", FindingSeverity.Error, "No reset vectors",
        "The processor takes its stack and its first instruction's address from the first eight bytes; fill there starts nothing.",
        "Place the program that holds the vector table at offset 0.");

    /// <summary>The entry address is odd or outside the ROM.</summary>
    public static readonly FindingRule EntryWrong = new("CW4231", FindingSeverity.Error, "Entry address cannot be run",
        "The processor starts at the address in bytes 4-7; an odd one, or one outside the ROM, stops it at once.",
        "Correct the second longword of the vector table, or the linker's memory map.");

    /// <summary>The entry address points into vectors or header.</summary>
    public static readonly FindingRule EntryInHeader = new("CW4232", FindingSeverity.Warning, "Entry address before 0x200",
        "Vectors and header lie there; they make poor instructions.", "Let the program begin at 0x200 or later.");

    /// <summary>The stack does not begin in work RAM.</summary>
    public static readonly FindingRule StackOutsideRam = new("CW4233", FindingSeverity.Warning, "Stack not in work RAM",
        "The first call or interrupt writes its return address to where no RAM is.",
        "Begin the stack at $00FF0002-$00FFFFFE, or at 0 or $01000000 for the top of RAM, at an even address.");

    /// <summary>The header does not begin with SEGA.</summary>
    public static readonly FindingRule NoLockText = new("CW4234", FindingSeverity.Error, "System type does not begin with SEGA",
        "Later consoles compare the start of the header with SEGA and refuse the game where it is not there.",
        "Let `systemType` begin with SEGA, or leave it out.");

    /// <summary>The system type is none of the usual texts.</summary>
    public static readonly FindingRule UnlistedSystem = new("CW4235", FindingSeverity.Warning, "Unusual system type",
        "Consoles test the first letters only, but programs that read images may not know this text.",
        "Write one of the usual texts, unless a board asks for this one.");

    /// <summary>The copyright is not in the documented form.</summary>
    public static readonly FindingRule CopyrightForm = new("CW4236", FindingSeverity.Note, "Copyright not in the documented form",
        "No console reads it; catalogues of images do.", "Set `copyright`, for example to `(C)QUIL 2026.JAN`.");

    /// <summary>The serial number is not in the documented form.</summary>
    public static readonly FindingRule SerialForm = new("CW4237", FindingSeverity.Note, "Serial number not in the documented form",
        "No console reads it; catalogues of images do.", "Set `serial` and `revision`, for example to `GM 00000000` and 0.");

    /// <summary>Text fields are filled up with zeros.</summary>
    public static readonly FindingRule ZeroFiller = new("CW4238", FindingSeverity.Note, "Text field filled with zeros",
        "Header texts are filled up with spaces; some programs show zeros as garbage.", "Fill the field with spaces (0x20) in the program's source.");

    /// <summary>The region is in neither of the two styles.</summary>
    public static readonly FindingRule RegionForm = new("CW4239", FindingSeverity.Note, "Region in neither style",
        "Readers expect letters out of J, U and E, or one hexadecimal digit, and guess at anything else.", "Set `region` in words, for example to `japan americas europe`.");

    /// <summary>The declared end lies beyond the ROM.</summary>
    public static readonly FindingRule EndOutside = new("CW4240", FindingSeverity.Warning, "Declared end outside the ROM",
        "A check routine on the console sums on into fill or mirrored bytes and stops the game, whatever the checksum says.",
        "Leave `romEnd` out, and the true value is written.");

    /// <summary>The declared end is the size instead of the last address.</summary>
    public static readonly FindingRule EndIsSize = new("CW4241", FindingSeverity.Warning, "Declared end is the size",
        "The field holds the last address, which is the size less one; a check routine sums one word too many.",
        "Leave `romEnd` out, and the true value is written.");

    /// <summary>The RAM range is not the console's.</summary>
    public static readonly FindingRule RamRange = new("CW4242", FindingSeverity.Note, "Work RAM range not the console's",
        "The console's work RAM is $FF0000-$FFFFFF; no console reads the field.", "Leave `ramStart` and `ramEnd` out.");

    /// <summary>The stored checksum follows another rule.</summary>
    public static readonly FindingRule OtherChecksum = new("CW4243", FindingSeverity.Note, "Checksum of another kind",
        "The value is no accident, but a check routine that sums words will not find it right.",
        "Take `checksum` out of `header.keep`, and the documented sum is written.");

    /// <summary>The checksum was never filled in.</summary>
    public static readonly FindingRule EmptyChecksum = new("CW4244", FindingSeverity.Warning, "Checksum never filled in",
        "A check routine stops the game.", "Have the checksum computed.");

    /// <summary>The checksum's bytes are in the wrong order.</summary>
    public static readonly FindingRule LittleEndianChecksum = new("CW4245", FindingSeverity.Warning, "Checksum with its bytes exchanged",
        "The 68000 reads the high byte first.", "Have the checksum computed, or store its high byte first.");

    /// <summary>Save memory's addresses do not lie on its lane.</summary>
    public static readonly FindingRule SaveLane = new("CW4246", FindingSeverity.Warning, "Save memory's lane and addresses disagree",
        "Readers of the block may take the wrong half of the bus, or the wrong size.", "State `saveMemory` in words; the addresses are then put onto the lane.");

    /// <summary>Save memory's range is none.</summary>
    public static readonly FindingRule SaveRange = new("CW4247", FindingSeverity.Warning, "Save memory outside the cartridge's space",
        "The range must ascend and lie in $000000-$3FFFFF.", "State `saveMemory` in words, such as `8KiB battery odd`.");

    /// <summary>A save memory block that is not marked as one.</summary>
    public static readonly FindingRule SaveBlockOff = new("CW4248", FindingSeverity.Note, "Save memory block is off",
        "Without RA in front the block says that there is no save memory, whatever follows; or it is of a kind that is not known.",
        "State `saveMemory` in words, or `none`.");

    /// <summary>Save memory lies over the ROM.</summary>
    public static readonly FindingRule SaveOverRom = new("CW4249", FindingSeverity.Warning, "Save memory lies over the ROM",
        "With save memory fixed there, the ROM behind it cannot be read.",
        "Use a board with the register at $A130F1 (bit 0 shows save memory, bit 1 protects it from writing), and let the program switch it; or keep the ROM below save memory.");

    /// <summary>The program saves into its own flash chip.</summary>
    public static readonly FindingRule FlashSave = new("CW4250", FindingSeverity.Note, "Game saves into flash",
        "The range has no RAM behind it: its sectors of the flash chip are left erased for the game. The meaning of the block is inferred from an image.",
        "Use a flash chip with sectors at these addresses, and a board that lets the console write to it.");

    /// <summary>The flash sectors for saving hold something.</summary>
    public static readonly FindingRule FlashSaveNotErased = new("CW4251", FindingSeverity.Warning, "Flash for saving is not erased",
        "Flash can only be written where it is erased (0xFF).", "Move the program out of the range, and fill with 0xFF.");

    /// <summary>A ROM over 4 MiB without the text that asks for the page mapper.</summary>
    public static readonly FindingRule NeedsPages = new("CW4252", FindingSeverity.Warning, "ROM over 4 MiB without the page mapper's system type",
        "The console sees 4 MiB; the rest needs a board with page registers at $A130F3-$A130FF, and compatible hardware looks for this text to turn them on.",
        "Set `systemType` to `SEGA SSF`, unless the board has the mapper always on.");

    /// <summary>A ROM over 4 MiB cannot be summed in one piece.</summary>
    public static readonly FindingRule BeyondLinear = new("CW4253", FindingSeverity.Note, "ROM over 4 MiB",
        "A check routine that does not switch pages sees the first 4 MiB only.", "Set `romEnd` to 0x003FFFFF if the program checks itself that way.");

    /// <summary>The program's bytes are exchanged in pairs.</summary>
    public static readonly FindingRule SwappedProgram = new("CW4254", FindingSeverity.Error, "Program is byte-swapped",
        "The bytes of each 16-bit word are exchanged, as a file for a 16-bit chip has them; the console needs them in bus order.",
        "Exchange the bytes of each pair first: `objcopy -I binary -O binary --reverse-bytes=2 FILE`.");

    /// <summary>The program has a copier's prefix.</summary>
    public static readonly FindingRule PrefixedProgram = new("CW4255", FindingSeverity.Error, "Program has a copier prefix",
        "The 512 bytes in front of the ROM move every address.", "Set `skip` to 0x200 for this program.");

    /// <summary>The program is in a copier's block order.</summary>
    public static readonly FindingRule InterleavedProgram = new("CW4256", FindingSeverity.Error, "Program is in a copier's block order",
        "Each 16 KiB block holds its odd bytes first and its even bytes behind them; the console needs them in bus order.",
        "Use the program as the toolchain produced it, or put the blocks back in order first.");

    /// <summary>The program is one chip's half, or two halves one behind the other.</summary>
    public static readonly FindingRule HalvedProgram = new("CW4257", FindingSeverity.Warning, "Program looks like the halves of a pair of chips",
        "Even and odd bytes stand apart; the console needs them in bus order.", "Put even and odd bytes together again first; the even bytes belong to the upper chip (D15-D8).");

    /// <summary>The programs end in the middle of a word.</summary>
    public static readonly FindingRule OddProgram = new("CW4258", FindingSeverity.Note, "Program of odd length",
        "The bus is 16 bits wide; a fill byte completes the last word and counts in the checksum.", "Nothing, unless the program was cut off.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NoVectors, EntryWrong, EntryInHeader, StackOutsideRam, NoLockText, UnlistedSystem, CopyrightForm, SerialForm, ZeroFiller, RegionForm,
        EndOutside, EndIsSize, RamRange, OtherChecksum, EmptyChecksum, LittleEndianChecksum, SaveLane, SaveRange, SaveBlockOff, SaveOverRom,
        FlashSave, FlashSaveNotErased, NeedsPages, BeyondLinear, SwappedProgram, PrefixedProgram, InterleavedProgram, HalvedProgram, OddProgram,
    ];
}
