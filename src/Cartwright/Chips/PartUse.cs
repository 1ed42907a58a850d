namespace Cartwright.Chips;

/// <summary>What a board asks of a part that carries a program.</summary>
/// <param name="BusVolts">Level of the bus and of the supply it brings, in volts.</param>
/// <param name="Width">Data lines of the site: 8 or 16.</param>
/// <param name="NeededBytes">Bytes the chip must hold.</param>
/// <param name="Site">Name of the site, for example <c>U1</c>.</param>
public sealed record PartUse(double BusVolts, int Width, long NeededBytes, string Site);
