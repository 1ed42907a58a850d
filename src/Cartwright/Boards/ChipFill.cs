namespace Cartwright.Boards;

/// <summary>How a chip larger than its slice is filled.</summary>
public enum ChipFill
{
    /// <summary>The slice at the chip's start, the erased value behind it: upper address pins tied low.</summary>
    Erased,

    /// <summary>The slice repeated through the whole chip: right whatever the upper address pins do.</summary>
    Repeat,

    /// <summary>The slice at the chip's end, the erased value in front of it: upper address pins tied high.</summary>
    Top,
}
