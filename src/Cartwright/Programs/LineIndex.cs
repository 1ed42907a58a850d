namespace Cartwright.Programs;

/// <summary>Remembers which line each stored byte came from, in a few entries for a regular file.</summary>
internal sealed class LineIndex
{
    private readonly List<Mark> _marks = [];

    /// <summary>Notes one record; records come in the order of their starts.</summary>
    /// <param name="start">Index of its first data byte in the store.</param>
    /// <param name="length">Data bytes, at least 1.</param>
    /// <param name="line">Its line.</param>
    public void Add(int start, int length, int line)
    {
        if (_marks.Count == 0 || !_marks[^1].Foretells(start, length, line)) _marks.Add(new Mark(start, length, line));
    }

    /// <summary>The line the byte at <paramref name="index"/> came from.</summary>
    public int LineOf(int index)
    {
        var (low, high) = (0, _marks.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (_marks[middle].Start <= index) low = middle;
            else high = middle - 1;
        }

        return _marks[low].LineOf(index);
    }

    // From Start on, each further line holds Step bytes, until the next mark says otherwise.
    private readonly record struct Mark(int Start, int Step, int Line)
    {
        public int LineOf(int index) => Line + ((index - Start) / Step);

        public bool Foretells(int start, int length, int line) =>
            length <= Step && (start - Start) % Step == 0 && LineOf(start) == line;
    }
}
