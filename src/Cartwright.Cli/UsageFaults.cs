using System.CommandLine;
using System.CommandLine.Parsing;
using Cartwright.Findings;

namespace Cartwright.Cli;

/// <summary>Says what is wrong with a command line, with the nearest right word.</summary>
internal static class UsageFaults
{
    private const string OptionMark = "--";

    /// <summary>One sentence a fault; none when the line can be carried out.</summary>
    public static IEnumerable<string> Of(ParseResult parsed)
    {
        var verb = parsed.CommandResult.Command;
        var strange = Strange(parsed);
        return verb is not Verb && parsed.Errors.Count + strange.Count > 0 ? [NoVerb(verb, strange.FirstOrDefault())]
            : strange.Exists(IsOption) ? strange.Where(IsOption).Select(word => NoOption(verb, word))
            : strange.Count > 0 ? strange.Select(word => $"`{word}` is one word too many for `{verb.Name}`.")
            : parsed.Errors.Select(static error => error.Message);
    }

    // A mistyped option is taken for an argument where the verb takes one; words behind it may be its own.
    private static List<string> Strange(ParseResult parsed)
    {
        var strange = new List<string>();
        foreach (var argument in parsed.CommandResult.Children.OfType<ArgumentResult>())
        {
            strange.AddRange(argument.Tokens.Select(static token => token.Value).Where(IsOption));
        }

        strange.AddRange(parsed.UnmatchedTokens);
        return strange;
    }

    private static bool IsOption(string word) => word.StartsWith(OptionMark, StringComparison.Ordinal);

    private static string NoVerb(Command root, string? word)
    {
        var verbs = root.Subcommands.Select(static verb => verb.Name).ToList();
        var options = root.Options.Select(static option => option.Name);
        return word is null ? $"say what to do: {string.Join(", ", verbs)}."
            : IsOption(word) ? Join($"there is no option `{word}` without a verb.", NearestName.Question(word, options))
            : Join($"there is no verb `{word}`.", NearestName.Question(word, verbs) ?? $"There are {string.Join(", ", verbs)}.");
    }

    private static string NoOption(Command verb, string word) =>
        Join($"`{verb.Name}` has no option `{word}`.", NearestName.Question(word, verb.Options.Select(static option => option.Name)));

    private static string Join(string sentence, string? more) => more is null ? sentence : sentence + " " + more;
}
