using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Kinds that leave the same read-back.</summary>
/// <param name="Name">A short name.</param>
/// <param name="Kinds">The kinds that must all be told.</param>
/// <param name="Widths">Widths of chip it is true for.</param>
/// <param name="Fault">Draws one of them, for an image with so many address lines.</param>
internal sealed record LookAlikeRow(string Name, ImmutableArray<string> Kinds, ImmutableArray<int> Widths, Func<SmallRandom, TestImage, ImmutableArray<Fault>> Fault);
