using System.Collections.Immutable;
using System.CommandLine;

namespace Cartwright.Cli;

/// <summary>An option as completion knows it.</summary>
/// <param name="Name">With its dashes.</param>
/// <param name="Text">What it does.</param>
/// <param name="TakesValue">Whether a value follows.</param>
/// <param name="Words">What the value may be; empty for free text and files.</param>
internal sealed record CompletionOption(string Name, string Text, bool TakesValue, ImmutableArray<string> Words)
{
    public static CompletionOption Of(Command verb, Option option)
    {
        var takesValue = option.ValueType != typeof(bool);
        return new CompletionOption(option.Name, option.Description ?? "", takesValue, takesValue ? [.. CompletionWords.Of(verb, option)] : []);
    }
}
