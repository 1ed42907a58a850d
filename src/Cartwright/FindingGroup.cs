using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright;

/// <summary>The rules of one stage of a build, or of one platform.</summary>
/// <param name="Title">What they are about, as a heading has it.</param>
/// <param name="Rules">The rules in order of code.</param>
public sealed record FindingGroup(string Title, ImmutableArray<FindingRule> Rules);
