using System.CommandLine;
using Cartwright.Findings;

namespace Cartwright.Cli;

/// <summary><c>cartwright manual</c></summary>
internal static class ManualVerb
{
    public static Verb Create(TextWriter output, TextWriter errors, Func<Command> root)
    {
        var words = new Argument<string[]>("verb") { Description = "The verb; without it, the page of the command itself.", Arity = ArgumentArity.ZeroOrMore };
        var verb = new Verb("manual", "Prints a page of the manual, for man or any other reader of roff.", "cartwright manual build", "cartwright manual parts fit") { words };
        verb.SetAction(parsed =>
        {
            var name = string.Join('-', (parsed.GetValue(words) ?? []).Prepend("cartwright"));
            var pages = ManualPage.All(root()).ToDictionary(static row => row.Page, static row => row.Command, StringComparer.Ordinal);
            if (!pages.TryGetValue(name, out var command))
            {
                var asked = string.Join(' ', parsed.GetValue(words) ?? []);
                errors.WriteLine(NotFound.Line("page", asked, NearestName.Question(asked, pages.Keys.Select(static page => page["cartwright".Length..].TrimStart('-').Replace('-', ' '))), "--help"));
                return ExitCode.Refused;
            }

            output.Write(ManualPage.Of(name, command));
            return ExitCode.Done;
        });
        return verb;
    }
}
