using System.Collections.Immutable;
using Cartwright.Chips;

namespace Cartwright.Images;

/// <summary>A part that could be fitted at a site, and what that takes.</summary>
/// <param name="Part">The part.</param>
/// <param name="Needs">What it takes, a clause each; none where it fits as it is.</param>
public sealed record PartFit(Part Part, ImmutableArray<string> Needs);
