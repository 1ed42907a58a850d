using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>What a finder says of a trial.</summary>
/// <param name="Equal">Nothing is wrong.</param>
/// <param name="Faults">What it names; empty when it leaves the case open.</param>
/// <param name="Candidates">What it holds possible besides.</param>
/// <param name="Next">The observation that would decide.</param>
internal sealed record Answer(bool Equal, ImmutableArray<Fault> Faults, ImmutableArray<ImmutableArray<Fault>> Candidates, string? Next);
