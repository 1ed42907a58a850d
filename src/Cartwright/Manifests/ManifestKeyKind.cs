namespace Cartwright.Manifests;

/// <summary>What a key's value looks like.</summary>
public enum ManifestKeyKind
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>The path of a file, relative to the manifest.</summary>
    Path,

    /// <summary>A size in bytes, in any of the forms of <see cref="ByteSize"/>.</summary>
    Size,

    /// <summary>A whole number, decimal or hexadecimal.</summary>
    Number,

    /// <summary>A number with a fraction.</summary>
    Fraction,

    /// <summary>An address of the console, with or without a bank.</summary>
    Address,

    /// <summary>One byte.</summary>
    Byte,

    /// <summary>True or false.</summary>
    Truth,

    /// <summary>One of the words of the row.</summary>
    Choice,
}
