namespace Cartwright.Inspection;

/// <summary>How the contents of chips make up one image.</summary>
public enum ChipJoin
{
    /// <summary>One chip behind the other; a single chip is the image.</summary>
    InSequence,

    /// <summary>A byte of each chip in turn: the lanes of a wide bus.</summary>
    BytesInTurn,

    /// <summary>A 16-bit word of each chip in turn.</summary>
    WordsInTurn,

    /// <summary>Pairs of chips with a byte of each in turn, one pair behind the other.</summary>
    PairsInSequence,
}
