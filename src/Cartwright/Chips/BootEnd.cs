namespace Cartwright.Chips;

/// <summary>The end of a chip at which its small sectors are.</summary>
public enum BootEnd
{
    /// <summary>At address 0.</summary>
    Bottom,

    /// <summary>At the highest address.</summary>
    Top,
}
