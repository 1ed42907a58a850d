using System.Collections.Immutable;

namespace Cartwright.FaultExperiments;

/// <summary>The table of experiments.</summary>
internal static class Experiments
{
    private static readonly ImmutableArray<string> Reordering =
    [
        "bytes-swapped", "words-swapped", "lanes-exchanged", "halves-exchanged", "wrong-half", "banks-reordered", "rotated", "prefix-left-in", "repeated",
        "interleave-not-done", "interleave-done-twice",
    ];

    private static readonly ImmutableArray<string> Content =
    [
        "address-dead-while-writing", "chip-too-small", "blank", "not-erased", "under-programmed", "cells-damaged", "stopped-early", "blocks-missing",
        "sectors-unchanged", "left-in-status-mode", "chips-exchanged", "other-image", "file-damaged-as-text", "read-too-early", "random-noise", "bounce",
    ];

    private static readonly ImmutableArray<string> Board =
        ["bus-not-driven", "two-chips-enabled", "bus-conflict", "latch-dead", "not-selected-range", "data-open", "address-open", "data-shorted-either", "contact"];

    public static ImmutableArray<Experiment> All { get; } =
    [
        new("single", 1, static random => Trials.Wiring(random, Trials.Signature(random, 11, 22), 1)),
        new("pair", 0.99, Trials.Pair),
        new("permutation", 0.99, Trials.Permutation),
        new("program", 0.99, static random => Trials.Wiring(random, Trials.Program(random), 1) with { SeeksOthers = true }),
        new("program-noise", 0.98, static random => Trials.Noisy(random, Trials.Wiring(random, Trials.Program(random), 1))),
        new("in-place", 0.98, static random => Trials.InPlace(Trials.Wiring(random, Trials.AnyImage(random), 1))),
        new("in-place-ram", 0.98, static random => Trials.InPlace(Trials.Wiring(random, Trials.AnyImage(random), 1), ram: true)),
        .. Reordering.Concat(Content).Concat(Board).Select(static kind => new Experiment(kind, 0.97, random => Trials.OfKind(random, kind))),
        new("equal", 1, static random => Trials.Hidden(random)),
        .. LookAlikeRows.All.Select(static row => new Experiment("look-alike:" + row.Name, 1, random => LookAlikeRows.Draw(random, row))),
        new("three-faults", 1, Trials.Three),
        new("heavy-noise", 1, Trials.HeavyNoise),
        new("unknown-content", 1, Trials.UnknownContent),
    ];
}
