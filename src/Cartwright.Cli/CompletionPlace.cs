using System.Collections.Immutable;
using System.CommandLine;

namespace Cartwright.Cli;

/// <summary>What can follow one verb of the command line.</summary>
/// <param name="Path">The words of the verb behind the command's name; empty for the command itself.</param>
/// <param name="Verbs">Verbs below it, with what they do.</param>
/// <param name="Options">Its options.</param>
/// <param name="Words">What its arguments may be, where there is a list of it.</param>
internal sealed record CompletionPlace(string Path, ImmutableArray<(string Name, string Text)> Verbs, ImmutableArray<CompletionOption> Options, ImmutableArray<string> Words)
{
    /// <summary>Every place of a command, the command itself first.</summary>
    public static ImmutableArray<CompletionPlace> All(Command root) => [.. Below(root, "")];

    /// <summary>Verbs, options and words: all that can stand here.</summary>
    public IEnumerable<string> Everything => [.. Verbs.Select(static verb => verb.Name), .. Options.Select(static option => option.Name), .. Words];

    private static IEnumerable<CompletionPlace> Below(Command command, string path)
    {
        var inherited = path.Length == 0 ? [] : command.Parents.OfType<Command>().SelectMany(static parent => Recursive(parent));
        yield return new CompletionPlace(
            path,
            [.. command.Subcommands.Select(static verb => (verb.Name, verb.Description ?? ""))],
            [.. command.Options.Concat(inherited).Select(option => CompletionOption.Of(command, option))],
            [.. command.Arguments.SelectMany(argument => CompletionWords.Of(command, argument))]);
        foreach (var place in command.Subcommands.SelectMany(verb => Below(verb, path.Length == 0 ? verb.Name : $"{path} {verb.Name}")))
        {
            yield return place;
        }
    }

    private static IEnumerable<Option> Recursive(Command command) =>
        command.Options.Where(static option => option.Recursive).Concat(command.Parents.OfType<Command>().SelectMany(static parent => Recursive(parent)));
}
