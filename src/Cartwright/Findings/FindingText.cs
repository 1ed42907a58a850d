using System.Globalization;

namespace Cartwright.Findings;

/// <summary>Writes findings as text.</summary>
public static class FindingText
{
    /// <summary>The word for a severity.</summary>
    /// <param name="severity">The severity.</param>
    public static string Word(FindingSeverity severity) => severity switch
    {
        FindingSeverity.Error => "error",
        FindingSeverity.Warning => "warning",
        _ => "note",
    };

    /// <summary>One line in the canonical form that editors and build servers read: <c>cart.json(12,15): error CW1203: …</c></summary>
    /// <remarks>Source: MSBuild and Visual Studio format for diagnostic messages.</remarks>
    /// <param name="finding">The finding.</param>
    public static string Line(Finding finding) => $"{Origin(finding.Place)}: {Word(finding.Severity)} {finding.Code}: {Words(finding)}".AsOneLine();

    /// <summary>The finding in words: what is wrong, what was expected, what to do.</summary>
    /// <param name="finding">The finding.</param>
    public static string Words(Finding finding) =>
        finding.Message
        + (finding.Expected is { Length: > 0 } expected ? $" Expected: {expected}." : "")
        + (finding.Severity != FindingSeverity.Note ? " " + Advice(finding) : "");

    // Whatever a file name or a value holds, a finding is one line and moves no cursor.
    private static string AsOneLine(this string line) =>
        string.Create(line.Length, line, static (letters, line) =>
        {
            for (var i = 0; i < letters.Length; i++)
            {
                letters[i] = line[i] is '\r' or '\n' or '\t' ? ' ' : char.IsControl(line[i]) ? '\uFFFD' : line[i];
            }
        });

    // "Nothing, if it is meant" stands under a heading in the documents; in a line it needs its verb.
    private static string Advice(Finding finding) =>
        finding.Advice.StartsWith("Nothing", StringComparison.Ordinal) ? "Do nothing" + finding.Advice["Nothing".Length..] : finding.Advice;

    private static string Origin(SourcePlace place)
    {
        var file = place.File ?? "cartwright";
        return (place.Line, place.Column, place.Offset) switch
        {
            ( > 0, > 0, _) => string.Create(CultureInfo.InvariantCulture, $"{file}({place.Line},{place.Column})"),
            ( > 0, _, _) => string.Create(CultureInfo.InvariantCulture, $"{file}({place.Line})"),
            (_, _, { } offset) => string.Create(CultureInfo.InvariantCulture, $"{file}(0x{offset:X})"),
            _ => file,
        };
    }
}
