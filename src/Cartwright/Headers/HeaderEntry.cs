using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>One header field as it stands in the ROM.</summary>
/// <param name="Field">Its row.</param>
/// <param name="Offset">Its first byte in the region or container.</param>
/// <param name="Raw">Its bytes.</param>
/// <param name="Text">Its value in words.</param>
/// <param name="Origin">Where the value came from.</param>
public sealed record HeaderEntry(HeaderField Field, int Offset, ImmutableArray<byte> Raw, string Text, EntryOrigin Origin);
