namespace Cartwright.Chips;

/// <summary>How often a part can be rewritten (FRAM: accessed).</summary>
/// <param name="Text">The figure as the table gives it; blank when unknown.</param>
/// <param name="FewestCycles">The lowest figure among grades, in cycles; null when unknown or unlimited.</param>
/// <param name="IsUnlimited">True for memories that do not wear.</param>
public readonly record struct PartEndurance(string Text, long? FewestCycles, bool IsUnlimited);
