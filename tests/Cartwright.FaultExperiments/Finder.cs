using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.ReadBacks;
using Fault = Cartwright.FaultSimulator.Fault;

namespace Cartwright.FaultExperiments;

/// <summary>Asks Cartwright's finder, and puts what it says into the simulator's words.</summary>
internal static class Finder
{
    public static Answer Ask(Trial trial, ImmutableArray<byte[]> reads)
    {
        var shape = trial.Bench.Shape;
        var request = new ProofRequest(
            trial.Image,
            new WordShape(shape.Width, shape.HighByteFirst),
            [.. reads.Zip(trial.Readings, static (bytes, reading) => new ReadBack(bytes, reading.Insertion, reading.Programming))])
        {
            World = !trial.Bench.WrittenInPlace ? WritingWorld.WrittenElsewhere : trial.Bench.Ram ? WritingWorld.RamInPlace : WritingWorld.WrittenInPlace,
            OldContent = trial.KnownImage("not-erased", "sectors-unchanged"),
            OtherSites = Named("U2", trial.KnownImage("chips-exchanged")),
            Releases = Named("release-1", trial.KnownImage("other-image")),
            OtherChips = Named("other-chip", trial.KnownImage("two-chips-enabled")),
        };
        var verdict = FaultFinder.Find(request);
        return new Answer(verdict.Equal, List(trial, verdict.Faults), [.. verdict.Candidates.Select(list => List(trial, list))], verdict.Next);
    }

    private static ImmutableArray<NamedImage> Named(string name, byte[]? image) => image is null ? [] : [new NamedImage(name, image)];

    private static ImmutableArray<Fault> List(Trial trial, ImmutableArray<ReadBacks.Fault> faults) => [.. faults.Select(fault => Translated(trial, fault))];

    private static Fault Translated(Trial trial, ReadBacks.Fault fault)
    {
        var result = new Fault(fault.Kind.Name) { Lines = fault.Lines };
        foreach (var parameter in fault.Parameters)
        {
            using var value = JsonDocument.Parse(parameter.Json);
            result = FaultParameters.With(result, parameter.Name, value.RootElement);
        }

        return trial.Faults.FirstOrDefault(drawn => drawn.Kind == result.Kind && !drawn.Image.IsEmpty) is { } same ? result with { Image = same.Image } : result;
    }
}
