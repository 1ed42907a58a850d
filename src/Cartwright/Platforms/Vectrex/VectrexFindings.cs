using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Vectrex;

/// <summary>What the checks of this console may have to say.</summary>
public static class VectrexFindings
{
    /// <summary>No mark.</summary>
    public static readonly FindingRule NoMark = new("CW4560", FindingSeverity.Error, "No copyright mark",
        "The BIOS starts a cartridge that begins with `g GCE`, and its built-in game for any other.", "Put the program's header at the start of the ROM, or free its place and state `header.year`.");

    /// <summary>The mark is not followed by a year and 80.</summary>
    public static readonly FindingRule CopyrightForm = new("CW4561", FindingSeverity.Warning, "Copyright not in the usual form",
        "The text is `g GCE`, a space, four digits and the byte 80; without the 80 the BIOS takes what follows for text. The rest of this header was not checked.",
        "State `header.year`, or mend the text in the program's source.");

    /// <summary>The music is nowhere.</summary>
    public static readonly FindingRule NoMusic = new("CW4562", FindingSeverity.Warning, "Title music leads nowhere",
        "The BIOS plays what it finds at that address while it shows the title.", "State `header.music` as a tune of the BIOS such as $FD0D, or as an address of the program.");

    /// <summary>The header does not end.</summary>
    public static readonly FindingRule NoEnd = new("CW4563", FindingSeverity.Warning, "Header texts have no end",
        "Each text ends with 80, and a 00 behind the last one ends the header: the program begins right behind it.", "State `header.titles`, or mend the texts in the program's source.");

    /// <summary>Letters the BIOS cannot draw.</summary>
    public static readonly FindingRule NoLetter = new("CW4564", FindingSeverity.Warning, "Letters the console cannot draw",
        "The BIOS draws the characters 20 to 5F: upper case only.", "Write the title in upper case.");

    /// <summary>No program behind the header.</summary>
    public static readonly FindingRule NoCode = new("CW4565", FindingSeverity.Error, "No program behind the header",
        "The console runs the very next byte behind the 00 that ends the header, and no program put anything there.", "Link the program to begin right behind the header, or shorten the header to end right before it.");

    /// <summary>Blank bytes behind the header.</summary>
    public static readonly FindingRule BlankCode = new("CW4566", FindingSeverity.Warning, "Blank bytes behind the header",
        "The console runs the very next byte behind the 00 that ends the header.", "Let the program begin there.");

    /// <summary>The other half has no header.</summary>
    public static readonly FindingRule OtherHalf = new("CW4567", FindingSeverity.Note, "Only one half has a header",
        "Which half a board shows at power-on is known from memory only; one of the other polarity starts the built-in game.",
        "Try it on your board; or put a header and a jump into the other half as well.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoMark, CopyrightForm, NoMusic, NoEnd, NoLetter, NoCode, BlankCode, OtherHalf];
}
