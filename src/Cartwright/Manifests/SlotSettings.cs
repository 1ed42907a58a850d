using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>slots</c> says: several finished games in one image.</summary>
/// <param name="Games">The games, in the order of their slots.</param>
/// <param name="Directory">The block for a menu program; null when there is none.</param>
/// <param name="Switches">Lines that switches drive, a region each; empty when there are none.</param>
/// <param name="Place">Where the section stands.</param>
public sealed record SlotSettings(ImmutableArray<SlotGame> Games, SlotDirectory? Directory, ImmutableArray<SlotSwitch> Switches, SourcePlace Place);
