using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Chips;

/// <summary>Everything there may be to say of a chip's answers about itself.</summary>
public static class CfiFindings
{
    /// <summary>The dump holds no query table.</summary>
    public static FindingRule NoQuery { get; } = new(
        "CW5550", Error, "No answer to the query",
        "A chip that answers the Common Flash Interface query shows the letters QRY at offset 0x10; one that does not shows its contents, or nothing.",
        "Write 0x98 to word address 0x55 (byte mode: 0xAA), read the first 256 words into a file of raw bytes, and leave the mode with 0xF0. Not every chip has the query.");

    /// <summary>The dump ends inside the table.</summary>
    public static FindingRule CutShort { get; } = new(
        "CW5551", Error, "Answer that ends too soon",
        "The sectors of the chip stand at the end of the table.",
        "Read the first 256 words of the chip in its query mode.");

    /// <summary>Size and sectors do not agree.</summary>
    public static FindingRule Implausible { get; } = new(
        "CW5552", Error, "Answer that cannot be",
        "Some old parts state a wrong size or number of regions, and a bad contact changes bytes; erasing by such a table would take the wrong bytes.",
        "Read the table again with the chip seated anew; if it stays so, take the sectors from the data sheet.");

    /// <summary>Nothing says at which end the small sectors are.</summary>
    public static FindingRule EndNotSaid { get; } = new(
        "CW5553", Note, "Top or bottom not said",
        "Tables of version 1.0 have no flag for it, and those of top-boot parts often list the sectors in the order of their bottom-boot sisters.",
        "Look at the letter T or B in the marking, or at the device code, and say `--boot top` or `--boot bottom`.");

    /// <summary>The sectors were turned round.</summary>
    public static FindingRule Turned { get; } = new(
        "CW5554", Note, "Sectors turned round",
        "Tables of top-boot parts often list the sectors in the order of their bottom-boot sisters.",
        "Compare the sectors with the data sheet before you erase single ones.");

    /// <summary>The command set's id is not known.</summary>
    public static FindingRule UnknownCommandSet { get; } = new(
        "CW5555", Note, "Command set not known",
        "Which commands write and erase the chip does not follow from its answer. Older parts of SST say 0x0701 (from memory).",
        "Identify the chip by its maker and device code: `cartwright parts identify`.");

    /// <summary>The words are no identity.</summary>
    public static FindingRule BadIdentity { get; } = new(
        "CW5560", Error, "Not an identity",
        "A chip answers with the code of its maker, perhaps behind continuation codes 7F, and then with its own code of one or three words.",
        "Write the codes in hexadecimal, as `BF B7`, `7F 1C 2249` or `01 227E 2210 2201`.");

    /// <summary>The answer looks like none.</summary>
    public static FindingRule NoIdentityMode { get; } = new(
        "CW5561", Warning, "Looks like no answer at all",
        "A chip that does not take the identity command shows its contents, and an empty socket or a chip without supply shows all ones or zeros.",
        "Check supply, contacts and the command addresses of this family; on an EPROM the identity needs 12 V at A9, in a programmer only, never on a board.");

    /// <summary>The maker's code has even parity.</summary>
    /// <remarks>JEP106: bit 7 of a code makes the number of ones odd.</remarks>
    public static FindingRule EvenParity { get; } = new(
        "CW5562", Note, "Maker's code without odd parity",
        "JEP106 codes have an odd number of ones; a few EPROMs answer with codes of their own, and a bad contact changes bits.",
        "Read the identity again with the chip seated anew.");

    /// <summary>No part answers so.</summary>
    public static FindingRule NoSuchIdentity { get; } = new(
        "CW5563", Note, "No part answers so",
        "The catalogue does not have every part, and not the codes of every part it has. Relabelled chips are common as well.",
        "Compare marking, identity and size with data sheets.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoQuery, CutShort, Implausible, EndNotSaid, Turned, UnknownCommandSet, BadIdentity, NoIdentityMode, EvenParity, NoSuchIdentity];
}
