using System.Collections.Immutable;

namespace Cartwright.Programs;

/// <summary>Collects the data of the records of one text file and makes segments of them.</summary>
/// <param name="textLength">Length of the file in bytes: its data cannot be more than half as long.</param>
/// <param name="log">Where overlaps and spans are reported.</param>
internal sealed class RecordStore(int textLength, ReaderLog log)
{
    private readonly byte[] _bytes = GC.AllocateUninitializedArray<byte>(textLength / 2);
    private readonly List<ProgramRun> _runs = [];
    private readonly LineIndex _lines = new();
    private readonly RecordPattern _pattern = new();
    private int _length;

    /// <summary>True while no record has brought any data.</summary>
    public bool IsEmpty => _length == 0;

    /// <summary>Adds the data of one record; they continue the last run when they begin where it ends.</summary>
    public void Add(long address, ReadOnlySpan<byte> data, int line)
    {
        if (data.IsEmpty) return;
        data.CopyTo(_bytes.AsSpan(_length));
        _lines.Add(_length, data.Length, line);
        _pattern.Add(address, data, line);
        if (_runs.Count > 0 && _runs[^1].End == address) _runs[^1] = _runs[^1] with { Length = _runs[^1].Length + data.Length };
        else _runs.Add(new ProgramRun(address, _length, data.Length));
        _length += data.Length;
    }

    /// <summary>The segments, ascending; empty when an error was logged.</summary>
    public ImmutableArray<Segment> ToSegments(long largestSpan)
    {
        if (IsEmpty && !log.HasErrors) log.Add(ProgramFindings.NoData, log.Whole, "No record of this file holds any data.");
        if (IsEmpty || IsNoImage()) return [];
        return new SegmentMerger(_bytes.AsMemory(0, _length), index => log.Line(_lines.LineOf(index)), log).Merge(_runs, largestSpan);
    }

    private bool IsNoImage()
    {
        if (_pattern.CountsWords)
        {
            log.Add(
                ProgramFindings.AddressesCountWords,
                log.Line(_pattern.Line),
                $"Records advance by half their length: {ProgramWords.Size(_pattern.Length)} at {ProgramWords.Address(_pattern.Address)} begin in the middle of the record before.",
                "each record beginning where the one before ends");
        }
        else if (_pattern.ListsSerials)
        {
            log.Add(
                ProgramFindings.SerialList,
                log.Line(_pattern.Line),
                $"Many records of {ProgramWords.Size(_pattern.Length)} stand at {ProgramWords.Address(_pattern.Address)}, each with other data.",
                "one value for each address");
        }

        return _pattern.CountsWords || _pattern.ListsSerials;
    }
}
