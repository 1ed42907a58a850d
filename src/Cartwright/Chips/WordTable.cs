using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>The words a data table uses for the values of an enumeration, and how they read in print.</summary>
/// <param name="rows">Word of the data table, words in print, value.</param>
internal sealed class WordTable<T>(params ImmutableArray<(string Word, string Print, T Value)> rows)
    where T : struct, Enum
{
    /// <summary>The values in the order of the table.</summary>
    public ImmutableArray<T> Values { get; } = [.. rows.Select(static row => row.Value)];

    /// <summary>The value of a word; false when it is none of the table.</summary>
    public bool TryRead(string word, out T value)
    {
        foreach (var row in rows)
        {
            if (string.Equals(row.Word, word, StringComparison.Ordinal))
            {
                value = row.Value;
                return true;
            }
        }

        value = default;
        return false;
    }

    /// <summary>The word of a value.</summary>
    public string Word(T value) => Row(value).Word;

    /// <summary>How a value reads in print.</summary>
    public string Print(T value) => Row(value).Print;

    private (string Word, string Print, T Value) Row(T value)
    {
        foreach (var row in rows)
        {
            if (EqualityComparer<T>.Default.Equals(row.Value, value))
                return row;
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "no word for it");
    }
}
