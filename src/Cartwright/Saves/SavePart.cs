namespace Cartwright.Saves;

/// <summary>A save, or a slot of it, as it was found.</summary>
/// <param name="Name">The save, or slot 0, slot 1 and so on.</param>
/// <param name="Offset">Its first byte.</param>
/// <param name="Size">Its bytes.</param>
/// <param name="State">How it was found.</param>
/// <param name="Version">Its version; null when none is described or it cannot be read.</param>
/// <param name="Sequence">Its sequence number; null when none is described or it cannot be read.</param>
public sealed record SavePart(string Name, long Offset, long Size, SavePartState State, uint? Version, uint? Sequence);
