using System.Collections.Immutable;
using System.CommandLine;
using System.Text;

namespace Cartwright.Cli;

/// <summary>A page of the manual, in the man macros of roff, out of the same command tree as <c>--help</c>.</summary>
internal static class ManualPage
{
    private static readonly ImmutableArray<(int Code, string Text)> ExitCodes =
    [
        (ExitCode.Done, "Done."),
        (ExitCode.Found, "Done, and an error was found in the data."),
        (ExitCode.Refused, "The request could not be carried out; nothing was written."),
        (ExitCode.Failed, "A fault of cartwright itself."),
    ];

    /// <summary>The command and all verbs, each with the name of its page.</summary>
    public static IEnumerable<(string Page, Command Command)> All(Command command, string above = "")
    {
        var page = above + command.Name;
        return command.Subcommands.SelectMany(verb => All(verb, page + "-")).Prepend((page, command));
    }

    /// <summary>The page of one command.</summary>
    /// <param name="page">Its name.</param>
    /// <param name="command">The command.</param>
    public static string Of(string page, Command command)
    {
        var text = new StringBuilder();
        text.Append($".TH {Escaped(page).ToUpperInvariant()} 1 \"\" \"cartwright {LibraryVersion.Text}\" \"Cartwright\"\n");
        text.Append($".SH NAME\n{Escaped(page)} \\- {Line(command.Description)}\n");
        text.Append($".SH SYNOPSIS\n.B {Escaped(page.Replace('-', ' '))}\n{Line(Synopsis(command))}\n");
        Section(text, "ARGUMENTS", command.Arguments.Select(static argument => (Escaped(argument.Name), argument.Description)));
        Section(text, "VERBS", command.Subcommands.Select(static verb => (Escaped(verb.Name), verb.Description)));
        Section(text, "OPTIONS", command.Options.Select(static option => (Escaped(option.Name) + Value(option), option.Description)));
        Section(text, "EXIT STATUS", ExitCodes.Select(static row => ($"{row.Code}", (string?)row.Text)));
        Examples(text, command);
        return text.ToString();
    }

    private static void Section(StringBuilder text, string title, IEnumerable<(string Name, string? Text)> rows)
    {
        if (rows.Any())
        {
            text.Append($".SH {title}\n").AppendJoin("", rows.Select(static row => $".TP\n.B {row.Name}\n{Line(row.Text)}\n"));
        }
    }

    private static void Examples(StringBuilder text, Command command)
    {
        if (command is Verb verb)
        {
            text.Append(".SH EXAMPLES\n.nf\n").AppendJoin("", verb.Examples.Select(static example => Line(example) + "\n")).Append(".fi\n");
        }
    }

    private static string Synopsis(Command command) => string.Join(' ',
    [
        .. command.Arguments.Select(static argument => argument.Arity.MinimumNumberOfValues == 0 ? $"[{argument.Name}]" : argument.Name),
        .. command.Subcommands.Any() ? new[] { "[verb]" } : [],
        "[options]",
    ]);

    private static string Value(Option option) => option.ValueType == typeof(bool) ? "" : " " + Escaped(option.HelpName ?? "value");

    // A full stop or an apostrophe at the start of a line would be a macro.
    private static string Line(string? words) => Escaped(words ?? "") is { Length: > 0 } line && line[0] is '.' or '\'' ? "\\&" + line : Escaped(words ?? "");

    private static string Escaped(string words) =>
        words.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal).Replace("`", "\\(ga", StringComparison.Ordinal).Replace("…", "...", StringComparison.Ordinal);
}
