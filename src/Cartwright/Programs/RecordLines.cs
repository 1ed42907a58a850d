namespace Cartwright.Programs;

/// <summary>Walks the lines of a record file that hold something: CR LF, LF and CR end a line, trailing blanks do not count.</summary>
/// <param name="text">The whole file.</param>
internal ref struct RecordLines(ReadOnlySpan<byte> text)
{
    private const byte DosEndMark = 0x1A;

    // Old systems filled the last disk block with end marks (from memory); they and line ends behind the last record say nothing.
    private ReadOnlySpan<byte> _rest = text.TrimEnd([DosEndMark, (byte)' ', (byte)'\t', (byte)'\r', (byte)'\n']);

    /// <summary>The present line without its end and trailing blanks.</summary>
    public ReadOnlySpan<byte> Current { get; private set; } = default;

    /// <summary>Number of the present line, from 1.</summary>
    public int Number { get; private set; } = 0;

    /// <summary>Moves on to the next line that is not blank.</summary>
    /// <returns>False at the end of the file.</returns>
    public bool Next()
    {
        while (!_rest.IsEmpty)
        {
            Current = TakeLine().TrimEnd(" \t"u8);
            Number++;
            if (!Current.IsEmpty) return true;
        }

        Current = default;
        return false;
    }

    private ReadOnlySpan<byte> TakeLine()
    {
        var end = _rest.IndexOfAny((byte)'\r', (byte)'\n');
        if (end < 0) end = _rest.Length;
        var line = _rest[..end];
        var isPair = end + 1 < _rest.Length && _rest[end] == '\r' && _rest[end + 1] == '\n';
        _rest = _rest[Math.Min(_rest.Length, end + (isPair ? 2 : 1))..];
        return line;
    }
}
