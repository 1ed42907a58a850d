using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Sorts runs, settles their overlaps, checks their span and joins neighbours into segments.</summary>
/// <param name="store">The bytes the runs are pieces of.</param>
/// <param name="placeOf">Where in the file a byte of the store stands.</param>
/// <param name="log">Where overlaps and spans are reported.</param>
internal sealed class SegmentMerger(ReadOnlyMemory<byte> store, Func<int, SourcePlace> placeOf, ReaderLog log)
{
    // Ascending, none overlapping another.
    private readonly List<ProgramRun> _pieces = [];

    /// <summary>Makes the segments.</summary>
    /// <param name="runs">The runs in file order, each at least one byte long.</param>
    /// <param name="largestSpan">Most bytes from the lowest to the highest address.</param>
    /// <returns>Ascending segments with gaps between them; empty when an error was logged.</returns>
    public ImmutableArray<Segment> Merge(List<ProgramRun> runs, long largestSpan)
    {
        runs.Sort(static (a, b) => a.Address != b.Address ? a.Address.CompareTo(b.Address) : a.Start.CompareTo(b.Start));
        foreach (var run in runs) Lay(run);
        if (_pieces.Count > 0) SpanCheck.Run(_pieces, largestSpan, placeOf, log);
        return log.HasErrors ? [] : Join();
    }

    // Runs come in ascending order, so what a new run overlaps is covered without a gap up to the present end.
    private void Lay(ProgramRun run)
    {
        var covered = _pieces.Count == 0 ? 0 : (int)Math.Clamp(_pieces[^1].End - run.Address, 0, run.Length);
        if (covered > 0) Compare(run with { Length = covered });
        if (covered < run.Length) _pieces.Add(run.Skip(covered));
    }

    private void Compare(ProgramRun run)
    {
        var (first, other) = (run, FirstPieceAt(run.Address));
        while (run.Length > 0)
        {
            var piece = _pieces[other];
            var old = piece.Skip((int)(run.Address - piece.Address));
            var length = Math.Min(old.Length, run.Length);
            var same = Bytes(old, length).CommonPrefixLength(Bytes(run, length));
            if (same < length)
            {
                Differ(old.Skip(same), run.Skip(same));
                return;
            }

            run = run.Skip(length);
            other++;
        }

        Repeat(first);
    }

    private void Differ(ProgramRun old, ProgramRun run)
    {
        var (first, second) = InFileOrder(old, run);
        log.Add(
            ProgramFindings.OverlapDiffers,
            placeOf(second.Start),
            $"Address {ProgramWords.Address(run.Address)} gets 0x{Bytes(second, 1)[0]:X2} at {ProgramWords.Where(placeOf(second.Start))}, but 0x{Bytes(first, 1)[0]:X2} at {ProgramWords.Where(placeOf(first.Start))}.",
            "one value for each address");
    }

    private void Repeat(ProgramRun run)
    {
        var piece = _pieces[FirstPieceAt(run.Address)];
        var (first, second) = InFileOrder(piece.Skip((int)(run.Address - piece.Address)), run);
        log.Add(
            ProgramFindings.OverlapSame,
            placeOf(second.Start),
            $"Addresses {ProgramWords.Range(run.Address, run.End)} are given again at {ProgramWords.Where(placeOf(second.Start))}, with the bytes of {ProgramWords.Where(placeOf(first.Start))}.");
    }

    private static (ProgramRun First, ProgramRun Second) InFileOrder(ProgramRun a, ProgramRun b) => a.Start <= b.Start ? (a, b) : (b, a);

    private int FirstPieceAt(long address)
    {
        var (low, high) = (0, _pieces.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (_pieces[middle].Address <= address) low = middle;
            else high = middle - 1;
        }

        return low;
    }

    private ReadOnlySpan<byte> Bytes(ProgramRun run, int length) => store.Span.Slice(run.Start, length);

    private ImmutableArray<Segment> Join()
    {
        var segments = ImmutableArray.CreateBuilder<Segment>();
        for (var first = 0; first < _pieces.Count;)
        {
            var next = first + 1;
            while (next < _pieces.Count && _pieces[next].Address == _pieces[next - 1].End) next++;
            segments.Add(new Segment(_pieces[first].Address, Bytes(first, next), placeOf(_pieces[first].Start)));
            first = next;
        }

        return segments.DrainToImmutable();
    }

    // One piece stays a slice of the store; several are copied together once.
    private ReadOnlyMemory<byte> Bytes(int first, int next)
    {
        if (next == first + 1) return store.Slice(_pieces[first].Start, _pieces[first].Length);
        var start = _pieces[first].Address;
        var joined = GC.AllocateUninitializedArray<byte>(checked((int)(_pieces[next - 1].End - start)));
        for (var i = first; i < next; i++) Bytes(_pieces[i], _pieces[i].Length).CopyTo(joined.AsSpan((int)(_pieces[i].Address - start)));
        return joined;
    }
}
