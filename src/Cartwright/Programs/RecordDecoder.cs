using System.Buffers;

namespace Cartwright.Programs;

/// <summary>Turns the hex digits of one record line into bytes, and checks digits, count and checksum in that order.</summary>
/// <param name="shape">The frame of the format.</param>
/// <param name="log">Where faults go; one for each faulty line.</param>
internal sealed class RecordDecoder(RecordShape shape, ReaderLog log)
{
    private readonly byte[] _record = new byte[RecordShape.MostBytes];

    /// <summary>The digits a record is written with.</summary>
    public static SearchValues<byte> HexDigits { get; } = SearchValues.Create("0123456789ABCDEFabcdef"u8);

    /// <summary>Decodes a line that begins with the format's mark.</summary>
    /// <param name="line">The line without trailing blanks.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <returns>All bytes of the record, count first and checksum last, valid until the next call; empty when a fault was logged.</returns>
    public ReadOnlySpan<byte> Decode(ReadOnlySpan<byte> line, int number)
    {
        var digits = line[shape.MarkLength..];
        if (!AreDigits(line, digits, number)) return default;
        var length = digits.Length / 2;
        if (!CountFits(digits, length, number)) return default;
        Convert.FromHexString(digits, _record, out _, out _);
        var record = _record.AsSpan(0, length);
        return SumFits(record, number) ? record : default;
    }

    private bool AreDigits(ReadOnlySpan<byte> line, ReadOnlySpan<byte> digits, int number)
    {
        var stray = digits.IndexOfAnyExcept(HexDigits);
        if (stray >= 0)
        {
            var column = shape.MarkLength + stray + 1;
            log.Add(ProgramFindings.RecordDigit, log.Line(number, column), $"{ProgramWords.Character(line[column - 1])} in column {column} is not a hex digit.");
            return false;
        }

        if (digits.Length >= shape.LeastDigits && digits.Length % 2 == 0) return true;
        log.Add(
            ProgramFindings.RecordDigitCount,
            log.Line(number),
            $"The record has {digits.Length} hex digits.",
            $"an even number, at least {shape.LeastDigits}");
        return false;
    }

    private bool CountFits(ReadOnlySpan<byte> digits, int length, int number)
    {
        Span<byte> count = stackalloc byte[1];
        Convert.FromHexString(digits[..2], count, out _, out _);
        if (count[0] + shape.Uncounted == length) return true;
        log.Add(
            ProgramFindings.RecordCount,
            log.Line(number),
            $"The record's count is 0x{count[0]:X2} ({count[0]}), but the line holds {Math.Max(0, length - shape.Uncounted)} counted bytes.",
            $"{2 * (count[0] + shape.Uncounted)} hex digits after the mark; the line has {digits.Length}");
        return false;
    }

    private bool SumFits(ReadOnlySpan<byte> record, int number)
    {
        byte sum = 0;
        foreach (var value in record) sum += value;
        if (sum == shape.GoodSum) return true;
        var right = (byte)(record[^1] + shape.GoodSum - sum);
        log.Add(
            ProgramFindings.RecordChecksum,
            log.Line(number),
            $"The record ends in checksum 0x{record[^1]:X2}, but its bytes give 0x{right:X2}.");
        return false;
    }
}
