namespace Cartwright.Boards;

/// <summary>What enables a chip, whose enable is active low as that of every memory chip of the catalogue.</summary>
/// <param name="Line">The bus line that enables it; null where a range of addresses does.</param>
/// <param name="IsHigh">Whether the line is high when the chip is to answer.</param>
/// <param name="HasInverter">Whether an inverter stands before the enable.</param>
/// <param name="Start">First byte address of the range; null where a line enables it.</param>
/// <param name="End">Last byte address of the range.</param>
public sealed record SiteSelect(string? Line, bool IsHigh, bool HasInverter, long? Start, long? End)
{
    /// <summary>True when the enable would be high where the chip is to answer.</summary>
    public bool LacksInverter => Line is not null && IsHigh != HasInverter;
}
