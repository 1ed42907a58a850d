namespace Cartwright.Headers;

/// <summary>What an existing image is known to hold in a field although it is not right, and what belongs there.</summary>
/// <param name="Seen">What such a value is, in words that complete "it holds".</param>
/// <param name="Right">The right text for the bytes a field holds; null where they are not of this kind.</param>
/// <param name="OnlyNamed">True where the value may be meant: it is put right only when the field is named.</param>
public sealed record FieldRepair(string Seen, FieldRepairFunction Right, bool OnlyNamed);
