namespace Cartwright.Findings;

/// <summary>Where a finding points: a line and column of a text file, a manifest key, or a byte offset of a binary file.</summary>
/// <param name="File">The file as the user wrote it; null when there is none.</param>
/// <param name="Line">Line, from 1; 0 when unknown.</param>
/// <param name="Column">Column in characters, from 1; 0 when unknown.</param>
/// <param name="Key">The manifest key, its parts joined by colons.</param>
/// <param name="Offset">Byte offset from the start of the file or region.</param>
public readonly record struct SourcePlace(string? File, int Line = 0, int Column = 0, string? Key = null, long? Offset = null)
{
    /// <summary>No place at all.</summary>
    public static SourcePlace None => default;

    /// <summary>A byte offset of a file.</summary>
    public static SourcePlace At(string file, long offset) => new(file, Offset: offset);

    /// <summary>A line of a text file.</summary>
    public static SourcePlace AtLine(string file, int line, int column = 1) => new(file, line, column);
}
