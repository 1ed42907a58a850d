using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>The table of look-alikes.</summary>
internal static class LookAlikeRows
{
    public static ImmutableArray<LookAlikeRow> All { get; } =
    [
        new("top-inverted", ["address-inverted", "halves-exchanged", "rotated", "banks-reordered"], [8, 16], static (random, image) => [random.Of(Line("address-inverted", Top(image)), new("halves-exchanged"))]),
        new("bytes-8", ["bytes-swapped", "lanes-exchanged", "address-inverted"], [8], static (random, _) => [random.Of(new("bytes-swapped"), Line("address-inverted", 0))]),
        new("bytes-16", ["bytes-swapped", "lanes-exchanged", "data-permuted"], [16], static (_, _) => [new("bytes-swapped")]),
        new("words", ["words-swapped", "lanes-exchanged", "address-inverted"], [8, 16], static (_, _) => [new("words-swapped")]),
        new("low-half", ["address-stuck-low", "repeated", "latch-dead", "bus-conflict", "chip-too-small"], [8, 16], static (random, image) => [random.Of(Line("address-stuck-low", Top(image)), new("repeated") { Period = image.Bytes.Length / 2 })]),
        new("high-half", ["address-stuck-high", "latch-dead", "chip-too-small"], [8, 16], static (_, image) => [Line("address-stuck-high", Top(image))]),
        new("mixed-halves", ["address-dead-while-writing", "chip-too-small"], [8, 16], static (_, image) => [Line("address-dead-while-writing", Top(image))]),
        new("bank-lines", ["address-swapped", "banks-reordered"], [8, 16], static (_, image) => [Fault.Of("address-swapped", Name(Top(image)), Name(Top(image) - 1))]),
        new("rotated-lines", ["interleave-not-done", "address-permuted"], [8], static (_, _) => [new("interleave-not-done")]),
        new("all-ones", ["blank", "bus-not-driven", "stopped-early"], [8, 16], static (random, _) => [random.Of(new Fault("blank"), new Fault("bus-not-driven"))]),
        new("block-of-ones", ["not-selected-range", "blocks-missing"], [8, 16], static (_, image) => [new("not-selected-range") { Start = image.Bytes.Length / 4, Length = image.Bytes.Length / 4 }]),
        new("bit-seven", ["file-damaged-as-text", "data-stuck-low"], [8], static (_, _) => [Fault.Of("data-stuck-low", "D7")]),
        new("constant-bit", ["data-stuck-high", "data-open"], [8, 16], static (random, image) => [new FaultDraw(image.Shape, image.Bytes, random).Of("data-stuck-high")]),
        new("word-before", ["read-too-early", "rotated"], [8, 16], static (_, _) => [new("read-too-early")]),
    ];

    public static Trial Draw(SmallRandom random, LookAlikeRow row)
    {
        while (true)
        {
            var image = Trials.Signature(random, 13, 17);
            if (row.Widths.Contains(image.Shape.Width))
                return Trials.Trial(random, image, row.Fault(random, image)) with { LookAlikes = row.Kinds };
        }
    }

    private static Fault Line(string kind, int line) => Fault.Of(kind, Name(line));

    private static string Name(int line) => FormattableString.Invariant($"A{line}");

    private static int Top(TestImage image) => int.Log2(image.Bytes.Length / image.Shape.BytesPerWord) - 1;
}
