using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Address lines of a region that switches or jumpers drive in place of the console.</summary>
/// <param name="Region">The region; null for the platform's first.</param>
/// <param name="Lines">The line of each switch, counted as bits of a byte address of the region.</param>
/// <param name="Place">Where the item stands.</param>
public sealed record SlotSwitch(ManifestValue? Region, ImmutableArray<int> Lines, SourcePlace Place);
