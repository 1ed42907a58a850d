namespace Cartwright.Plans;

/// <summary>How a part is rewritten.</summary>
public enum WriteMethod
{
    /// <summary>Sectors are erased one by one; cells of an erased sector are programmed.</summary>
    Sectors,

    /// <summary>Pages are written whole; writing a page erases it.</summary>
    Pages,

    /// <summary>Bytes, words or pages are overwritten as they are, with no erase at all.</summary>
    InPlace,

    /// <summary>The whole chip is erased electrically.</summary>
    WholeChip,

    /// <summary>The whole chip is erased with ultraviolet light.</summary>
    Ultraviolet,

    /// <summary>Nothing is ever erased.</summary>
    Once,
}
