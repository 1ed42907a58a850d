using System.Collections.Immutable;
using System.Text;

namespace Cartwright.Production;

/// <summary>Fills the names in braces of a label's text.</summary>
public static class LabelText
{
    /// <summary>The names in braces, in their order.</summary>
    /// <param name="text">The label's text.</param>
    public static ImmutableArray<string> Names(string text)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        _ = Write(text, name =>
        {
            names.Add(name);
            return "";
        });
        return names.ToImmutable();
    }

    /// <summary>The text with a value for each name.</summary>
    /// <param name="text">The label's text.</param>
    /// <param name="value">The value of a name.</param>
    public static string Write(string text, Func<string, string> value)
    {
        var label = new StringBuilder();
        for (var at = 0; at < text.Length;)
        {
            var open = text.IndexOf('{', at);
            var close = open < 0 ? -1 : text.IndexOf('}', open);
            if (close < 0)
            {
                return label.Append(text.AsSpan(at)).ToString();
            }

            label.Append(text.AsSpan(at, open - at)).Append(value(text[(open + 1)..close]));
            at = close + 1;
        }

        return label.ToString();
    }
}
