using Cartwright.FaultExperiments;
using Cartwright.FaultSimulator;
using Xunit;

namespace Cartwright.Tests.ReadBacks;

/// <summary>The finder against a simulator that shares no code with it: it names what was drawn, and never anything else.</summary>
public sealed class FaultFinderTests
{
    private const int Cases = 4;

    // Rows of the experiments that are not named yet: the finder must leave them open, and nothing more is asked of it.
    private static readonly HashSet<string> Unfinished = new(StringComparer.Ordinal)
    {
        "program-noise", "under-programmed", "cells-damaged", "left-in-status-mode", "file-damaged-as-text", "read-too-early", "random-noise", "bounce", "bus-conflict",
        "data-open", "address-open", "data-shorted-either", "contact", "look-alike:rotated-lines", "look-alike:constant-bit",
    };

    public static TheoryData<string> Finished => [.. Experiments.All.Select(row => row.Name).Where(name => !Unfinished.Contains(name))];

    public static TheoryData<string> Open => [.. Unfinished.Where(name => name != "bus-conflict")];

    [Theory]
    [MemberData(nameof(Finished))]
    public void What_was_drawn_is_named(string name) => Assert.All(Grades(name), grade => Assert.Equal(Grade.Right, grade));

    [Theory]
    [MemberData(nameof(Open))]
    public void What_cannot_be_named_yet_is_left_open(string name) => Assert.All(Grades(name), grade => Assert.NotEqual(Grade.Wrong, grade));

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
