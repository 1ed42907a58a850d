using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Snes;

/// <summary>What the bytes of a SNES cart can show to be wrong.</summary>
public static class SnesFindings
{
    /// <summary>A program still has the 512 bytes an old copier put in front.</summary>
    public static readonly FindingRule CopierPrefix = new("CW4150", FindingSeverity.Error, "Copier prefix left in a program",
        "Everything lies 512 bytes too high, so the console finds neither vectors nor code.", "Give the program `skip: 512`.");

    /// <summary>No program covers the reset vector.</summary>
    public static readonly FindingRule NoResetVector = new("CW4151", FindingSeverity.Error, "No reset vector",
        "The console starts at the address in $00:FFFC; here it would read fill.", "Let the program hold the vectors at $FFE4-$FFFF, $FFFC at the least.");

    /// <summary>The reset vector points below the ROM.</summary>
    public static readonly FindingRule ResetBelowRom = new("CW4152", FindingSeverity.Error, "Reset vector below $8000",
        "The console starts in bank $00, and the ROM is there from $8000 on only.", "Point the reset vector at code of bank $00, at $8000 or above.");

    /// <summary>The reset vector points where no program is.</summary>
    public static readonly FindingRule ResetOutsideProgram = new("CW4153", FindingSeverity.Error, "Reset vector outside every program",
        "The console would run fill bytes.", "Correct the reset vector, or the place of the program.");

    /// <summary>The first instruction is none a program begins with.</summary>
    public static readonly FindingRule ResetOpcode = new("CW4154", FindingSeverity.Warning, "Doubtful first instruction",
        "BRK, COP, STP or an erased byte at the start mostly means that the code is not where the vector points.", "Compare the reset vector with the program's map; if the byte is meant, nothing.");

    /// <summary>A handler below the ROM.</summary>
    public static readonly FindingRule HandlerBelowRom = new("CW4155", FindingSeverity.Note, "Interrupt vector below $8000",
        "No ROM is there: either the interrupt is not used, or its handler is copied to RAM first.", "Nothing, if that is meant.");

    /// <summary>The halves of an image above 4 MiB stand in the order of the processor's banks.</summary>
    public static readonly FindingRule HalvesSwapped = new("CW4156", FindingSeverity.Error, "Halves of the ROM swapped",
        "Above 4 MiB the first half of the ROM is banks $80-$FF; bank $00, with vectors and header, is in the second.", "Place the bytes of banks $00-$7D at offset 0x400000, or give the programs console addresses.");

    /// <summary>A header where another mapping has it.</summary>
    public static readonly FindingRule HeaderElsewhere = new("CW4157", FindingSeverity.Warning, "Header of another mapping",
        "On a board wired for another mapping the console finds neither vectors nor code.", "Set `mapping` to what the program is linked for.");

    /// <summary>The image looks interleaved.</summary>
    public static readonly FindingRule Interleaved = new("CW4158", FindingSeverity.Warning, "Program looks interleaved",
        "Old floppy loaders stored a HiROM image with all upper halves of its banks first; the code is at the wrong offsets then.", "Put the halves back: block n + k below block k for bank k of n.");

    /// <summary>The map mode does not go with the header's place.</summary>
    public static readonly FindingRule MapModeMismatch = new("CW4159", FindingSeverity.Warning, "Map mode does not go with the mapping",
        "The console does not read it, but loaders and readers go by it.", "Leave `mapMode` out, or choose the mapping it belongs to.");

    /// <summary>Chipset and save RAM contradict each other.</summary>
    public static readonly FindingRule ChipsetRam = new("CW4160", FindingSeverity.Warning, "Chipset and save RAM disagree",
        "Loaders and readers go by either, and a save may be lost.", "Leave `chipset` out, or state a `saveRam` that goes with it.");

    /// <summary>A code no list has.</summary>
    public static readonly FindingRule UndocumentedValue = new("CW4161", FindingSeverity.Note, "Value in no list",
        "Readers will show nothing useful for it.", "Nothing, if it is meant.");

    /// <summary>Extended fields that nothing makes count.</summary>
    public static readonly FindingRule ExtendedIgnored = new("CW4162", FindingSeverity.Warning, "Extended header does not count",
        "The fields at $FFB0-$FFBF are ignored unless the developer ID is $33.", "Leave `developerId` out, or state `extended`.");

    /// <summary>An extended header without its codes.</summary>
    public static readonly FindingRule ExtendedIncomplete = new("CW4163", FindingSeverity.Note, "Extended header without maker or game code",
        "The developer ID says that both are there.", "State `makerCode` and `gameCode`, or nothing.");

    /// <summary>The game code's last letter is another country's.</summary>
    public static readonly FindingRule GameCodeRegion = new("CW4164", FindingSeverity.Warning, "Game code and region disagree",
        "The last letter of the game code stands for the country too.", "Change the letter or `region`. The cart's lock chip must fit the console in any case.");

    /// <summary>The title is filled up with zeros.</summary>
    public static readonly FindingRule TitleZeros = new("CW4165", FindingSeverity.Note, "Title filled up with zeros",
        "The title is filled up with spaces by custom.", "Nothing; or state the title without its zeros.");

    /// <summary>The chips must be fast.</summary>
    public static readonly FindingRule FastParts = new("CW4166", FindingSeverity.Note, "Fast parts needed",
        "With chips of 200 ns the game crashes now and then.", "Fit chips of 120 ns or faster.");

    /// <summary>The size is no power of two.</summary>
    public static readonly FindingRule UnevenSize = new("CW4167", FindingSeverity.Note, "Size is no power of two",
        "The checksum counts the remainder as often as it takes to complete a power of two, so a larger chip must repeat it; filled with $FF it would have another checksum.",
        "Nothing; or state a power of two.");

    /// <summary>Bytes the console cannot reach.</summary>
    public static readonly FindingRule HiddenBytes = new("CW4168", FindingSeverity.Warning, "Bytes hidden by work RAM",
        "Banks $7E and $7F are always work RAM, whatever the ROM holds there.", "Move what is needed elsewhere.");

    /// <summary>Sources disagree on the sum.</summary>
    public static readonly FindingRule DisputedSum = new("CW4169", FindingSeverity.Note, "Checksum rule disputed for this chip",
        "For SPC7110 carts of 3 and 5 MiB one source has other sums.", "Nothing; `header.keep` with `checksum` and `complement` keeps a program's own.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        CopierPrefix, NoResetVector, ResetBelowRom, ResetOutsideProgram, ResetOpcode, HandlerBelowRom, HalvesSwapped, HeaderElsewhere, Interleaved, MapModeMismatch,
        ChipsetRam, UndocumentedValue, ExtendedIgnored, ExtendedIncomplete, GameCodeRegion, TitleZeros, FastParts, UnevenSize, HiddenBytes, DisputedSum,
    ];
}
