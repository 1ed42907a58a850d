namespace Cartwright.Boards;

/// <summary>Which byte of a bus a chip drives.</summary>
public enum Lane
{
    /// <summary>The whole bus: both bytes of a 16-bit one, the only byte of an 8-bit one.</summary>
    Word,

    /// <summary>D0-D7.</summary>
    Low,

    /// <summary>D8-D15.</summary>
    High,

    /// <summary>D16-D23 of a 32-bit bus.</summary>
    Third,

    /// <summary>D24-D31 of a 32-bit bus.</summary>
    Fourth,
}
