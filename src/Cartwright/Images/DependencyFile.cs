using System.Collections.Immutable;
using System.Text;

namespace Cartwright.Images;

/// <summary>Writes what a build read and made as a rule for make, so that a build runs again when one of its inputs changes.</summary>
/// <remarks>Source: POSIX.1-2024, make, section "Makefile Syntax"; blanks, number signs and dollar signs are escaped as GNU make reads them.</remarks>
public static class DependencyFile
{
    /// <summary>Writes the rule, and an empty one for each input, so that make goes on when an input is renamed.</summary>
    /// <param name="outputs">Paths of the files that were made.</param>
    /// <param name="inputs">Paths of the files that were read.</param>
    public static byte[] Write(ImmutableArray<string> outputs, ImmutableArray<string> inputs)
    {
        var text = new StringBuilder();
        text.AppendJoin(' ', outputs.Select(Escaped)).Append(": ").AppendJoin(' ', inputs.Select(Escaped)).Append('\n');
        foreach (var input in inputs)
        {
            text.Append('\n').Append(Escaped(input)).Append(":\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static string Escaped(string path) =>
        path.Replace('\\', '/').Replace("$", "$$", StringComparison.Ordinal).Replace("#", "\\#", StringComparison.Ordinal).Replace(" ", "\\ ", StringComparison.Ordinal);
}
