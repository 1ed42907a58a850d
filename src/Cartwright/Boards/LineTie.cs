namespace Cartwright.Boards;

/// <summary>What an address line of a chip meets where the bus does not drive it.</summary>
public enum LineTie
{
    /// <summary>Ground: the line reads 0.</summary>
    Low,

    /// <summary>The supply: the line reads 1.</summary>
    High,

    /// <summary>Nothing: the line reads whatever leaks into it.</summary>
    Open,
}
