using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Headers;

/// <summary>What can be wrong with header fields and checksums.</summary>
public static class HeaderFindings
{
    /// <summary>A header key no table of the platform has.</summary>
    public static readonly FindingRule UnknownField = new("CW4001", FindingSeverity.Error, "Unknown header field",
        "A mistyped field would be ignored in silence.", "Run `cartwright platforms NAME` for the fields of the platform.");

    /// <summary>A field without which there is no header.</summary>
    public static readonly FindingRule MissingField = new("CW4002", FindingSeverity.Error, "Missing header field",
        "The field cannot be worked out, and the cart cannot be built without it.", "Add the field to `header`.");

    /// <summary>A value the field cannot hold.</summary>
    public static readonly FindingRule BadValue = new("CW4003", FindingSeverity.Error, "Header value not possible",
        "The field has a fixed length and set of values.", "Write a value the field can hold.");

    /// <summary>A stated value that differs from what is worked out.</summary>
    public static readonly FindingRule StatedWrong = new("CW4004", FindingSeverity.Error, "Stated value is not the true one",
        "The value follows from the ROM; the two cannot both be right.", "Take the key out, and the true value is written.");

    /// <summary>The program's header bytes differ from the manifest's, and nobody said which win.</summary>
    public static readonly FindingRule Clash = new("CW4005", FindingSeverity.Error, "Program and manifest disagree about the header",
        "One of the two would be lost in silence; and where the bytes are code, writing a header over them breaks the game.",
        "Set `header.keep` to true to keep the program's bytes or to false to write the manifest's; if the bytes are code, move the program.");

    /// <summary>A worked-out value was written over different bytes of the program.</summary>
    public static readonly FindingRule WrittenOver = new("CW4006", FindingSeverity.Note, "Program's value written over",
        "Templates commonly hold a placeholder here.", "Nothing, unless these bytes are code: then move the program.");

    /// <summary>The program's bytes were kept, and they are not what would be right.</summary>
    public static readonly FindingRule KeptWrong = new("CW4007", FindingSeverity.Warning, "Kept value differs from the true one",
        "Loaders and readers go by this value.", "Mend it in the program's source, or take it out of `header.keep`.");

    /// <summary>The program's bytes were kept although the manifest states another value.</summary>
    public static readonly FindingRule KeptOther = new("CW4008", FindingSeverity.Note, "Program's value kept",
        "`header.keep` says the program's bytes win.", "Nothing, if that is what you want.");

    /// <summary>A header does not fit into its region.</summary>
    public static readonly FindingRule NoRoom = new("CW4009", FindingSeverity.Error, "No room for the header",
        "The header has a fixed place, and the ROM ends before it.", "Choose a larger size, or another mapping.");

    /// <summary>A stated field that this header does not have, as other fields decide.</summary>
    public static readonly FindingRule NotHere = new("CW4010", FindingSeverity.Error, "Field not in this header",
        "The value would be ignored in silence.", "Take the field out, or state the field it depends on.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [UnknownField, MissingField, BadValue, StatedWrong, Clash, WrittenOver, KeptWrong, KeptOther, NoRoom, NotHere];
}
