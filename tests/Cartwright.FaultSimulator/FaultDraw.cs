using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;

namespace Cartwright.FaultSimulator;

/// <summary>Draws faults of a given kind for a chip image.</summary>
/// <param name="shape">The words of the chip.</param>
/// <param name="image">Its image, a power of two long.</param>
/// <param name="random">Where the choices come from.</param>
public sealed class FaultDraw(ChipShape shape, byte[] image, SmallRandom random)
{
    private readonly int lines = BitOperations.Log2((uint)(image.Length / shape.BytesPerWord));

    /// <summary>The kinds that are one wiring fault.</summary>
    public static ImmutableArray<string> SingleWiringKinds { get; } =
    [
        "data-stuck-low", "data-stuck-high", "data-shorted", "data-swapped", "data-inverted", "data-reversed", "data-address-bridged",
        "address-stuck-low", "address-stuck-high", "address-shorted", "address-swapped", "address-inverted",
    ];

    /// <summary>Any one wiring fault, lines as likely as they are many.</summary>
    public Fault SingleWiring() => Of(random.Of(SingleWiringKinds.AsSpan()));

    /// <summary>One fault of a kind.</summary>
    public Fault Of(string kind) => kind switch
    {
        "data-stuck-low" or "data-stuck-high" or "data-inverted" => Fault.Of(kind, Data()),
        "data-swapped" => Fault.Of(kind, Two(Data)),
        "data-shorted" => Fault.Of(kind, Two(Data)) with { Wins = random.Of("low", "high") },
        "data-reversed" => new Fault(kind) { Within = shape.Width == 16 && random.Coin() ? "byte" : "word" },
        "data-permuted" => new Fault(kind) { Map = [.. random.Shuffled(shape.Width)] },
        "data-open" => Open(Fault.Of(kind, Data()), Data, Address),
        "data-address-bridged" => Fault.Of(kind, Data(), Address()) with { Wins = random.Of("low", "high") },
        "address-stuck-low" or "address-stuck-high" or "address-inverted" or "address-dead-while-writing" => Fault.Of(kind, Address()),
        "address-swapped" => Fault.Of(kind, Two(Address)),
        "address-shorted" => Fault.Of(kind, Two(Address)) with { Wins = random.Of("low", "high") },
        "address-permuted" => new Fault(kind) { Map = [.. random.Shuffled(lines)] },
        "address-open" => Open(Fault.Of(kind, Address()), Address, Address),
        _ => OfContent(kind),
    };

    private Fault OfContent(string kind) => kind switch
    {
        "chip-too-small" => new Fault(kind) { Size = Part(), Holds = random.Of("mixed", "first", "last") },
        "lanes-exchanged" => new Fault(kind) { Order = OtherOrder(random.Of(2, 4)) },
        "banks-reordered" => Banked(kind, static (fault, order, _) => fault with { Order = order }),
        "bus-conflict" => Banked(kind, (fault, order, _) => fault with { Values = [.. order.Select((_, bank) => random.Below(order.Length))] }),
        "latch-dead" => Banked(kind, static (fault, _, bank) => fault with { Bank = bank }),
        "rotated" => new Fault(kind) { By = random.Between(1, image.Length - 1) },
        "prefix-left-in" => new Fault(kind) { Length = random.Of(16, 64, 128, 512), Prefix = [.. random.Bytes(16)] },
        "repeated" => new Fault(kind) { Period = Part() },
        "interleave-not-done" or "interleave-done-twice" => new Fault(kind) { Lanes = random.Of(2, 4), Unit = random.Of(1, 2) },
        "blank" => new Fault(kind) { Value = random.Of(0xFF, 0xFF, 0) },
        "bus-not-driven" => new Fault(kind) { Shows = random.Of("ones", "zeros", "address", "chance"), Shift = random.Below(Math.Max(1, lines - shape.Width)) },
        "not-erased" or "chips-exchanged" or "other-image" => new Fault(kind) { Image = [.. random.Bytes(image.Length)] },
        "under-programmed" => new Fault(kind) { Share = random.Of(0.001, 0.01, 0.05) },
        "cells-damaged" => new Fault(kind) { Share = random.Of(0.001, 0.01) },
        "stopped-early" => new Fault(kind) { At = random.Between(1, image.Length - 1) },
        "blocks-missing" => new Fault(kind) { Blocks = Blocks() },
        "sectors-unchanged" => Sectors(kind),
        "left-in-status-mode" => new Fault(kind) { Mode = random.Of("identify", "busy"), Table = [.. Enumerable.Range(0, random.Of(2, 4, 16)).Select(_ => random.Below(1 << shape.Width))] },
        "file-damaged-as-text" => new Fault(kind) { How = random.Of("cr-inserted", "cr-removed", "seven-bit", "cut-at-1a", "intel-hex", "s-record") },
        "read-too-early" => new Fault(kind) { Share = random.Of(1, 0.5, 0.1) },
        "random-noise" => new Fault(kind) { Rate = random.Of(0.001, 0.01) },
        "bounce" => new Fault(kind) { ReadsAs = random.Below(2), Rate = random.Of(0.01, 0.02) },
        "two-chips-enabled" => Region(kind) with { Image = [.. random.Bytes(image.Length)], Wins = random.Of("low", "high") },
        "not-selected-range" => Region(kind) with { Shows = random.Of("ones", "zeros", "address") },
        _ => new Fault(kind),
    };

    private Fault Open(Fault fault, params ReadOnlySpan<Func<string>> others)
    {
        var follows = random.Of("chance", "chance", random.Of(others)());
        return follows == fault.Lines[0] ? fault : fault with { Follows = follows, Run = random.Below(5) };
    }

    private Fault Banked(string kind, Func<Fault, ImmutableArray<int>, int, Fault> fill)
    {
        var banks = random.Of(2, 4, 8);
        return fill(new Fault(kind) { BankSize = image.Length / banks }, OtherOrder(banks), random.Below(banks));
    }

    private Fault Region(string kind)
    {
        var length = Part();
        return new Fault(kind) { Length = length, Start = random.Below(image.Length / length) * length };
    }

    private Fault Sectors(string kind)
    {
        var size = image.Length / random.Of(4, 8);
        return new Fault(kind) { SectorSize = size, Sectors = [random.Below(image.Length / size)], Image = [.. random.Bytes(image.Length)] };
    }

    private ImmutableArray<(int Start, int Length)> Blocks()
    {
        var unit = random.Of(64, 128);
        return [.. random.Shuffled(image.Length / unit / 2).Take(random.Between(2, 4)).Order().Select(block => (block * unit, unit))];
    }

    /// <summary>A half, a quarter or an eighth of the chip.</summary>
    private int Part() => image.Length >> random.Between(1, 3);

    private ImmutableArray<int> OtherOrder(int count)
    {
        var order = random.Shuffled(count);
        if (order.SequenceEqual(Enumerable.Range(0, count)))
            Array.Reverse(order);

        return [.. order];
    }

    private string Address() => "A" + random.Below(lines).ToString(CultureInfo.InvariantCulture);

    private string Data() => "D" + random.Below(shape.Width).ToString(CultureInfo.InvariantCulture);

    private static ImmutableArray<string> Two(Func<string> draw)
    {
        var first = draw();
        var second = draw();
        return first == second ? Two(draw) : [first, second];
    }
}
