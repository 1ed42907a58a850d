using Cartwright.FaultExperiments;
using Cartwright.FaultSimulator;
using Xunit;

namespace Cartwright.Tests.ReadBacks;

/// <summary>The finder against a simulator that shares no code with it: it names what was drawn, and never anything else.</summary>
public sealed class FaultFinderTests
{
    private const int Cases = 4;

    public static TheoryData<string> Rows => [.. Experiments.All.Select(static row => row.Name)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void What_was_drawn_is_named(string name) => Assert.All(Grades(name), grade => Assert.Equal(Grade.Right, grade));

    private static List<Grade> Grades(string name)
    {
        var experiment = Experiments.All.Single(row => row.Name == name);
        return [.. Enumerable.Range(1, Cases).Select(seed => Graded(experiment.Draw(new SmallRandom((ulong)(40_000 + seed)))))];
    }

    private static Grade Graded(Trial trial)
    {
        var reads = trial.Reads;
        return Judge.Of(trial, reads, Finder.Ask(trial, reads));
    }
}
