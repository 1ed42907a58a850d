using System.Globalization;
using System.Text.Json;

namespace Cartwright.ReadBacks;

/// <summary>A parameter of a fault.</summary>
/// <param name="Name">Its name: <c>wins</c>, <c>bankSize</c>.</param>
/// <param name="Json">Its value as JSON.</param>
public sealed record FaultParameter(string Name, string Json)
{
    /// <summary>The value as a person reads it.</summary>
    public string Text => Json.Trim('"');

    /// <summary>A word.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="word">The word.</param>
    public static FaultParameter Of(string name, string word) => new(name, $"\"{JsonEncodedText.Encode(word)}\"");

    /// <summary>A whole number.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="number">The number.</param>
    public static FaultParameter Of(string name, long number) => new(name, number.ToString(CultureInfo.InvariantCulture));

    /// <summary>A share or rate, told to four digits.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="number">The number.</param>
    public static FaultParameter Of(string name, double number) => new(name, number.ToString("0.######", CultureInfo.InvariantCulture));

    /// <summary>A list of whole numbers.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="numbers">The numbers.</param>
    public static FaultParameter Of(string name, IEnumerable<int> numbers) => new(name, $"[{Join(numbers)}]");

    /// <summary>A list of starts and lengths.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="blocks">The blocks.</param>
    public static FaultParameter Of(string name, IEnumerable<(int Start, int Length)> blocks) =>
        new(name, $"[{string.Join(", ", blocks.Select(static block => string.Create(CultureInfo.InvariantCulture, $"[{block.Start}, {block.Length}]")))}]");

    /// <summary>A fault inside another.</summary>
    /// <param name="name">The parameter's name.</param>
    /// <param name="inner">The fault.</param>
    public static FaultParameter Of(string name, Fault inner) =>
        new(name, $"{{{string.Join(", ", inner.Parameters.Prepend(Of("kind", inner.Kind.Name)).Select(static row => $"\"{row.Name}\": {row.Json}"))}}}");

    private static string Join(IEnumerable<int> numbers) => string.Join(", ", numbers.Select(static number => number.ToString(CultureInfo.InvariantCulture)));
}
