using System.Buffers.Binary;

namespace Cartwright.Programs;

/// <summary>Reads Intel HEX. Source: Intel Hexadecimal Object File Format Specification, revision A, 1988.</summary>
/// <param name="text">The whole file.</param>
/// <param name="options">Address unit and largest span.</param>
/// <param name="log">Where findings go.</param>
internal sealed class IntelHexReader(ReadOnlyMemory<byte> text, ProgramReadOptions options, ReaderLog log)
{
    private const long SegmentSize = 0x1_0000;
    private const long LinearSize = 0x1_0000_0000;

    private readonly RecordStore _store = new(text.Length, log);
    private readonly RecordDecoder _decoder = new(RecordShape.IntelHex, log);
    private HexAddressing _addressing = HexAddressing.None;
    private long _base;
    private long? _entry;
    private bool _hasRecords;
    private bool _hasEnded;

    /// <summary>Reads the file; null when an error was logged.</summary>
    public ProgramFile? Read()
    {
        var lines = new RecordLines(text.Span);
        while (!_hasEnded && lines.Next()) TakeLine(lines.Current, lines.Number);
        if (!_hasRecords) log.Add(ProgramFindings.NoRecord, log.Whole, "No line of this file is a valid Intel HEX record.");
        else if (!_hasEnded) log.Add(ProgramFindings.EndMissing, log.Line(lines.Number), "The file has no end record (type 01).", "\":00000001FF\" as the last record");
        else if (lines.Next()) log.Add(ProgramFindings.TextAfterEnd, log.Line(lines.Number), "Text follows the end record.", "nothing after it");
        var segments = _store.ToSegments(options.LargestSpan);
        return log.HasErrors ? null : new ProgramFile(log.File, ProgramFormat.IntelHex, segments, _entry);
    }

    private void TakeLine(ReadOnlySpan<byte> line, int number)
    {
        if (line[0] != ':')
        {
            log.Add(ProgramFindings.RecordMark, log.Line(number), $"{ProgramWords.Opening(line)}.", "':' as the first character of a record");
            return;
        }

        var record = _decoder.Decode(line, number);
        if (!record.IsEmpty) TakeRecord(record, number);
    }

    private void TakeRecord(ReadOnlySpan<byte> record, int number)
    {
        _hasRecords = true;
        var offset = BinaryPrimitives.ReadUInt16BigEndian(record[1..]);
        var type = record[3];
        var data = record[4..^1];
        if (!IsLegal(type, data.Length, number)) return;
        if (offset != 0 && type is >= 2 and <= 5) log.Add(ProgramFindings.RecordOffsetUnused, log.Line(number), $"The record of type {type:X2} has offset 0x{offset:X4}.", "0x0000");
        switch (type)
        {
            case 0:
                Place(offset, data, number);
                break;
            case 1:
                _hasEnded = true;
                if (offset != 0) _entry ??= (long)offset * options.AddressUnit; // Some old files carry the start address here (common practice).
                break;
            case 2:
                (_addressing, _base) = (HexAddressing.Segmented, BinaryPrimitives.ReadUInt16BigEndian(data) * 16L);
                break;
            case 3:
                Start((BinaryPrimitives.ReadUInt16BigEndian(data) * 16L) + BinaryPrimitives.ReadUInt16BigEndian(data[2..]), number);
                break;
            case 4:
                (_addressing, _base) = (HexAddressing.Linear, BinaryPrimitives.ReadUInt16BigEndian(data) * SegmentSize);
                break;
            default:
                Start(BinaryPrimitives.ReadUInt32BigEndian(data), number);
                break;
        }
    }

    private bool IsLegal(byte type, int length, int number)
    {
        var fixedLength = type switch { 0 => length, 1 => 0, 2 or 4 => 2, 3 or 5 => 4, _ => -1 };
        if (fixedLength < 0)
        {
            log.Add(ProgramFindings.RecordType, log.Line(number), $"The record has type {type:X2}.", "types 00 to 05");
        }
        else if (fixedLength != length)
        {
            log.Add(ProgramFindings.RecordTypeLength, log.Line(number), $"The record of type {type:X2} has {length} data bytes.", $"{fixedLength}");
        }

        return fixedLength == length;
    }

    private void Start(long address, int number)
    {
        var entry = address * options.AddressUnit;
        if (_entry is { } before && before != entry)
        {
            log.Add(ProgramFindings.StartTwice, log.Line(number), $"Start address {ProgramWords.Address(entry)} replaces {ProgramWords.Address(before)}.");
        }

        _entry = entry;
    }

    // An offset that runs out of its window goes on at the window's first byte: 64 KiB after type 02, 4 GiB after type 04.
    private void Place(ushort offset, ReadOnlySpan<byte> data, int number)
    {
        var isLinear = _addressing == HexAddressing.Linear;
        var window = (isLinear ? LinearSize : SegmentSize) * options.AddressUnit;
        var windowBase = isLinear ? 0 : _base * options.AddressUnit;
        var start = (isLinear ? _base + offset : offset) * options.AddressUnit;
        var fitting = (int)Math.Min(data.Length, window - start);
        if (fitting < data.Length && _addressing == HexAddressing.None)
        {
            log.Add(
                ProgramFindings.RecordPastEnd,
                log.Line(number),
                $"{ProgramWords.Size(data.Length)} at {ProgramWords.Address(start)} run past {ProgramWords.Address(window - 1)}.",
                "a type 04 record for the next 64 KiB");
            return;
        }

        _store.Add(windowBase + start, data[..fitting], number);
        if (fitting == data.Length) return;
        log.Add(ProgramFindings.RecordWraps, log.Line(number), $"{data.Length - fitting} of the record's {data.Length} bytes go on at {ProgramWords.Address(windowBase)}.");
        _store.Add(windowBase, data[fitting..], number);
    }
}
