using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary>What may stand in the place of a value: names of the catalogues, the words of a choice.</summary>
internal static class CompletionWords
{
    /// <summary>The words; none where a file or free text goes.</summary>
    /// <param name="verb">The verb with the option or argument.</param>
    /// <param name="symbol">The option or argument.</param>
    public static IReadOnlyList<string> Of(Command verb, Symbol symbol) => (verb.Name, symbol.Name) switch
    {
        (_, "--platform") or ("platforms" or "new", "name" or "platform") => Platforms(),
        ("new", _) => [],
        (_, "--board") or ("boards", "words") => BoardCatalog.Ids,
        (_, "--part") or ("parts", "words") => [.. PartCatalog.BuiltIn.All.Select(static part => part.Name).Where(IsOneWord)],
        _ => Choices(symbol),
    };

    // Shells split lists at blanks and read brackets as their own.
    private static bool IsOneWord(string name) => name.All(static letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.' or '/' or '+');

    private static List<string> Platforms() => [.. PlatformCatalog.BuiltIn.All.Select(static platform => platform.Facts.Id)];

    // A choice spells its words out in the help, or is one of the parser's own: an enumeration.
    private static List<string> Choices(Symbol symbol) => symbol switch
    {
        Option { HelpName: { } help } when help.Contains('|', StringComparison.Ordinal) => [.. help.Split('|')],
        Option option when option.ValueType != typeof(bool) => [.. option.GetCompletions(System.CommandLine.Completions.CompletionContext.Empty).Select(static item => item.Label)],
        Argument argument => [.. argument.GetCompletions(System.CommandLine.Completions.CompletionContext.Empty).Select(static item => item.Label)],
        _ => [],
    };
}
