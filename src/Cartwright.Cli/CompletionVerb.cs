using System.CommandLine;

namespace Cartwright.Cli;

/// <summary><c>cartwright completion</c></summary>
internal static class CompletionVerb
{
    public static Verb Create(TextWriter output, Func<Command> root)
    {
        var shell = new Argument<string>("shell") { Description = $"The shell: {string.Join(", ", CompletionScripts.All.Select(static row => row.Shell))}." };
        shell.AcceptOnlyFromAmong([.. CompletionScripts.All.Select(static row => row.Shell)]);
        var verb = new Verb(
            "completion",
            "Prints a script with which a shell completes verbs, options and names of the catalogues.",
            "cartwright completion bash",
            "cartwright completion powershell")
        {
            shell,
        };
        verb.SetAction(parsed =>
        {
            var name = parsed.GetRequiredValue(shell);
            output.Write(CompletionScripts.All.Single(row => row.Shell == name).Write(CompletionPlace.All(root())));
            return ExitCode.Done;
        });
        return verb;
    }
}
