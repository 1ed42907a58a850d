using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using static Cartwright.ReadBacks.LineOpKind;

namespace Cartwright.ReadBacks;

/// <summary>Every wiring fault of one cause, and their names.</summary>
internal static class LineFaults
{
    private const int NibbleLines = 4;

    /// <summary>Faults on address lines.</summary>
    /// <param name="lines">Address lines of the chip.</param>
    public static ImmutableArray<LineOp> Address(int lines) =>
    [
        .. Each(lines, Inverted, StuckLow, StuckHigh),
        .. Pairs(lines, Swapped, ShortedLow, ShortedHigh),
    ];

    /// <summary>Faults on data lines.</summary>
    /// <param name="width">Data lines of the chip.</param>
    /// <param name="addressLines">Address lines of the chip.</param>
    public static ImmutableArray<LineOp> Data(int width, int addressLines) =>
    [
        .. Each(width, StuckLow, StuckHigh, Inverted),
        .. Pairs(width, ShortedLow, ShortedHigh, Swapped),
        LineOp.Of(new LineMap([.. Enumerable.Range(0, width).Select(i => width - 1 - i)])),
        .. width == 8 ? [] : new[] { LineOp.Of(new LineMap([.. Enumerable.Range(0, width).Select(static i => i ^ 7)])) },
        LineOp.Of(new LineMap([.. Enumerable.Range(0, width).Select(i => (i + (width / 2)) % width)])),
        .. width == 8 ? [] : new[] { LineOp.Of(new LineMap([.. Enumerable.Range(0, width).Select(static i => i ^ NibbleLines)])) },
        .. from i in Enumerable.Range(0, width)
           from k in Enumerable.Range(0, addressLines)
           from kind in new[] { BridgedLow, BridgedHigh }
           select LineOp.Bridge(kind, i, k),
    ];

    /// <summary>Address lines that hang in the air and take the level of another, and three lines joined.</summary>
    public static ImmutableArray<LineOp> SeldomAddress(int lines) => [.. Followers(lines), .. Triples(lines)];

    /// <summary>Data lines that hang in the air and take the level of another, and three lines joined.</summary>
    public static ImmutableArray<LineOp> SeldomData(int width, int addressLines) =>
    [
        .. Followers(width),
        .. from i in Enumerable.Range(0, width)
           from k in Enumerable.Range(0, addressLines)
           select new LineOp(FollowsAddress, 1u << i, i, k),
        .. Triples(width),
    ];

    /// <summary>The name of a fault on address lines.</summary>
    public static Fault NameAddress(LineOp op) => op.Kind switch
    {
        StuckLow => On(FaultKinds.AddressStuckLow, 'A', op.Mask),
        StuckHigh => On(FaultKinds.AddressStuckHigh, 'A', op.Mask),
        Inverted => On(FaultKinds.AddressInverted, 'A', op.Mask),
        Swapped => On(FaultKinds.AddressSwapped, 'A', op.Mask),
        ShortedLow or ShortedHigh => On(FaultKinds.AddressShorted, 'A', op.Mask, Wins(op.Kind)),
        Follows => On(FaultKinds.AddressOpen, 'A', 1u << op.I, FaultParameter.Of("follows", Line('A', op.K))),
        Permuted => Permutation(FaultKinds.AddressPermuted, FaultKinds.AddressSwapped, 'A', op.Map!.To),
        _ => throw new InvalidOperationException($"{op.Kind} is not for address lines"),
    };

    /// <summary>The name of a fault on data lines.</summary>
    public static Fault NameData(LineOp op) => op.Kind switch
    {
        StuckLow => On(FaultKinds.DataStuckLow, 'D', op.Mask),
        StuckHigh => On(FaultKinds.DataStuckHigh, 'D', op.Mask),
        Inverted => On(FaultKinds.DataInverted, 'D', op.Mask),
        Swapped => On(FaultKinds.DataSwapped, 'D', op.Mask),
        ShortedLow or ShortedHigh => On(FaultKinds.DataShorted, 'D', op.Mask, Wins(op.Kind)),
        BridgedLow or BridgedHigh => Fault.On(FaultKinds.DataAddressBridged, [Line('D', op.I), Line('A', op.K)], Wins(op.Kind)),
        Follows => On(FaultKinds.DataOpen, 'D', 1u << op.I, FaultParameter.Of("follows", Line('D', op.K))),
        FollowsAddress => On(FaultKinds.DataOpen, 'D', 1u << op.I, FaultParameter.Of("follows", Line('A', op.K))),
        // The map of a fault counts from the bus: bus bit i is chip bit map[i].
        Permuted when IsReversed(op.Map!.To, op.Map.To.Length) => Fault.Of(FaultKinds.DataReversed, FaultParameter.Of("within", "word")),
        Permuted when IsReversed(op.Map!.To, 8) => Fault.Of(FaultKinds.DataReversed, FaultParameter.Of("within", "byte")),
        Permuted => Permutation(FaultKinds.DataPermuted, FaultKinds.DataSwapped, 'D', op.Map!.Inverse().To),
        _ => throw new InvalidOperationException($"{op.Kind} is not for data lines"),
    };

    /// <summary>The name of an open line that is pulled to the level at which this fault holds it; null for other faults.</summary>
    public static Fault? Pulled(Fault stuck) =>
        stuck.Kind == FaultKinds.AddressStuckLow ? Open(FaultKinds.AddressOpen, stuck, "low")
        : stuck.Kind == FaultKinds.AddressStuckHigh ? Open(FaultKinds.AddressOpen, stuck, "high")
        : stuck.Kind == FaultKinds.DataStuckLow ? Open(FaultKinds.DataOpen, stuck, "low")
        : stuck.Kind == FaultKinds.DataStuckHigh ? Open(FaultKinds.DataOpen, stuck, "high")
        : null;

    private static Fault Open(FaultKind kind, Fault stuck, string level) => Fault.On(kind, stuck.Lines, FaultParameter.Of("follows", level));

    public static string Line(char bus, int line) => string.Create(CultureInfo.InvariantCulture, $"{bus}{line}");

    public static ImmutableArray<string> Lines(char bus, uint mask) => [.. Enumerable.Range(0, 32).Where(line => (mask >> line & 1) != 0).Select(line => Line(bus, line))];

    private static Fault On(FaultKind kind, char bus, uint mask, params ImmutableArray<FaultParameter> parameters) => Fault.On(kind, Lines(bus, mask), parameters);

    private static FaultParameter Wins(LineOpKind kind) => FaultParameter.Of("wins", kind is ShortedLow or BridgedLow ? "low" : "high");

    private static Fault Permutation(FaultKind permuted, FaultKind swapped, char bus, ImmutableArray<int> map)
    {
        var moved = Enumerable.Range(0, map.Length).Where(k => map[k] != k).ToImmutableArray();
        return moved is [var i, var k] ? On(swapped, bus, (1u << i) | (1u << k))
            : Fault.On(permuted, [.. moved.Select(line => Line(bus, line))], FaultParameter.Of("map", map));
    }

    private static bool IsReversed(ImmutableArray<int> map, int group) =>
        Enumerable.Range(0, map.Length).All(k => map[k] == k - (k % group) + group - 1 - (k % group));

    private static IEnumerable<LineOp> Each(int lines, params LineOpKind[] kinds) =>
        from kind in kinds from k in Enumerable.Range(0, lines) select LineOp.Lines(kind, 1u << k);

    private static IEnumerable<LineOp> Pairs(int lines, params LineOpKind[] kinds) =>
        from kind in kinds
        from i in Enumerable.Range(0, lines)
        from k in Enumerable.Range(i + 1, lines - 1 - i)
        select LineOp.Pair(kind, i, k);

    private static IEnumerable<LineOp> Followers(int lines) =>
        from i in Enumerable.Range(0, lines) from k in Enumerable.Range(0, lines) where i != k select LineOp.Pair(Follows, i, k);

    private static IEnumerable<LineOp> Triples(int lines) =>
        from kind in new[] { ShortedLow, ShortedHigh }
        from a in Enumerable.Range(0, lines)
        from b in Enumerable.Range(a + 1, lines - 1 - a)
        from c in Enumerable.Range(b + 1, lines - 1 - b)
        select LineOp.Lines(kind, (1u << a) | (1u << b) | (1u << c));

    /// <summary>Whether two faults touch no line together, so that their order does not count.</summary>
    public static bool AreApart(LineOp first, LineOp second) => BitOperations.PopCount(first.Mask & second.Mask) == 0;
}
