using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Programs;

public static partial class ProgramFindings
{
    /// <summary>Line is not a record.</summary>
    public static FindingRule RecordMark { get; } = new(
        "CW2020",
        FindingSeverity.Error,
        "Line is not a record",
        "Text between records may be a lost or damaged record.",
        "Write the file anew with the assembler or linker; send no listing, colours or messages into it.");

    /// <summary>Not a hex digit.</summary>
    public static FindingRule RecordDigit { get; } = new(
        "CW2021",
        FindingSeverity.Error,
        "Not a hex digit",
        "The line is damaged, or text was added to it.",
        "Write the file anew, and transfer it without conversion.");

    /// <summary>Wrong number of digits.</summary>
    public static FindingRule RecordDigitCount { get; } = new(
        "CW2022",
        FindingSeverity.Error,
        "Wrong number of digits",
        "A record consists of whole bytes; the line was cut or joined.",
        "Write the file anew.");

    /// <summary>Count does not match the line.</summary>
    public static FindingRule RecordCount { get; } = new(
        "CW2023",
        FindingSeverity.Error,
        "Count does not match the line",
        "The record was cut short or joined with another.",
        "Write the file anew; look for a full disk or a broken transfer.");

    /// <summary>Record checksum wrong.</summary>
    public static FindingRule RecordChecksum { get; } = new(
        "CW2024",
        FindingSeverity.Error,
        "Record checksum wrong",
        "At least one digit of the record is not what was written.",
        "Write the file anew; a record changed by hand needs a new checksum.");

    /// <summary>Unknown record type.</summary>
    public static FindingRule RecordType { get; } = new(
        "CW2025",
        FindingSeverity.Error,
        "Unknown record type",
        "What the record would have placed is lost.",
        "Have the file written in the plain form of the format.");

    /// <summary>Wrong length for the record type.</summary>
    public static FindingRule RecordTypeLength { get; } = new(
        "CW2026",
        FindingSeverity.Error,
        "Wrong length for the record type",
        "The checksum fits, but the writer did not keep to the format.",
        "Have the file written by another tool, for example GNU objcopy.");

    /// <summary>Offset in a record that has none.</summary>
    public static FindingRule RecordOffsetUnused { get; } = new(
        "CW2027",
        FindingSeverity.Warning,
        "Offset in a record that has none",
        "Readers ignore it; whoever wrote it may have meant something by it.",
        "Write 0000 there.");

    /// <summary>Record runs past the last address.</summary>
    public static FindingRule RecordPastEnd { get; } = new(
        "CW2028",
        FindingSeverity.Error,
        "Record runs past the last address",
        "Where the rest belongs is not defined.",
        "Have the file written with wider addresses.");

    /// <summary>Record wraps round.</summary>
    public static FindingRule RecordWraps { get; } = new(
        "CW2029",
        FindingSeverity.Warning,
        "Record wraps round",
        "Readers disagree about where its last bytes belong.",
        "Have records split at 64 KiB edges.");

    /// <summary>End record missing.</summary>
    public static FindingRule EndMissing { get; } = new(
        "CW2030",
        FindingSeverity.Error,
        "End record missing",
        "A file without an end record was cut short.",
        "Write the file anew; look for a full disk or a broken transfer.");

    /// <summary>End record missing.</summary>
    public static FindingRule TerminatorMissing { get; } = new(
        "CW2031",
        FindingSeverity.Warning,
        "End record missing",
        "Many tools omit it, but a file cut short looks the same.",
        "Check that the last line is the program's last one.");

    /// <summary>Text after the end record.</summary>
    public static FindingRule TextAfterEnd { get; } = new(
        "CW2032",
        FindingSeverity.Error,
        "Text after the end record",
        "Readers stop at the end record: a second file joined on would be lost.",
        "Give the files one by one, or join them with a tool that knows the format.");

    /// <summary>Two start addresses.</summary>
    public static FindingRule StartTwice { get; } = new(
        "CW2033",
        FindingSeverity.Warning,
        "Two start addresses",
        "The last one was kept.",
        "Let one start record stand.");

    /// <summary>Line skipped.</summary>
    public static FindingRule LineSkipped { get; } = new(
        "CW2034",
        FindingSeverity.Warning,
        "Line skipped",
        "Text between records may be a lost or damaged record.",
        "Remove the text from the file.");

    /// <summary>No valid record.</summary>
    public static FindingRule NoRecord { get; } = new(
        "CW2035",
        FindingSeverity.Error,
        "No valid record",
        "The file is something else under this name.",
        "Check that the path names the program, or correct its format.");

    /// <summary>Records are missing.</summary>
    public static FindingRule RecordTally { get; } = new(
        "CW2036",
        FindingSeverity.Error,
        "Records are missing",
        "The file itself says how many it had when it was written.",
        "Write the file anew.");

    /// <summary>Reserved record type.</summary>
    public static FindingRule RecordReserved { get; } = new(
        "CW2037",
        FindingSeverity.Warning,
        "Reserved record type",
        "No meaning was ever given to it.",
        "Have the file written without it.");

    // Rows about Intel HEX and S-record files.
    private static ImmutableArray<FindingRule> Records =>
    [
        RecordMark,
        RecordDigit,
        RecordDigitCount,
        RecordCount,
        RecordChecksum,
        RecordType,
        RecordTypeLength,
        RecordOffsetUnused,
        RecordPastEnd,
        RecordWraps,
        EndMissing,
        TerminatorMissing,
        TextAfterEnd,
        StartTwice,
        LineSkipped,
        NoRecord,
        RecordTally,
        RecordReserved,
    ];
}
