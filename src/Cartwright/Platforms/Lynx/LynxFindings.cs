using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Lynx;

/// <summary>What can be wrong with a Lynx ROM besides the container's fields.</summary>
public static class LynxFindings
{
    /// <summary>A program begins with a container.</summary>
    public static readonly FindingRule ContainerInside = new("CW4440", FindingSeverity.Error, "Container left in a program",
        "The 64 bytes belong to a file, not to a chip; with them every block lies at the wrong place.", "State `\"skip\": 64` for the program.");

    /// <summary>A program for RAM.</summary>
    public static readonly FindingRule RamProgram = new("CW4441", FindingSeverity.Error, "Program for RAM, not for a cartridge",
        "An object with BS93 in its head is loaded into RAM by a developer's loader; a cartridge begins with an encrypted boot header.",
        "Link the program for a cartridge, with a loader in front.");

    /// <summary>No boot header.</summary>
    public static readonly FindingRule NoBootHeader = new("CW4442", FindingSeverity.Error, "No boot header",
        "The console decrypts the start of the cartridge and runs what comes out; it is never made here, since the program must carry it.",
        "Place a program that begins with its encrypted boot header at offset 0.");

    /// <summary>An unusual number of blocks.</summary>
    public static readonly FindingRule FrameCount = new("CW4443", FindingSeverity.Warning, "Unusual start of the boot header",
        "The first byte is 0x100 less the number of encrypted blocks that follow, one to eight.", "See whether the program begins with its boot header, still encrypted.");

    /// <summary>The first frame is cut off.</summary>
    public static readonly FindingRule FrameCut = new("CW4444", FindingSeverity.Error, "Boot header cut off",
        "The console would decrypt fill.", "Place all of the boot header.");

    /// <summary>The first directory entry leads nowhere.</summary>
    public static readonly FindingRule EntryNowhere = new("CW4445", FindingSeverity.Warning, "First directory entry leads nowhere",
        "The loader takes its file from there.", "Correct the directory in the program's source.");

    /// <summary>The first directory entry does not fit the block size.</summary>
    public static readonly FindingRule OtherBlocks = new("CW4446", FindingSeverity.Warning, "Directory made for larger blocks",
        "A program is made for one block size, and the ROM's size decides which it gets; in other blocks nothing is where the directory says.",
        "State `header.blockSize` as the program was linked for; the ROM's size follows.");

    /// <summary>The first file is loaded beyond RAM.</summary>
    public static readonly FindingRule LoadsBeyond = new("CW4447", FindingSeverity.Warning, "First file does not fit into RAM",
        "RAM ends at $FFFF.", "Correct the directory in the program's source.");

    /// <summary>A second bank nothing switches to.</summary>
    public static readonly FindingRule BankNotSwitched = new("CW4448", FindingSeverity.Warning, "Second bank is not switched",
        "More than 512 KiB are two banks, switched by the line AUDIN.", "Leave `audin` out, or state it as true.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [ContainerInside, RamProgram, NoBootHeader, FrameCount, FrameCut, EntryNowhere, OtherBlocks, LoadsBeyond, BankNotSwitched];
}
