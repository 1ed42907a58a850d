using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Saves;

/// <summary>What a save's own structure may have to say.</summary>
public static class StructureFindings
{
    /// <summary>The manifest describes none.</summary>
    public static FindingRule NotDescribed { get; } = new(
        "CW9550", Error, "Structure of the save not described",
        "Only the game's author knows where its signature, version and check value stand.",
        "Describe them in the manifest under `save`.");

    /// <summary>Nothing saved yet.</summary>
    public static FindingRule New { get; } = new(
        "CW9551", Note, "New save",
        "A memory that was never written holds one value throughout, and a game must take it for a new save; a memory that was not read holds the same.",
        "Read again if the game has shown progress; clean the contacts first.");

    /// <summary>The save is too short.</summary>
    public static FindingRule Outside { get; } = new(
        "CW9552", Error, "Part outside the save",
        "The save was cut short, or the manifest describes another one.",
        "Compare the size of the file with that of the memory, and the offsets in the manifest with the game's source.");

    /// <summary>The signature is not there.</summary>
    public static FindingRule NoSignature { get; } = new(
        "CW9553", Error, "No signature",
        "The game takes such a save for none and begins anew. Where it writes the signature last, the write was stopped before.",
        "Make sure the save is this game's and in the order the game sees; `cartwright save convert` changes layouts.");

    /// <summary>The check value is wrong.</summary>
    public static FindingRule HalfWritten { get; } = new(
        "CW9554", Error, "Half written or damaged",
        "The power went while the game was writing, or a few bytes were read wrongly; the rest is often intact.",
        "Read again and compare. Hold reset while switching off on boards without a supervisor, and take the older slot or generation.");

    /// <summary>A version the game does not know.</summary>
    public static FindingRule UnknownVersion { get; } = new(
        "CW9555", Warning, "Save of a later version",
        "A newer release of the game wrote it; an older one may read it wrongly and write over it.",
        "Use the release that wrote it, or convert the save.");

    /// <summary>No slot is whole.</summary>
    public static FindingRule NoWholeSlot { get; } = new(
        "CW9556", Error, "No whole slot",
        "There is nothing the game could go on from.",
        "Write back an earlier generation: `cartwright save keep DIR --list` shows what there is.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NotDescribed, New, Outside, NoSignature, HalfWritten, UnknownVersion, NoWholeSlot];
}
