using Cartwright.Findings;

namespace Cartwright.Patching;

/// <summary>The findings of one patch.</summary>
/// <param name="log">Where they are collected.</param>
/// <param name="place">The patch file.</param>
internal sealed class PatchLog(FindingLog log, SourcePlace place)
{
    /// <summary>A log that nobody reads.</summary>
    public static PatchLog Silent() => new(new FindingLog(), SourcePlace.None);

    /// <summary>Adds a finding about a byte of the patch.</summary>
    /// <param name="rule">The row of the findings table.</param>
    /// <param name="offset">The byte.</param>
    /// <param name="message">What is wrong, a sentence without its full stop.</param>
    /// <param name="expected">What was expected, or null.</param>
    public void Add(FindingRule rule, long offset, string message, string? expected = null) =>
        log.Add(rule, place with { Offset = offset }, $"{message}, at offset {PatchWords.Offset(offset)} of the patch.", expected);

    /// <summary>Adds a finding about base or result as a whole.</summary>
    public void AddWhole(FindingRule rule, string message, string? expected = null) => log.Add(rule, place, message, expected);

    /// <summary>Adds an error; false, so that a check can end with it.</summary>
    public bool Refuse(FindingRule rule, long offset, string message, string? expected = null)
    {
        Add(rule, offset, message, expected);
        return false;
    }
}
