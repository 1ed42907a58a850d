namespace Cartwright.Patching;

/// <summary>The head of one window of a VCDIFF patch. Source: RFC 3284, section 4.2; its Adler-32 is an extension in general use.</summary>
/// <param name="At">Offset of the window.</param>
/// <param name="IsFromResult">True when the segment is a part of the result made so far, false when it is one of the base.</param>
/// <param name="SegmentAt">Its first byte.</param>
/// <param name="SegmentSize">Its bytes; 0 for none.</param>
/// <param name="Size">Bytes the window makes.</param>
/// <param name="Adler">Adler-32 of what it makes; null when it does not say.</param>
/// <param name="DataAt">Offset of the data section, which ends where the next begins.</param>
/// <param name="InstructionsAt">Offset of the instruction section.</param>
/// <param name="AddressesAt">Offset of the address section.</param>
/// <param name="End">Offset of what follows the window.</param>
internal readonly record struct VcdiffWindow(
    int At,
    bool IsFromResult,
    int SegmentAt,
    int SegmentSize,
    int Size,
    uint? Adler,
    int DataAt,
    int InstructionsAt,
    int AddressesAt,
    int End);
