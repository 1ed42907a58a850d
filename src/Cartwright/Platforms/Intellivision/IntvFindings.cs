using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Intellivision;

/// <summary>What the checks of this console may have to say.</summary>
public static class IntvFindings
{
    /// <summary>A start where no program is.</summary>
    public static readonly FindingRule StartNowhere = new("CW4570", FindingSeverity.Warning, "Start address leads to no program",
        "The EXEC jumps there, unless the program has taken over before, or the board has ROM at other addresses than the usual ones.", "State `header.start` as an address of the program; it counts words, not bytes.");

    /// <summary>A start inside the block or the title.</summary>
    public static readonly FindingRule StartInHeader = new("CW4571", FindingSeverity.Warning, "Start address inside the header",
        "The program starts behind the title; the processor would run the header's own words.", "State `header.start` as an address behind the title.");

    /// <summary>A pointer's words hold more than a byte.</summary>
    public static readonly FindingRule PointerForm = new("CW4572", FindingSeverity.Warning, "Pointer not in two bytes of a word each",
        "A pointer is two words, its low byte in the first and its high byte in the second.", "State the field as an address, or mend it in the program's source.");

    /// <summary>A pointer to where no program is.</summary>
    public static readonly FindingRule PointerNowhere = new("CW4573", FindingSeverity.Warning, "Pointer leads to no program",
        "The EXEC takes what it finds there for data.", "State the field as an address of the program; pointers without data lead to the zero at $500D, the list for picture RAM to $500F.");

    /// <summary>No title where its pointer leads.</summary>
    public static readonly FindingRule NoTitle = new("CW4574", FindingSeverity.Warning, "No title where the header says",
        "The EXEC shows the year and the text it finds there, up to a word of 0.", "State `header.year` and the cart's title and leave `titleAddress` out, or mend them in the program's source.");

    /// <summary>A year nobody would expect.</summary>
    public static readonly FindingRule YearOdd = new("CW4575", FindingSeverity.Note, "Unusual year",
        "The word before the title is the year less 1900; programs that recognise images expect 1970 to 2099.", "State `header.year`.");

    /// <summary>The program's words have their bytes exchanged.</summary>
    public static readonly FindingRule SwappedProgram = new("CW4576", FindingSeverity.Error, "Program is byte-swapped",
        "The high byte of each word comes first; this program has the low one first.", "Exchange the bytes of each pair first: `objcopy -I binary -O binary --reverse-bytes=2 FILE`.");

    /// <summary>The program is still in its container.</summary>
    public static readonly FindingRule ContainerProgram = new("CW4577", FindingSeverity.Error, "Program is a transfer container",
        "Marks and checks stand between the words, and would go into the ROM with them.", "Use the words alone, as the assembler gives them.");

    /// <summary>The program needs all 16 lines.</summary>
    public static readonly FindingRule WideWords = new("CW4578", FindingSeverity.Note, "Words of more than 10 bits",
        "Most ROMs of this console have 10 data lines; this one needs a board with all 16.", "Nothing, on the boards described here.");

    /// <summary>The program was read with lines left open.</summary>
    public static readonly FindingRule OpenLines = new("CW4579", FindingSeverity.Warning, "Upper six bits of all words are set",
        "A ROM of 10 bits reads so when the upper lines are left open.", "Mask each word with 03FF.");

    /// <summary>The programs end in the middle of a word.</summary>
    public static readonly FindingRule HalfWord = new("CW4580", FindingSeverity.Note, "Program of odd length",
        "The bus is 16 bits wide; a fill byte completes the last word.", "Nothing, unless the program was cut off.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [StartNowhere, StartInHeader, PointerForm, PointerNowhere, NoTitle, YearOdd, SwappedProgram, ContainerProgram, WideWords, OpenLines, HalfWord];
}
