namespace Cartwright.Saves;

/// <summary>A unit that a quantity may be stated in.</summary>
/// <param name="Symbol">Its symbol, letter case included: m is a thousandth, M a million.</param>
/// <param name="Factor">How many of the base unit one of it is.</param>
public readonly record struct ElectricalUnit(string Symbol, decimal Factor);
