namespace Cartwright.Manifests;

/// <summary>A check value that a game writes into its save.</summary>
/// <param name="Kind">How it is worked out.</param>
/// <param name="Value">Where it stands.</param>
/// <param name="Start">The first byte it is worked out from, from the start of the save or of its slot; its own bytes count as 0.</param>
/// <param name="Length">How many bytes; null for all that follow.</param>
public sealed record SaveCheckValue(SaveCheckKind Kind, SaveNumber Value, long Start, long? Length);
