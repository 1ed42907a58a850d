namespace Cartwright.Boards;

/// <summary>Which byte of a 16-bit bus a chip drives.</summary>
public enum Lane
{
    /// <summary>The whole bus: both bytes of a 16-bit one, the only byte of an 8-bit one.</summary>
    Word,

    /// <summary>D0-D7.</summary>
    Low,

    /// <summary>D8-D15.</summary>
    High,
}
