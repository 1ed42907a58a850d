namespace Cartwright.Cli;

/// <summary>The answer where a catalogue has nothing of the name or kind asked for.</summary>
internal static class NotFound
{
    /// <summary>The line for the user.</summary>
    /// <param name="thing">What was looked for, one word.</param>
    /// <param name="words">What the user wrote.</param>
    /// <param name="question">"Did you mean …?", or null.</param>
    /// <param name="verb">The verb that lists everything.</param>
    public static string Line(string thing, string words, string? question, string verb) =>
        $"cartwright: no {thing} matches `{words}`. {question ?? $"`cartwright {verb}` lists them all."}";
}
