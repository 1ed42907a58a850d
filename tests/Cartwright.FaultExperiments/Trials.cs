using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Draws the trials of each experiment.</summary>
internal static class Trials
{
    /// <summary>A signature image of 2^smallest to 2^largest bytes.</summary>
    public static TestImage Signature(SmallRandom random, int smallest, int largest)
    {
        var shape = Shape(random);
        return new TestImage(shape, SignatureSource.Make(1 << random.Between(smallest, largest), shape, (uint)random.Below(8)));
    }

    /// <summary>An ordinary program of 8 KiB to 512 KiB.</summary>
    public static TestImage Program(SmallRandom random) => new(Shape(random), new ProgramImage(random).Make(1 << random.Between(13, 19)));

    public static TestImage AnyImage(SmallRandom random) => random.Coin() ? Signature(random, 13, 19) : Program(random);

    /// <summary>Several wiring faults in one list.</summary>
    public static Trial Wiring(SmallRandom random, TestImage image, int count)
    {
        var draw = new FaultDraw(image.Shape, image.Bytes, random);
        return Trial(random, image, [.. Enumerable.Range(0, count).Select(_ => draw.SingleWiring())]);
    }

    /// <summary>Two wiring faults that both show and that no single one explains.</summary>
    public static Trial Pair(SmallRandom random)
    {
        while (true)
        {
            var trial = Wiring(random, Signature(random, 15, 17), 2);
            var read = trial.Reads[0];
            var single = trial.Faults.Select(fault => new Simulation(trial.Bench, trial.Image, fault).Read(new Reading(0)));
            if (single.All(other => !other.AsSpan().SequenceEqual(read)) && !read.AsSpan().SequenceEqual(trial.Image)
                && !OtherFaults.Explaining(trial.Bench.Shape, trial.Image, read).Any())
            {
                return trial;
            }
        }
    }

    /// <summary>Three wiring faults that all show: where the image hides one, it is right to name the others.</summary>
    public static Trial Three(SmallRandom random)
    {
        while (true)
        {
            var trial = Wiring(random, Program(random), 3) with { MustStayOpen = true };
            var read = trial.Reads[0];
            if (trial.Faults.All(fault => !(trial with { Faults = trial.Faults.Remove(fault) }).Reads[0].AsSpan().SequenceEqual(read)))
                return trial;
        }
    }

    /// <summary>All lines, or some, in an unknown order, and up to two stuck address lines and one stuck data line.</summary>
    public static Trial Permutation(SmallRandom random)
    {
        var image = Signature(random, 15, 19);
        var draw = new FaultDraw(image.Shape, image.Bytes, random);
        var faults = new List<Fault>();
        var which = random.Below(3);
        if (which != 1)
            faults.Add(draw.Of("address-permuted"));

        faults.AddRange(Enumerable.Range(0, random.Below(3)).Select(_ => draw.Of(random.Of("address-stuck-low", "address-stuck-high"))));
        if (random.Coin())
            faults.Add(draw.Of(random.Of("data-stuck-low", "data-stuck-high")));

        if (which != 0)
            faults.Add(draw.Of("data-permuted"));

        return Trial(random, image, [.. faults]);
    }

    public static Trial Noisy(SmallRandom random, Trial trial) => trial with
    {
        Faults = trial.Faults.Add(new Fault("random-noise") { Rate = 0.001 }),
        Readings = FaultExperiments.Trial.ThreeReads,
        FewWords = 16,
        SeeksOthers = true,
        Bench = trial.Bench with { Seed = random.Next() },
    };

    public static Trial InPlace(Trial trial, bool ram = false) => trial with { Bench = trial.Bench with { WrittenInPlace = true, Ram = ram } };

    /// <summary>One fault of a kind on any image, with what the finder has to know.</summary>
    public static Trial OfKind(SmallRandom random, string kind)
    {
        var image = AnyImage(random);
        if (kind == "wrong-half" && HasEqualHalves(image.Bytes))
            return OfKind(random, kind);

        var draw = new FaultDraw(image.Shape, image.Bytes, random);
        var fault = kind switch
        {
            "data-shorted-either" => draw.Of("data-shorted") with { Wins = "either" },
            "contact" => Contact(draw.SingleWiring()),
            "not-erased" or "two-chips-enabled" or "chips-exchanged" or "other-image" or "sectors-unchanged" => draw.Of(kind) with { Image = [.. new ProgramImage(random).Make(image.Bytes.Length)] },
            _ => draw.Of(kind),
        };
        return Trial(random, image, [fault]) with { Known = [kind], Readings = Readings(kind) };
    }

    /// <summary>Nothing wrong, or a fault that the image hides.</summary>
    public static Trial Hidden(SmallRandom random)
    {
        var image = AnyImage(random);
        if (random.Coin())
            return Trial(random, image, []);

        var half = image.Bytes[..(image.Bytes.Length / 2)];
        var lines = int.Log2(image.Bytes.Length / image.Shape.BytesPerWord);
        var top = FormattableString.Invariant($"A{lines - 1}");
        return Trial(random, image with { Bytes = [.. half, .. half] }, [Fault.Of(random.Of("address-stuck-low", "address-stuck-high", "address-inverted"), top)]);
    }

    public static Trial HeavyNoise(SmallRandom random)
    {
        var trial = Wiring(random, AnyImage(random), random.Below(2));
        return trial with { Faults = trial.Faults.Add(new Fault("random-noise") { Rate = 0.1 }), MustStayOpen = true, Bench = trial.Bench with { Seed = random.Next() } };
    }

    public static Trial UnknownContent(SmallRandom random)
    {
        var trial = OfKind(random, random.Of("not-erased", "two-chips-enabled", "chips-exchanged", "other-image", "sectors-unchanged"));
        return trial with { Known = [], MustStayOpen = true };
    }

    public static Trial Trial(SmallRandom random, TestImage image, ImmutableArray<Fault> faults) =>
        new(new Bench(image.Shape, random.Next()), image.Bytes, faults, FaultExperiments.Trial.OneRead);

    private static bool HasEqualHalves(byte[] image) => image.AsSpan(0, image.Length / 2).SequenceEqual(image.AsSpan(image.Length / 2));

    private static Fault Contact(Fault inner) => new("contact") { Lines = inner.Lines, Inner = inner, BadInsertions = [1] };

    private static ImmutableArray<Reading> Readings(string kind) => kind switch
    {
        "contact" => [new(0, 0), new(1, 0), new(2, 1), new(3, 1)],
        "cells-damaged" => [new(0), new(1), new(2, 1, 1), new(3, 1, 1)],
        _ => FaultExperiments.Trial.ThreeReads,
    };

    private static ChipShape Shape(SmallRandom random) => random.Coin() ? new ChipShape(8) : new ChipShape(16, random.Coin());
}
