using System.CommandLine;
using Cartwright.Chips;

namespace Cartwright.Cli;

/// <summary>The option that says at which end of a chip its small sectors are.</summary>
internal static class BootOption
{
    public static Option<string?> Create()
    {
        var boot = new Option<string?>("--boot") { Description = "The end of the small sectors, where nothing else says it.", HelpName = "top|bottom" };
        boot.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => End(token.Value) is null))
            {
                result.AddError($"--boot takes top or bottom, not `{token.Value}`.");
            }
        });
        return boot;
    }

    public static BootEnd? End(string? word) =>
        string.Equals(word, "top", StringComparison.OrdinalIgnoreCase) ? BootEnd.Top
        : string.Equals(word, "bottom", StringComparison.OrdinalIgnoreCase) ? BootEnd.Bottom
        : null;
}
