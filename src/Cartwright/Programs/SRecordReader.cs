namespace Cartwright.Programs;

/// <summary>Reads Motorola S-records. Source: srec_motorola(5) manual page.</summary>
/// <param name="text">The whole file.</param>
/// <param name="options">Address unit and largest span.</param>
/// <param name="log">Where findings go.</param>
internal sealed class SRecordReader(ReadOnlyMemory<byte> text, ProgramReadOptions options, ReaderLog log)
{
    private readonly RecordStore _store = new(text.Length, log);
    private readonly RecordDecoder _decoder = new(RecordShape.SRecord, log);
    private int _records;
    private long _dataRecords;
    private long? _entry;
    private int _endLine;

    // Address bytes of S0 to S9; 0 for the reserved type.
    private static ReadOnlySpan<byte> AddressBytes => [2, 2, 3, 4, 0, 2, 3, 4, 3, 2];

    /// <summary>Reads the file; null when an error was logged.</summary>
    public ProgramFile? Read()
    {
        var lines = new RecordLines(text.Span);
        while (lines.Next() && !IsSecondFile(lines.Current, lines.Number)) TakeLine(lines.Current, lines.Number);
        if (_records == 0) log.Add(ProgramFindings.NoRecord, log.Whole, "No line of this file is a valid S-record.");
        else if (_endLine == 0) log.Add(ProgramFindings.TerminatorMissing, log.Line(lines.Number), "The file has no end record.", "S7, S8 or S9 as the last record");
        var segments = _records == 0 ? [] : _store.ToSegments(options.LargestSpan);
        return log.HasErrors ? null : new ProgramFile(log.File, ProgramFormat.SRecord, segments, _entry);
    }

    private bool IsSecondFile(ReadOnlySpan<byte> line, int number)
    {
        if (_endLine == 0 || line is not [(byte)'S', >= (byte)'0' and <= (byte)'9', ..]) return false;
        log.Add(ProgramFindings.TextAfterEnd, log.Line(number), $"A record follows the end record of line {_endLine}.", "nothing after it");
        return true;
    }

    private void TakeLine(ReadOnlySpan<byte> line, int number)
    {
        if (line[0] != 'S')
        {
            log.Add(ProgramFindings.LineSkipped, log.Line(number), $"{ProgramWords.Opening(line)}; it was skipped.", "'S' as the first character of a record");
            return;
        }

        if (line.Length < 2 || !char.IsAsciiDigit((char)line[1]))
        {
            log.Add(ProgramFindings.RecordType, log.Line(number), "No digit follows the 'S'.", "S0 to S9");
            return;
        }

        var record = _decoder.Decode(line, number);
        if (record.IsEmpty) return;
        _records++;
        TakeRecord(line[1] - '0', record, number);
    }

    private void TakeRecord(int type, ReadOnlySpan<byte> record, int number)
    {
        var width = AddressBytes[type];
        if (width == 0)
        {
            log.Add(ProgramFindings.RecordReserved, log.Line(number), "Type S4 is reserved; the record was skipped.");
            return;
        }

        if (!IsLegal(type, width, record[0], number)) return;
        var address = 0L;
        foreach (var value in record.Slice(1, width)) address = (address << 8) | value;
        if (type is >= 1 and <= 3) Place(address, width, record[(1 + width)..^1], number);
        else if (type is 5 or 6) CheckCount(address, width, number);
        else if (type >= 7) (_entry, _endLine) = (address * options.AddressUnit, number);
    }

    private bool IsLegal(int type, int width, byte count, int number)
    {
        var hasData = type <= 3;
        if (count == width + 1 || (hasData && count > width)) return true;
        log.Add(
            ProgramFindings.RecordTypeLength,
            log.Line(number),
            $"The S{type} record counts {count} bytes.",
            hasData ? $"at least {width + 1}: {width} for the address and one checksum" : $"{width + 1}: {width} for the number and one checksum");
        return false;
    }

    private void Place(long address, int width, ReadOnlySpan<byte> data, int number)
    {
        _dataRecords++;
        var start = address * options.AddressUnit;
        var end = (1L << (8 * width)) * options.AddressUnit;
        if (start + data.Length > end)
        {
            log.Add(
                ProgramFindings.RecordPastEnd,
                log.Line(number),
                $"{ProgramWords.Size(data.Length)} at {ProgramWords.Address(start)} run past {ProgramWords.Address(end - 1)}.",
                "a record type with a wider address");
            return;
        }

        _store.Add(start, data, number);
    }

    // The number wraps when there are more records than its field can count.
    private void CheckCount(long stated, int width, int number)
    {
        if (stated == (_dataRecords & ((1L << (8 * width)) - 1))) return;
        log.Add(ProgramFindings.RecordTally, log.Line(number), $"The file counts {stated} data records up to here, but {_dataRecords} were read.");
    }
}
