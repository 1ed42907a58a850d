namespace Cartwright.Images;

/// <summary>What an output file is.</summary>
public enum OutputKind
{
    /// <summary>The ROM in the platform's customary exchange form.</summary>
    Rom,

    /// <summary>The image of one chip.</summary>
    Chip,

    /// <summary>The record of the build.</summary>
    Record,
}
