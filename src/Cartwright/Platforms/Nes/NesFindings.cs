using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Nes;

/// <summary>What can be wrong with a cart for the NES or Famicom.</summary>
public static class NesFindings
{
    /// <summary>No RESET vector where the CPU looks at power-on.</summary>
    public static readonly FindingRule NoReset = new("CW4110", FindingSeverity.Error, "No RESET vector where the CPU looks",
        "The console reads its start address there; without one it does not start.", "Put the bank with the vectors at the end of `prg`.");

    /// <summary>The RESET vector leads out of the ROM.</summary>
    public static readonly FindingRule ResetBelow = new("CW4111", FindingSeverity.Error, "RESET vector below $8000",
        "There is no PRG below $8000, so that the console starts into RAM or registers.", "Let the vector name a label in PRG.");

    /// <summary>Some banks that may come up hold no RESET vector.</summary>
    public static readonly FindingRule SomeBanks = new("CW4112", FindingSeverity.Warning, "Banks without a RESET vector",
        "Which bank is visible at power-on is not known on this board, so that the cart starts on some power-ups only.",
        "Put the vectors and a short start routine that selects the right bank at the end of every bank.");

    /// <summary>The RESET vector leads into a window whose bank is not known at power-on.</summary>
    public static readonly FindingRule ResetUnsure = new("CW4113", FindingSeverity.Warning, "RESET leads into a switched window",
        "The bank visible there at power-on is not known.", "Start in the bank that is always visible, and switch from there.");

    /// <summary>NMI or IRQ vector below $8000.</summary>
    public static readonly FindingRule HandlerBelow = new("CW4114", FindingSeverity.Note, "Interrupt vector below $8000",
        "It is unused, or a handler in RAM.", "Nothing, if it is one of the two.");

    /// <summary>A container header was left in a program.</summary>
    public static readonly FindingRule ContainerInside = new("CW4115", FindingSeverity.Error, "Container header inside a program",
        "The container's 16 bytes are on no chip; with them everything is shifted by 16 and nothing runs.", "Give the program `\"skip\": 16`.");

    /// <summary>CHR ROM where boards have CHR RAM.</summary>
    public static readonly FindingRule ChrUnexpected = new("CW4116", FindingSeverity.Warning, "CHR ROM on a board with CHR RAM",
        "The customary boards have no place for the chip, and the game gets blank tiles.", "Leave `chr` out, or choose a mapper with CHR ROM.");

    /// <summary>No CHR where boards have a CHR ROM.</summary>
    public static readonly FindingRule ChrMissing = new("CW4117", FindingSeverity.Warning, "No CHR",
        "Without patterns the picture is blank or garbage; loaders assume no CHR RAM that is not declared.", "Give a program for the region `chr`, or state `chrRam`.");

    /// <summary>Writes to the mapper meet the ROM's bytes.</summary>
    public static readonly FindingRule Conflicts = new("CW4118", FindingSeverity.Note, "Board with bus conflicts",
        "The mapper sees the written value AND the ROM's byte at that address; software that runs games often does not show it.",
        "Write each value to an address that holds the same value, for example in a table 0, 1, 2 and so on in a bank that is visible; `conflictTables` in the manifest has such a table checked.");

    /// <summary>More PRG than the customary boards take.</summary>
    public static readonly FindingRule Oversize = new("CW4119", FindingSeverity.Warning, "More PRG than customary boards take",
        "It runs on permissive software, and on a board only with enough latch bits.", "Make sure of your board, or choose another mapper.");

    /// <summary>A trainer is claimed.</summary>
    public static readonly FindingRule Trainer = new("CW4120", FindingSeverity.Error, "Trainer not possible",
        "A cartridge has no such bytes, and a container that claims them is read 512 bytes off.", "Take `trainer` out of `header`.");

    /// <summary>The battery flag without anything to keep.</summary>
    public static readonly FindingRule NothingKept = new("CW4121", FindingSeverity.Warning, "Battery flag without save memory",
        "Only a mapper with memory of its own, or PRG that the console rewrites, keeps anything without save RAM.", "State `prgSaveRam` or `chrSaveRam`, or take `battery` out.");

    /// <summary>A submapper that is not in the list.</summary>
    public static readonly FindingRule Submapper = new("CW4122", FindingSeverity.Warning, "Submapper not in the list",
        "Loaders do not know it, or know it as something no longer used.", "Choose one of the list, or leave it out.");

    /// <summary>The exponent form of a size where the plain one does.</summary>
    public static readonly FindingRule NeedlessExponent = new("CW4123", FindingSeverity.Warning, "Size in a form that is not allowed here",
        "The exponent form may be used only for sizes the plain form cannot say.", "Take the size out of `header`; it is worked out.");

    /// <summary>A reserved byte or bit that is not zero.</summary>
    public static readonly FindingRule NotZero = new("CW4124", FindingSeverity.Warning, "Reserved bits not zero",
        "Loaders take a container with anything else there for damaged, and read less of it or something else.", "Take the field out of `header`.");

    /// <summary>ROMs are claimed that this cart does not have.</summary>
    public static readonly FindingRule FurtherRoms = new("CW4125", FindingSeverity.Warning, "Further ROMs not there",
        "Loaders look for them behind CHR.", "Take the field out, or add them to the exchange file yourself.");

    /// <summary>Nobody said how the nametables are wired.</summary>
    public static readonly FindingRule MirroringUnsaid = new("CW4126", FindingSeverity.Note, "Mirroring not stated",
        "On boards where it is wired, the solder jumper and the header must agree.", "State `mirroring`; where the mapper switches it, `mapper-controlled`.");

    /// <summary>Banks that had better hold the vectors too.</summary>
    public static readonly FindingRule StubAdvised = new("CW4127", FindingSeverity.Warning, "Power-on state fragile",
        "Tests disagree on which bank this mapper shows at power-on.", "Put the vectors and a short start routine at the end of every 32 KiB.");

    /// <summary>A mapper without a row.</summary>
    public static readonly FindingRule UnknownMapper = new("CW4128", FindingSeverity.Note, "Mapper not in the table",
        "Sizes, CHR and the place of the RESET vector are not checked.", "Check them against your board.");

    /// <summary>A size that no single chip has.</summary>
    public static readonly FindingRule OddSize = new("CW4129", FindingSeverity.Note, "Size is not a power of two",
        "No chip has this size; on a larger one the rest is filled by repeating.", "Nothing, if your board is made for it.");

    /// <summary>The console rewrites the PRG chip.</summary>
    public static readonly FindingRule SelfFlash = new("CW4130", FindingSeverity.Note, "PRG that the console rewrites",
        "The sectors that hold progress differ from the build by design.", "Keep them out of banks with code, and leave them out when you compare.");

    /// <summary>An image that ends before its header says.</summary>
    public static readonly FindingRule Truncated = new("CW4131", FindingSeverity.Error, "Image ends early",
        "The header claims more PRG and CHR than the file holds.", "Get a whole copy, or correct the sizes.");

    /// <summary>Bytes after everything the header claims.</summary>
    public static readonly FindingRule Trailing = new("CW4132", FindingSeverity.Warning, "Bytes after the image",
        "They are a part of CHR the header does not claim, or left over; they go to no chip.", "Correct the sizes, or cut them off.");

    /// <summary>A title after the image.</summary>
    public static readonly FindingRule TrailingTitle = new("CW4133", FindingSeverity.Note, "Title after the image",
        "Some old files end with one; it goes to no chip.", "Nothing.");

    /// <summary>A header whose last bytes cannot be trusted.</summary>
    public static readonly FindingRule Untrusted = new("CW4134", FindingSeverity.Warning, "Header of an old or damaged kind",
        "Its bytes 7 to 15 hold text or marks of no settled kind; read as they stand they give a wrong mapper.", "State the mapper, and build the image anew.");

    /// <summary>Values of NES 2.0 in a header without its mark.</summary>
    public static readonly FindingRule MarkMissing = new("CW4135", FindingSeverity.Warning, "Bytes of an iNES header that are rarely used",
        "They may be meant as NES 2.0, whose mark is missing; the header is read as iNES.", "Build the image anew with the container you mean.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NoReset, ResetBelow, SomeBanks, ResetUnsure, HandlerBelow, ContainerInside, ChrUnexpected, ChrMissing, Conflicts, Oversize,
        Trainer, NothingKept, Submapper, NeedlessExponent, NotZero, FurtherRoms, MirroringUnsaid, StubAdvised, UnknownMapper, OddSize,
        SelfFlash, Truncated, Trailing, TrailingTitle, Untrusted, MarkMissing,
    ];
}
