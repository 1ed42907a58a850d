using System.Collections.Immutable;

namespace Cartwright.Documents;

/// <summary>Says something once where it is the same in all layouts of a platform, and with the layouts' names where it is not.</summary>
internal static class VariantText
{
    /// <summary>The different things, each with the layouts it holds for.</summary>
    /// <typeparam name="T">What is compared.</typeparam>
    /// <param name="items">What holds for each layout.</param>
    /// <param name="text">What is said of it; things of one text are the same.</param>
    /// <returns>One item and no layouts' names when all are the same.</returns>
    public static ImmutableArray<(T Item, string Variants)> Distinct<T>(ImmutableArray<Variant<T>> items, Func<T, string> text)
    {
        var groups = items.GroupBy(item => text(item.Value), StringComparer.Ordinal).ToList();
        return groups.Count == 1
            ? [(items[0].Value, "")]
            : [.. groups.Select(static group => (group.First().Value, $" ({string.Join(", ", group.Select(static item => item.Layout))})"))];
    }

    /// <summary>The different texts, a line each.</summary>
    /// <typeparam name="T">What it is said of.</typeparam>
    /// <param name="label">What stands before each.</param>
    /// <param name="items">What holds for each layout.</param>
    /// <param name="text">What is said of it.</param>
    public static IEnumerable<string> Lines<T>(string label, ImmutableArray<Variant<T>> items, Func<T, string> text) =>
        Distinct(items, text).Select(pair => $"{label}{pair.Variants}: {text(pair.Item)}");

    /// <summary>The different texts, joined.</summary>
    /// <typeparam name="T">What it is said of.</typeparam>
    /// <param name="items">What holds for each layout.</param>
    /// <param name="text">What is said of it.</param>
    public static string Join<T>(ImmutableArray<Variant<T>> items, Func<T, string> text) =>
        string.Join("; ", Distinct(items, text).Select(pair => text(pair.Item) + pair.Variants));
}
