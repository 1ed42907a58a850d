using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>The findings of one program file: the first few of each rule one by one, the rest as a number.</summary>
/// <param name="file">The file as the user wrote it.</param>
/// <param name="log">Where they are collected.</param>
internal sealed class ReaderLog(string file, FindingLog log)
{
    // A text file under a wrong name has one fault a line; ten show what kind of file it is.
    private const int ToldOfEachRule = 10;

    private readonly SortedDictionary<string, int> _counts = new(StringComparer.Ordinal);

    /// <summary>The file as the user wrote it.</summary>
    public string File => file;

    /// <summary>True once this file has an error.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>A place in this file by line.</summary>
    public SourcePlace Line(int line, int column = 1) => SourcePlace.AtLine(file, line, column);

    /// <summary>A place in this file by byte offset.</summary>
    public SourcePlace At(long offset) => SourcePlace.At(file, offset);

    /// <summary>The file as a whole.</summary>
    public SourcePlace Whole => new(file);

    /// <summary>Adds one finding, or counts it when enough of its rule have been told.</summary>
    public void Add(FindingRule rule, SourcePlace place, string message, string? expected = null, string? remedy = null)
    {
        HasErrors |= rule.Severity == FindingSeverity.Error;
        var count = _counts.GetValueOrDefault(rule.Code) + 1;
        _counts[rule.Code] = count;
        if (count <= ToldOfEachRule) log.Add(rule, place, message, expected, remedy);
    }

    /// <summary>Tells how many findings were only counted.</summary>
    public void Close()
    {
        foreach (var (code, count) in _counts)
        {
            if (count > ToldOfEachRule) log.Add(ProgramFindings.MoreOfTheSame, Whole, $"{count - ToldOfEachRule} more findings {code} of this file are not listed.");
        }
    }
}
