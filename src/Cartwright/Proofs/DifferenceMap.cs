using System.Collections.Immutable;
using Cartwright.Chips;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>Where read-backs differ from what a chip should hold. Words beyond the shorter of the two are not compared.</summary>
/// <param name="WordCount">Words compared.</param>
/// <param name="WrongWords">Words that are wrong in at least one read.</param>
/// <param name="First">Address of the first of them, in words; -1 where there is none.</param>
public sealed record DifferenceMap(int WordCount, int WrongWords, int First)
{
    private const int Parts = 16;

    /// <summary>What the chip should hold at <see cref="First"/>.</summary>
    public int FirstExpected { get; init; }

    /// <summary>What the first read that is wrong there shows.</summary>
    public int FirstRead { get; init; }

    /// <summary>The banks, or sixteenths where no bank size is known.</summary>
    public ImmutableArray<DifferenceRow> Banks { get; init; } = [];

    /// <summary>The erase sectors; empty where they are not known.</summary>
    public ImmutableArray<DifferenceRow> Sectors { get; init; } = [];

    /// <summary>The data lines, in order.</summary>
    public ImmutableArray<LineDifference> DataLines { get; init; } = [];

    /// <summary>Words whose byte of D0 to D7 is wrong.</summary>
    public int WrongLowBytes { get; init; }

    /// <summary>Words whose byte of D8 to D15 is wrong.</summary>
    public int WrongHighBytes { get; init; }

    /// <summary>Compares.</summary>
    /// <param name="subject">What the chip should hold.</param>
    /// <param name="reads">The read-backs.</param>
    public static DifferenceMap Of(ProofSubject subject, ImmutableArray<ReadBack> reads)
    {
        var length = Math.Min(subject.Expected.Length, reads.Min(static read => read.Bytes.Length));
        var expected = subject.Expected.AsMemory(0, length - (length % subject.Shape.Bytes));
        var counter = new DifferenceCounter(expected, subject.Shape);
        foreach (var read in reads)
        {
            counter.Add(read.Bytes.AsSpan(0, expected.Length));
        }

        var isWide = subject.Shape.Width == 16;
        return new DifferenceMap(expected.Length / subject.Shape.Bytes, counter.Wrong(0, expected.Length), counter.First < 0 ? -1 : counter.First / subject.Shape.Bytes)
        {
            FirstExpected = counter.First < 0 ? 0 : counter.Word(expected.Span, counter.First),
            FirstRead = counter.FirstRead,
            Banks = Rows(counter, Even(subject.Expected.Length, subject.BankSize > 0 ? subject.BankSize : subject.Expected.Length / Parts)),
            Sectors = Rows(counter, subject.Sectors),
            DataLines = counter.Lines,
            WrongLowBytes = isWide ? counter.WrongBytes(high: false) : counter.Wrong(0, expected.Length),
            WrongHighBytes = isWide ? counter.WrongBytes(high: true) : 0,
        };
    }

    private static ImmutableArray<SectorGroup> Even(int length, int size) => size == 0 || length % size != 0 || size % 2 != 0 ? [] : [new SectorGroup(length / size, size)];

    private static ImmutableArray<DifferenceRow> Rows(DifferenceCounter counter, ImmutableArray<SectorGroup> map)
    {
        var rows = ImmutableArray.CreateBuilder<DifferenceRow>();
        var offset = 0;
        foreach (var group in map)
        {
            for (var i = 0; i < group.Count; i++, offset += group.Bytes)
            {
                rows.Add(new DifferenceRow(rows.Count, offset, group.Bytes, counter.Wrong(offset, offset + group.Bytes)));
            }
        }

        return rows.ToImmutable();
    }
}
