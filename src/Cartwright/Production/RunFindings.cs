using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Production;

/// <summary>What can be said of a production run.</summary>
public static class RunFindings
{
    /// <summary>The manifest describes no run.</summary>
    public static readonly FindingRule NoFields = new("CW5801", Error, "No fields for a run",
        "Without a field that differs, every unit is the same cart.", "Describe the fields under `run`, or use `cartwright build`.");

    /// <summary>A field lies where it cannot.</summary>
    public static readonly FindingRule FieldOutside = new("CW5802", Error, "Field outside the ROM",
        "Its bytes would be on no chip.", "Correct its region, offset or width.");

    /// <summary>Two fields, or a field and the header, share bytes.</summary>
    public static readonly FindingRule FieldsOverlap = new("CW5803", Error, "Fields overlap",
        "The later one would be written over the earlier.", "Move one of them.");

    /// <summary>A field's value does not fit.</summary>
    public static readonly FindingRule DoesNotFit = new("CW5804", Error, "Value does not fit its field",
        "A cut serial number would not be unique, and a cut text not what was meant.", "Make the field wider, or the value shorter.");

    /// <summary>A check digit that does not go with the digits.</summary>
    public static readonly FindingRule BadCheckDigit = new("CW5805", Error, "Check digit does not go with the digits",
        "It could not catch an error.", "Choose another check digit, or another alphabet.");

    /// <summary>A serial number is given already.</summary>
    public static readonly FindingRule SerialGiven = new("CW5806", Error, "Serial number given already",
        "Two units of one number cannot be told apart.", "Go on behind the last number of the ledger.");

    /// <summary>The ledger cannot be read.</summary>
    public static readonly FindingRule BadLedger = new("CW5807", Error, "Ledger cannot be read",
        "Without it nobody knows which numbers are given.", "Restore the ledger from a copy; it is never overwritten while it is unreadable.");

    /// <summary>The table of units is wrong.</summary>
    public static readonly FindingRule BadTable = new("CW5808", Error, "Table of units is wrong",
        "A unit would get the wrong number or text.", "Correct the table.");

    /// <summary>A label names something there is not.</summary>
    public static readonly FindingRule BadLabel = new("CW5809", Error, "Label names nothing",
        "The braces would be printed as they are.", "Name a field, or title, revision or boardRevision.");

    /// <summary>A program's bytes are where a field goes.</summary>
    public static readonly FindingRule OverProgram = new("CW5810", Note, "Field over bytes of a program",
        "That is usual, where the program leaves room for it.", "Nothing, if the program leaves room there.");

    /// <summary>The units asked for are none.</summary>
    public static readonly FindingRule NoUnits = new("CW5811", Error, "No units",
        "There is nothing to make.", "Say how many with --units, or give a table with --table.");

    /// <summary>Two fields of one name.</summary>
    public static readonly FindingRule SameName = new("CW5812", Error, "Two fields of one name",
        "A label and the ledger could not tell them apart.", "Give each its own name.");

    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoFields, FieldOutside, FieldsOverlap, DoesNotFit, BadCheckDigit, SerialGiven, BadLedger, BadTable, BadLabel, OverProgram, NoUnits, SameName];
}
