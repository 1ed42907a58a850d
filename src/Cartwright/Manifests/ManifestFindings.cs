using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>What can be wrong with a manifest, or with a board described in the same form.</summary>
public static class ManifestFindings
{
    /// <summary>The manifest file is not there.</summary>
    public static readonly FindingRule Missing = new("CW1001", FindingSeverity.Error, "Manifest not found",
        "Nothing can be built without a manifest.", "Name the cart.json to build, or run the command in its folder.");

    /// <summary>The manifest is not valid JSON.</summary>
    public static readonly FindingRule BadJson = new("CW1002", FindingSeverity.Error, "Manifest is not valid JSON",
        "A file that cannot be read whole is not read in part.", "Mend the text at the place given; comments and trailing commas are allowed.");

    /// <summary>A key nobody knows.</summary>
    public static readonly FindingRule UnknownKey = new("CW1003", FindingSeverity.Error, "Unknown key",
        "A mistyped key would be ignored in silence, and the cart built without it.", "Correct the key, or take it out.");

    /// <summary>A key that must be there is not.</summary>
    public static readonly FindingRule MissingKey = new("CW1004", FindingSeverity.Error, "Missing key",
        "The build cannot guess what this key says.", "Add the key.");

    /// <summary>A value of the wrong kind: text for a number, a list for a text.</summary>
    public static readonly FindingRule WrongType = new("CW1005", FindingSeverity.Error, "Wrong kind of value",
        "The value cannot mean what the key asks for.", "Write the value in one of the forms named.");

    /// <summary>A value outside the ones that are allowed.</summary>
    public static readonly FindingRule BadValue = new("CW1006", FindingSeverity.Error, "Value not allowed",
        "The value is of the right kind but not one the key can take.", "Use one of the values named.");

    /// <summary>The same key twice in one object.</summary>
    public static readonly FindingRule DuplicateKey = new("CW1007", FindingSeverity.Error, "Key given twice",
        "Only one of the two can count, and which one is a matter of luck.", "Keep one of them.");

    /// <summary>No platform of this name.</summary>
    public static readonly FindingRule UnknownPlatform = new("CW1008", FindingSeverity.Error, "Unknown platform",
        "The platform decides sizes, header and checksums.", "Run `cartwright platforms` for the list.");

    /// <summary>A name that cannot be a file name on the memory cards readers use.</summary>
    public static readonly FindingRule UnsafeName = new("CW1009", FindingSeverity.Error, "Name not safe for a file",
        "The name becomes part of every output file, and readers and programmers take their files from FAT-formatted cards.",
        "Use letters, digits, hyphens and underscores.");

    /// <summary>An output path that leads out of the manifest's folder.</summary>
    public static readonly FindingRule PathOutside = new("CW1010", FindingSeverity.Error, "Path leads outside",
        "A build writes nothing outside its own folder, so that a manifest from somebody else is safe to build.",
        "Name a folder below the manifest, or choose another place with --out.");

    /// <summary>The manifest is larger than any manifest needs to be.</summary>
    public static readonly FindingRule TooLarge = new("CW1011", FindingSeverity.Error, "Manifest too large",
        "A manifest is a page of text; a file of megabytes is something else.", "Name the cart.json, not a program or an image.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        Missing, BadJson, UnknownKey, MissingKey, WrongType, BadValue, DuplicateKey, UnknownPlatform, UnsafeName, PathOutside, TooLarge,
    ];
}
