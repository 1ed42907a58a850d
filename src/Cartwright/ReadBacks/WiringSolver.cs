using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.ReadBacks;

/// <summary>
/// Finds a wiring in which every line may be anywhere, with up to two chip address lines and one chip data line stuck: by counts that no
/// permutation changes.
/// </summary>
internal sealed class WiringSolver
{
    private const int MostStuckAddress = 2;
    private const int MostStuckData = 2;
    private const int MostParts = 8;

    private readonly ProofCase _case;
    private readonly LineSearch _search;
    private readonly int _lines;
    private readonly int _width;

    public WiringSolver(ProofCase proofCase, LineSearch search)
    {
        _case = proofCase;
        _search = search;
        _lines = proofCase.Expected.AddressLines;
        _width = proofCase.Expected.Shape.Width;
    }

    /// <summary>Wirings that explain the samples; none, or one, or several where lines cannot be told apart.</summary>
    public IEnumerable<LineModel> Solve()
    {
        if (_case.Expected.Count != 1 << _lines || _case.World != WritingWorld.WrittenElsewhere)
        {
            return [];
        }

        var deadReader = DeadLines.Address(_case.Read, _lines);
        var (always, ever) = WordCompare.Bits(_case.Read);
        var deadData = (uint)((always | ~ever) & _case.Expected.Shape.Ones);
        if (deadReader.Length > MostStuckAddress || BitOperations.PopCount(deadData) > MostStuckData)
        {
            return [];
        }

        var read = LineCounts.Of(DeadLines.Part(_case.Read, Mask(deadReader), 0), _width, _lines - deadReader.Length);
        var found = Parts(deadReader.Length, read, deadData)
            .Select(part => Wire(part, deadReader, read, deadData, always))
            .Where(_search.Survives)
            .ToList();
        return found.Concat(found.Take(1).SelectMany(Neighbours).Where(_search.Survives));
    }

    private static uint Mask(IEnumerable<int> lines) => lines.Aggregate(0u, static (mask, line) => mask | (1u << line));

    // Parts of the image at which as many chip lines stand still as the read-back has dead ones, the best fit first.
    private IEnumerable<(uint Mask, uint Levels)> Parts(int dead, LineCounts read, uint deadData) =>
        Ones(dead)
            .Select(part => (part.Mask, part.Levels, Distance: DataDistance(part.Ones, read.Ones, deadData)))
            .OrderBy(static part => part.Distance)
            .Take(MostParts)
            .Select(static part => (part.Mask, part.Levels));

    private IEnumerable<(uint Mask, uint Levels, long[] Ones)> Ones(int dead)
    {
        var all = LineCounts.Of(_case.Expected.Words, _width, _lines);
        if (dead == 0)
        {
            yield return (0, 0, all.Ones);
            yield break;
        }

        for (var k = 0; k < _lines; k++)
        {
            _case.Cancel.ThrowIfCancellationRequested();
            var high = Column(all, k);
            if (dead == 1)
            {
                yield return (1u << k, 1u << k, high);
                yield return (1u << k, 0, Minus(all.Ones, high));
                continue;
            }

            var half = LineCounts.Of(DeadLines.Part(_case.Expected.Words, 1u << k, 1u << k), _width, _lines - 1);
            for (var l = 0; l < k; l++)
            {
                var (both, mask) = (Column(half, l), (1u << k) | (1u << l));
                yield return (mask, mask, both);
                yield return (mask, 1u << k, Minus(high, both));
                yield return (mask, 1u << l, Minus(Column(all, l), both));
                yield return (mask, 0, Minus(Minus(all.Ones, high), Minus(Column(all, l), both)));
            }
        }
    }

    private static long[] Column(LineCounts counts, int line) => [.. counts.Joint.Select(row => row[line])];

    private static long[] Minus(long[] left, long[] right) => [.. left.Zip(right, static (a, b) => a - b)];

    private static long DataDistance(long[] expected, long[] read, uint deadData)
    {
        var distance = 0L;
        for (var i = 0; i < read.Length; i++)
        {
            distance += (deadData >> i & 1) != 0 ? 0 : expected.Min(ones => Math.Abs(ones - read[i]));
        }

        return distance;
    }

    private LineModel Wire((uint Mask, uint Levels) part, ImmutableArray<int> deadReader, LineCounts read, uint deadData, ushort always)
    {
        var chipLines = Enumerable.Range(0, _lines).Where(line => (part.Mask >> line & 1) == 0).ToArray();
        var busLines = Enumerable.Range(0, _lines).Except(deadReader).ToArray();
        var expected = LineCounts.Of(DeadLines.Part(_case.Expected.Words, part.Mask, part.Levels), _width, chipLines.Length);
        var liveData = Enumerable.Range(0, _width).Where(i => (deadData >> i & 1) == 0).ToArray();
        var data = Match(liveData.Length, _width, (i, j) => RowDistance(read, liveData[i], expected, j));
        var address = Match(busLines.Length, chipLines.Length, (k, l) => ColumnDistance(read, k, expected, l, liveData, data));
        var stuckChip = Enumerable.Range(0, _width).Except(data).ToArray();
        var chipOfBus = Fill(_lines, busLines.Zip(address, (bus, l) => (bus, chipLines[l])), deadReader, Enumerable.Range(0, _lines).Except(chipLines));
        var deadBus = Enumerable.Range(0, _width).Except(liveData).ToArray();
        var busOfChip = Fill(_width, data.Zip(liveData), stuckChip, deadBus);
        return new LineModel([.. AddressOps(chipOfBus, part)], [.. DataOps(busOfChip, stuckChip, always)], _case.World);
    }

    // The order of lines that do not live is free: each goes straight where it can.
    private static ImmutableArray<int> Fill(int count, IEnumerable<(int From, int To)> known, IEnumerable<int> freeFrom, IEnumerable<int> freeTo)
    {
        var map = new int[count];
        foreach (var (from, to) in known)
        {
            map[from] = to;
        }

        var (froms, tos) = (freeFrom.ToList(), freeTo.ToList());
        foreach (var straight in froms.Intersect(tos).ToList())
        {
            map[straight] = straight;
            froms.Remove(straight);
            tos.Remove(straight);
        }

        foreach (var (from, to) in froms.Zip(tos))
        {
            map[from] = to;
        }

        return [.. map];
    }

    private static IEnumerable<LineOp> AddressOps(ImmutableArray<int> chipOfBus, (uint Mask, uint Levels) part)
    {
        if (!IsStraight(chipOfBus))
        {
            yield return LineOp.Of(new LineMap(chipOfBus));
        }

        for (var line = 0; line < chipOfBus.Length; line++)
        {
            if ((part.Mask >> line & 1) != 0)
            {
                yield return LineOp.Lines((part.Levels >> line & 1) != 0 ? LineOpKind.StuckHigh : LineOpKind.StuckLow, 1u << line);
            }
        }
    }

    private static IEnumerable<LineOp> DataOps(ImmutableArray<int> busOfChip, IEnumerable<int> stuckChip, ushort always)
    {
        foreach (var chip in stuckChip)
        {
            yield return LineOp.Lines((always >> busOfChip[chip] & 1) != 0 ? LineOpKind.StuckHigh : LineOpKind.StuckLow, 1u << chip);
        }

        if (!IsStraight(busOfChip))
        {
            yield return LineOp.Of(new LineMap(busOfChip));
        }
    }

    private static bool IsStraight(ImmutableArray<int> map) => map.SequenceEqual(Enumerable.Range(0, map.Length));

    // Each row takes the column that is nearest to it, the surest rows first.
    private static int[] Match(int rows, int columns, Func<int, int, long> distance)
    {
        var pairs = (from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select (row, column, Distance: distance(row, column))).ToArray();
        Array.Sort(pairs, static (left, right) => left.Distance.CompareTo(right.Distance) is not 0 and var order ? order : (left.row, left.column).CompareTo((right.row, right.column)));
        var chosen = new int[rows];
        Array.Fill(chosen, -1);
        var taken = new bool[columns];
        foreach (var (row, column, _) in pairs)
        {
            if (chosen[row] < 0 && !taken[column])
            {
                chosen[row] = column;
                taken[column] = true;
            }
        }

        return chosen;
    }

    // Where two data lines are one equally often, the counts by address line tell them apart in whatever order these are.
    private static long RowDistance(LineCounts read, int i, LineCounts expected, int j)
    {
        var (left, right) = (read.Joint[i].Order().ToArray(), expected.Joint[j].Order().ToArray());
        return (Math.Abs(read.Ones[i] - expected.Ones[j]) * left.Length) + left.Zip(right, static (a, b) => Math.Abs(a - b)).Sum();
    }

    private static long ColumnDistance(LineCounts read, int bus, LineCounts expected, int chip, int[] liveData, int[] data)
    {
        var distance = 0L;
        for (var i = 0; i < liveData.Length; i++)
        {
            distance += Math.Abs(read.Joint[liveData[i]][bus] - expected.Joint[data[i]][chip]);
        }

        return distance;
    }

    // Wirings that differ in one exchange: any that fits as well means that the image cannot tell.
    private IEnumerable<LineModel> Neighbours(LineModel model) =>
        [
            .. from i in Enumerable.Range(0, _lines)
               from k in Enumerable.Range(i + 1, _lines - 1 - i)
               select model with { Address = model.Address.Insert(0, LineOp.Pair(LineOpKind.Swapped, i, k)) },
            .. from i in Enumerable.Range(0, _width)
               from k in Enumerable.Range(i + 1, _width - 1 - i)
               select model with { Data = model.Data.Add(LineOp.Pair(LineOpKind.Swapped, i, k)) },
        ];
}
