using System.Collections.Immutable;
using Cartwright.Images;
using Cartwright.Roms;

namespace Cartwright.Slots;

/// <summary>What the games of a multi-game image add to a build.</summary>
/// <param name="Segments">The programs, the games and the directory, at their places.</param>
/// <param name="Inputs">The games' files.</param>
/// <param name="Plan">Where everything lies.</param>
internal sealed record SlotBuild(ImmutableArray<PlacedSegment> Segments, ImmutableArray<BuildInput> Inputs, SlotPlan Plan);
