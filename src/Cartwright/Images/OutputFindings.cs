using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Images;

/// <summary>What can go wrong when a build's files are put in place.</summary>
public static class OutputFindings
{
    /// <summary>The output folder cannot be made or written to.</summary>
    public static readonly FindingRule NotWritable = new("CW6001", FindingSeverity.Error, "Output folder not writable",
        "Nothing can be put there.", "Choose another folder, or change its permissions.");

    /// <summary>Writing failed on the way.</summary>
    public static readonly FindingRule WriteFailed = new("CW6002", FindingSeverity.Error, "Writing failed",
        "The disk may be full. The earlier output is as it was.", "Make room and build again.");

    /// <summary>Another build is writing into the folder.</summary>
    public static readonly FindingRule Busy = new("CW6003", FindingSeverity.Error, "Another build is at work here",
        "Two builds into one folder would mix their files.", "Wait for the other one, or choose another folder.");

    /// <summary>An output file would replace a program file.</summary>
    public static readonly FindingRule WouldReplaceInput = new("CW6004", FindingSeverity.Error, "Output would replace an input",
        "Inputs are never written to.", "Choose another output folder or another name.");

    /// <summary>Two outputs of one name on a card where letter case does not count.</summary>
    public static readonly FindingRule SameName = new("CW6005", FindingSeverity.Error, "Two outputs of one name",
        "One would replace the other.", "Rename a site, or choose fewer formats.");

    /// <summary>An earlier build was killed while it put its files in place.</summary>
    public static readonly FindingRule Recovered = new("CW6006", FindingSeverity.Warning, "Earlier output restored",
        "A build was stopped while it put its files in place; the files of the build before it were put back.", "Nothing; this build goes on from there.");

    /// <summary>The exchange file is to end where the ROM still has something.</summary>
    public static readonly FindingRule CutTooShort = new("CW6007", FindingSeverity.Error, "Exchange file would lose bytes",
        "Only fill may be missing from it, and only where the ROM is all there is in the file.", "Take `romLength` out, or make it longer.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NotWritable, WriteFailed, Busy, WouldReplaceInput, SameName, Recovered, CutTooShort];
}
