using System.Collections.Immutable;
using System.CommandLine;

namespace Cartwright.Cli;

/// <summary>A verb of the command, with examples for its help.</summary>
internal sealed class Verb(string name, string description, params ImmutableArray<string> examples) : Command(name, description)
{
    /// <summary>Command lines that show its use.</summary>
    public ImmutableArray<string> Examples => examples;

    /// <summary>The option every verb has.</summary>
    public static Option<bool> JsonOption() => new("--json") { Description = "Prints the result as JSON." };
}
