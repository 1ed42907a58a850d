using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.Ordering;

/// <summary>
/// Which line of one end meets which line of the other: a permutation, so that every line meets exactly one. For a chip on a
/// board, line <c>k</c> of the bus meets line <c>order[k]</c> of the chip.
/// </summary>
public sealed class LineOrder : IEquatable<LineOrder>
{
    /// <summary>The most lines an order can have: the bits of a value.</summary>
    public const int MostLines = 32;

    private readonly ImmutableArray<int> _targets;

    /// <summary>An order.</summary>
    /// <param name="targets">For each line, from 0, the line it meets: each of 0 to the number of lines − 1 once.</param>
    /// <exception cref="ArgumentException">A line meets none or two, or there are more than <see cref="MostLines"/>.</exception>
    public LineOrder(params ReadOnlySpan<int> targets)
    {
        if (!IsOrder(targets))
            throw new ArgumentException($"Not each of up to {MostLines} lines once.", nameof(targets));

        _targets = [.. targets];
        StraightBelow = CountStraight(targets);
    }

    /// <summary>Number of lines.</summary>
    public int Count => _targets.Length;

    /// <summary>How many lines, counted from line 0, meet the line of their own number.</summary>
    public int StraightBelow { get; }

    /// <summary>True when every line meets the line of its own number.</summary>
    public bool IsStraight => StraightBelow == Count;

    /// <summary>The line that a line meets.</summary>
    /// <param name="line">The line, from 0.</param>
    public int this[int line] => _targets[line];

    /// <summary>Every line to the line of its own number.</summary>
    /// <param name="count">Number of lines.</param>
    public static LineOrder Straight(int count) => new([.. Enumerable.Range(0, count)]);

    /// <summary>The lowest line to the highest, and so on: its own inverse.</summary>
    /// <param name="count">Number of lines.</param>
    public static LineOrder Reversed(int count) => new([.. Enumerable.Range(0, count).Reverse()]);

    /// <summary>Whether lines are a permutation.</summary>
    /// <param name="targets">For each line, from 0, the line it meets.</param>
    public static bool IsOrder(ReadOnlySpan<int> targets)
    {
        var met = 0UL;
        foreach (var target in targets)
        {
            if (target < 0 || target >= targets.Length)
                return false;

            met |= 1UL << target;
        }

        return targets.Length <= MostLines && BitOperations.PopCount(met) == targets.Length;
    }

    /// <summary>Two lines exchanged: each meets what the other met.</summary>
    /// <param name="first">A line.</param>
    /// <param name="second">Another, or the same.</param>
    public LineOrder Exchange(int first, int second)
    {
        int[] targets = [.. _targets];
        (targets[first], targets[second]) = (targets[second], targets[first]);
        return new(targets);
    }

    /// <summary>The way back.</summary>
    public LineOrder Inverse()
    {
        var sources = new int[Count];
        for (var line = 0; line < Count; line++)
            sources[_targets[line]] = line;

        return new(sources);
    }

    /// <summary>This order and then another: what two boards in a row do.</summary>
    /// <param name="next">The other, of as many lines.</param>
    /// <exception cref="ArgumentException">The other has another number of lines.</exception>
    public LineOrder Then(LineOrder next)
    {
        ArgumentNullException.ThrowIfNull(next);
        if (next.Count != Count)
            throw new ArgumentException($"{next.Count} lines cannot follow {Count}.", nameof(next));

        return new([.. _targets.Select(target => next[target])]);
    }

    /// <summary>The value at the other end: bit <c>k</c> becomes bit <c>order[k]</c>.</summary>
    /// <param name="value">Levels of the lines, bit 0 for line 0; bits beyond the lines are dropped.</param>
    public uint Map(uint value)
    {
        var mapped = 0u;
        for (var line = 0; line < Count; line++)
            mapped |= ((value >> line) & 1) << _targets[line];

        return mapped;
    }

    /// <inheritdoc/>
    public bool Equals(LineOrder? other) => other is not null && _targets.AsSpan().SequenceEqual(other._targets.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LineOrder);

    /// <inheritdoc/>
    public override int GetHashCode() => _targets.Aggregate(Count, HashCode.Combine);

    /// <summary>The lines met, from line 0 on, with blanks between.</summary>
    public override string ToString() => string.Join(' ', _targets);

    private static int CountStraight(ReadOnlySpan<int> targets)
    {
        var line = 0;
        while (line < targets.Length && targets[line] == line)
            line++;

        return line;
    }
}
