namespace Cartwright.Roms;

/// <summary>At which end of a region larger than its programs the programs lie.</summary>
public enum RegionAlign
{
    /// <summary>At the start; offsets count from the region's first byte.</summary>
    Start,

    /// <summary>At the end, for consoles whose vectors or header lie there: the block of programs is moved up so that its end is the region's.</summary>
    End,
}
