namespace Cartwright.ReadBacks;

/// <summary>How the contents came into the chip.</summary>
public enum WritingWorld
{
    /// <summary>A sound programmer wrote the chip before it met the board.</summary>
    WrittenElsewhere,

    /// <summary>The chip was written through the board, from erased cells.</summary>
    WrittenInPlace,

    /// <summary>The memory is RAM, written through the board: the last word stays.</summary>
    RamInPlace,
}
