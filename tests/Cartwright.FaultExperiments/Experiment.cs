using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>One row of the table.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Bar">The share of right answers it asks for.</param>
/// <param name="Draw">Draws a trial.</param>
internal sealed record Experiment(string Name, double Bar, Func<SmallRandom, Trial> Draw);
