using System.Collections.Immutable;

namespace Cartwright.Boards;

/// <summary>Several regions laid into one, as a chip that serves all of them holds them. Sites name it as they name a region.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Parts">What lies where; bytes between the parts stay erased.</param>
public sealed record RegionJoin(string Name, ImmutableArray<JoinPart> Parts);
