namespace Cartwright.Manifests;

/// <summary>The slots of a save.</summary>
/// <param name="Offset">Where the first begins.</param>
/// <param name="Size">Bytes of each; the next follows at once.</param>
/// <param name="Count">How many.</param>
/// <param name="Block">What each holds.</param>
/// <param name="Sequence">A number that grows with each write, which says which slot is the newest; null when not said.</param>
public sealed record SaveSlots(long Offset, long Size, int Count, SaveBlock Block, SaveNumber? Sequence);
