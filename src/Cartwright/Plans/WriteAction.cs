namespace Cartwright.Plans;

/// <summary>What becomes of one sector, page or chip.</summary>
public enum WriteAction
{
    /// <summary>It holds what it is to hold.</summary>
    Keep,

    /// <summary>No bit has to rise: cells are programmed on top of what is there.</summary>
    Program,

    /// <summary>It is erased, and cells that are not to stay erased are programmed.</summary>
    Erase,

    /// <summary>It is overwritten; no erase of its own is needed.</summary>
    Rewrite,
}
