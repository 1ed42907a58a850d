using System.Collections.Immutable;

namespace Cartwright.Findings;

/// <summary>Finds the known names a mistyped one was probably meant to be.</summary>
public static class NearestName
{
    /// <summary>The known names nearest to <paramref name="given"/>, nearest first, letter case ignored.</summary>
    /// <param name="given">What the user wrote.</param>
    /// <param name="known">The names that would have been right.</param>
    /// <param name="count">How many to give at most.</param>
    /// <returns>Names that share enough letters to be worth proposing; empty when none does.</returns>
    public static ImmutableArray<string> Among(string given, IEnumerable<string> known, int count = 3)
    {
        var limit = Math.Max(2, given.Length / 2);
        return
        [
            .. known
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .Select(name => (Name: name, Distance: Math.Min(Distance(given, name), ToBeginning(given, name))))
                .Where(pair => pair.Distance <= limit)
                .OrderBy(pair => pair.Distance)
                .ThenBy(pair => pair.Name, StringComparer.Ordinal)
                .Take(count)
                .Select(pair => pair.Name),
        ];
    }

    /// <summary>"Did you mean …?" for a finding, or null when nothing is near.</summary>
    /// <param name="given">What the user wrote.</param>
    /// <param name="known">The names that would have been right.</param>
    public static string? Question(string given, IEnumerable<string> known)
    {
        var nearest = Among(given, known);
        return nearest.IsEmpty ? null : $"Did you mean {string.Join(" or ", nearest)}?";
    }

    // A long name of which only the beginning was written, and that nearly right: one step further away than the beginning itself.
    private static int ToBeginning(string given, string name) =>
        name.Length > given.Length && Distance(given, name[..given.Length]) is var distance && distance <= given.Length / 4 ? distance + 1 : int.MaxValue;

    // Edits (insert, delete, replace) between the two, one row of the table at a time.
    private static int Distance(string left, string right)
    {
        var row = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 0; i < left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i + 1;
            for (var j = 0; j < right.Length; j++)
            {
                var same = char.ToUpperInvariant(left[i]) == char.ToUpperInvariant(right[j]);
                var replaced = diagonal + (same ? 0 : 1);
                diagonal = row[j + 1];
                row[j + 1] = Math.Min(replaced, Math.Min(row[j], diagonal) + 1);
            }
        }

        return row[right.Length];
    }
}
