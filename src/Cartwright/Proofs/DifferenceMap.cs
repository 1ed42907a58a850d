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
        var expected = WordImage.ToWords(subject.Expected, subject.Shape);
        var count = Math.Min(expected.Length, reads.Min(read => read.Bytes.Length) / subject.Shape.Bytes);
        var wrong = new ushort[count];
        var read = new DifferenceCounter(subject.Shape.Width);
        foreach (var one in reads)
        {
            read.Add(expected, WordImage.ToWords(one.Bytes, subject.Shape), wrong);
        }

        return new DifferenceMap(count, Wrong(wrong), read.First)
        {
            FirstExpected = read.First < 0 ? 0 : expected[read.First],
            FirstRead = read.FirstRead,
            Banks = Rows(wrong, subject, Even(subject.Expected.Length, subject.BankSize > 0 ? subject.BankSize : subject.Expected.Length / Parts)),
            Sectors = Rows(wrong, subject, subject.Sectors),
            DataLines = read.Lines,
            WrongLowBytes = wrong.Count(static word => (word & 0xFF) != 0),
            WrongHighBytes = wrong.Count(static word => word > 0xFF),
        };
    }

    private static int Wrong(ReadOnlySpan<ushort> wrong) => wrong.Length - wrong.Count((ushort)0);

    private static ImmutableArray<SectorGroup> Even(int length, int size) => size == 0 || length % size != 0 ? [] : [new SectorGroup(length / size, size)];

    private static ImmutableArray<DifferenceRow> Rows(ushort[] wrong, ProofSubject subject, ImmutableArray<SectorGroup> map)
    {
        var rows = ImmutableArray.CreateBuilder<DifferenceRow>();
        var offset = 0;
        foreach (var group in map)
        {
            for (var i = 0; i < group.Count; i++, offset += group.Bytes)
            {
                var start = Math.Min(wrong.Length, offset / subject.Shape.Bytes);
                var end = Math.Min(wrong.Length, (offset + group.Bytes) / subject.Shape.Bytes);
                rows.Add(new DifferenceRow(rows.Count, offset, group.Bytes, Wrong(wrong.AsSpan(start..end))));
            }
        }

        return rows.ToImmutable();
    }
}
