namespace Cartwright.Headers;

/// <summary>Computes a checksum of a whole region.</summary>
/// <param name="region">The region's bytes, whatever its checksum fields hold at the moment.</param>
/// <returns>The value to store, as the field's number.</returns>
public delegate ulong ChecksumFunction(ReadOnlySpan<byte> region);
