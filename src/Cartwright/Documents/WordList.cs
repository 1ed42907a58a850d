using System.Collections.Immutable;
using Cartwright.Headers;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>The words a value can be: a table where they have meanings, a line where they say it themselves.</summary>
internal static class WordList
{
    /// <summary>Writes the words; nothing when there are none.</summary>
    /// <param name="page">Receives them.</param>
    /// <param name="title">What stands before them.</param>
    /// <param name="words">The words.</param>
    /// <param name="numbers">True where their numbers are what the header holds.</param>
    public static void Write(MarkdownPage page, string title, ImmutableArray<NamedValue> words, bool numbers)
    {
        if (words.IsEmpty)
        {
            return;
        }

        if (!words.Any(static row => row.Meaning is not null))
        {
            page.Paragraph($"{title}: {string.Join(", ", words.Select(row => Code(row.Name) + (numbers ? " = " + Number(row) : "")))}.");
            return;
        }

        page.Paragraph(title + ":");
        if (numbers)
        {
            page.AlignedTable(["value", "word", "meaning"], words.Select(static row => ImmutableArray.Create(Number(row), Code(row.Name), row.Meaning ?? "")));
        }
        else
        {
            page.AlignedTable(["word", "meaning"], words.Select(static row => ImmutableArray.Create(Code(row.Name), row.Meaning ?? "")));
        }
    }

    private static string Number(NamedValue row) => Manifests.Number.Hex((long)row.Value, 2);
}
