using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>Reads how the lines of a site meet the bus.</summary>
/// <param name="section">The site's section.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class LineReader(ManifestSection section, FindingLog log)
{
    private static readonly ImmutableSortedDictionary<string, bool> Levels = ManifestWords.Words(("low", false), ("high", true));

    /// <summary>The data lines: a name, or a list of the chip's lines; null where they run straight.</summary>
    public LineOrder? DataLines(int width)
    {
        var listed = section["dataLines"].Sections.Any() ? section.Texts("dataLines", log) : [];
        if (!listed.IsEmpty)
        {
            int[] lines = [.. listed.Select(line => Line('D', line))];
            if (LineOrder.IsOrder(lines) && lines.Length is 8 or 16)
            {
                return new LineOrder(lines) is { IsStraight: false } order ? order : null;
            }

            log.Add(BoardFindings.Contradiction, section["dataLines"].Place, "These are not the data lines of a chip.", "each of D0 to D7, or D0 to D15, once");
            return null;
        }

        if (section.Text("dataLines", log) is not { } name)
        {
            return null;
        }

        // A name that only another width has is told with the width.
        if ((DataLineOrders.Find(name.Text, width) ?? DataLineOrders.Find(name.Text)) is { } named)
        {
            return named.IsStraight ? null : named;
        }

        log.Add(ManifestFindings.BadValue, name.Place, $"`{name}` is no order of data lines, and no list of them.", $"one of {string.Join(", ", DataLineOrders.Names)}", NearestName.Question(name.Text, DataLineOrders.Names));
        return null;
    }

    /// <summary>A list of the chip's address lines; empty where there is none.</summary>
    public ImmutableArray<int> AddressLines(string key) =>
        section.Texts(key, log) is { IsEmpty: false } lines ? [.. lines.Select(line => Line('A', line)).Where(static line => line >= 0)] : ImmutableArray<int>.Empty;

    /// <summary>What lines of the chip meet that the bus does not drive.</summary>
    public ImmutableSortedDictionary<int, LineTie> Ties(IReadOnlyDictionary<string, LineTie> words)
    {
        var ties = ImmutableSortedDictionary<int, LineTie>.Empty;
        foreach (var name in section["ties"].Names)
        {
            var line = Line('A', new ManifestValue(name, section["ties"][name].Place));
            if (line >= 0 && section["ties"].Choice(name, words, log) is { } tie)
            {
                ties = ties.SetItem(line, tie);
            }
        }

        return ties;
    }

    /// <summary>What enables the chip; null where the site does not say.</summary>
    public SiteSelect? Select()
    {
        var select = section["select"];
        if (select.IsAbsent)
        {
            return null;
        }

        var (line, start, end) = (select.Text("line", log), select.Number("start", log), select.Number("end", log));
        if ((line is null) != (start is not null && end >= start))
        {
            log.Add(BoardFindings.Contradiction, select.Place, "The site does not say what enables its chip.", "a `line` and its `level`, or a `start` and an `end` behind it");
        }

        return new SiteSelect(line?.Text, select.Choice("level", Levels, log) ?? false, select.Truth("inverter", log) ?? false, start, end);
    }

    private int Line(char letter, ManifestValue value)
    {
        if (value.Text.Length > 1 && char.ToUpperInvariant(value.Text[0]) == letter
            && int.TryParse(value.Text.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var line) && line < LineOrder.MostLines)
        {
            return line;
        }

        log.Add(ManifestFindings.BadValue, value.Place, $"`{value}` is no line.", $"{letter}0 to {letter}{LineOrder.MostLines - 1}");
        return -1;
    }
}
