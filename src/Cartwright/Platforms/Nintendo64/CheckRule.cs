namespace Cartwright.Platforms.Nintendo64;

/// <summary>How a boot code makes the two check words of what it summed.</summary>
public enum CheckRule
{
    /// <summary>By exclusive or.</summary>
    Exclusive,

    /// <summary>By exclusive or, with words of the boot code itself mixed in.</summary>
    Window,

    /// <summary>By addition.</summary>
    Sum,

    /// <summary>By multiplication and addition.</summary>
    Product,
}
