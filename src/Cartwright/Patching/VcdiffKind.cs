namespace Cartwright.Patching;

/// <summary>What an instruction of VCDIFF does; the values are those of RFC 3284, section 5.4.</summary>
internal enum VcdiffKind : byte
{
    /// <summary>Nothing: the code has one instruction only.</summary>
    Noop = 0,

    /// <summary>Takes bytes from the data section.</summary>
    Add = 1,

    /// <summary>Repeats a byte of the data section.</summary>
    Run = 2,

    /// <summary>Copies from the segment, or from the window made so far.</summary>
    Copy = 3,
}
