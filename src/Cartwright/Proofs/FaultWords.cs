using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>Says a fault in a plain sentence.</summary>
public static class FaultWords
{
    private const int MostListed = 16;

    // Parameters in the order in which a sentence has them; those that are not here say nothing to a person.
    private static readonly ImmutableArray<(string Name, Func<string, string?> Words)> Parameters =
    [
        ("within", static text => text == "byte" ? "each byte on its own" : null),
        ("follows", static text => text switch { "chance" => "it reads by chance", "low" or "high" => $"it is pulled {text}", _ => $"it follows {text}" }),
        ("wins", static text => text == "either" ? "now the one level wins, now the other" : $"the {text} level wins"),
        ("reading", static text => text == "dead" ? null : $"it stood at {text} then and works now"),
        ("map", static text => $"line by line they meet {text.Trim('[', ']')}"),
        ("size", static text => $"it holds {Size(text)}"),
        ("holds", static text => text == "mixed" ? "what was written there is mixed" : $"it shows the {text} part of the file"),
        ("bankSize", static text => $"banks of {Size(text)}"),
        ("bank", static text => $"the one shown is bank {text}"),
        ("order", static text => $"the order is {Short(text)}"),
        ("values", static text => $"the bytes met are {Short(text)}"),
        ("by", static text => $"they begin {Size(text)} late"),
        ("length", static text => Size(text)),
        ("prefix", static text => $"the bytes in front are {(text.Length <= MostListed * 2 ? text : text[..(MostListed * 2)] + "...")}"),
        ("period", static text => $"it repeats after {Size(text)}"),
        ("lanes", static text => $"{text} lanes"),
        ("unit", static text => text == "1" ? null : $"units of {text} bytes"),
        ("value", static text => $"the value is {Hex(text)}"),
        ("shows", static text => text switch { "ones" => "it shows ones", "zeros" => "it shows zeros", "address" => "it shows the address", "chance" => "it shows chance bits", _ => $"wrong in {Percent(text)} of the reads" }),
        ("start", static text => $"from {Offset(text)} on"),
        ("at", static text => $"at {Offset(text)}"),
        ("blocks", static text => $"they start and have lengths of {Short(text)} bytes"),
        ("sectorSize", static text => $"sectors of {Size(text)}"),
        ("sectors", static text => $"these are number {Short(text)}"),
        ("image", static text => $"the image is that of {text}"),
        ("how", static text => $"it is of the kind `{text}`"),
        ("mode", static text => text == "busy" ? "it is still busy" : "it shows its identity"),
        ("share", static text => $"{Percent(text)} of the bits that could be wrong are"),
        ("rate", static text => $"at a rate of {Percent(text)} of the bits"),
        ("readsAs", static text => $"the wrong bits read as {text}"),
        ("badInsertions", static text => $"it shows in the insertions {text.Trim('[', ']')}"),
    ];

    /// <summary>The sentence: <c>U1, A12: the address line is low at the chip all the time.</c></summary>
    /// <param name="subject">The chip.</param>
    /// <param name="fault">The fault.</param>
    public static string Sentence(ProofSubject subject, Fault fault)
    {
        var lines = fault.Lines.IsEmpty ? "" : $", {Join([.. fault.Lines.Select(line => subject.Lines.Of(line).Chip)])}";
        var clauses = Parameters.Select(row => fault[row.Name] is { } json ? row.Words(json.Trim('"')) : null).OfType<string>();
        return $"{subject.Site}{lines}: {string.Join("; ", clauses.Prepend(fault.Kind.Meaning))}.";
    }

    /// <summary>Faults by their words, with the chip's lines: <c>address-stuck-low A12 and data-stuck-high D3</c>.</summary>
    /// <param name="subject">The chip.</param>
    /// <param name="faults">The faults of one explanation.</param>
    public static string Names(ProofSubject subject, ImmutableArray<Fault> faults) => string.Join(" and ", faults.Select(fault => Name(subject, fault)));

    /// <summary>A fault by its words, with the chip's lines, lists cut short.</summary>
    /// <param name="subject">The chip.</param>
    /// <param name="fault">The fault.</param>
    public static string Name(ProofSubject subject, Fault fault) =>
        string.Join(' ', [fault.Kind.Name, .. fault.Lines.Select(line => subject.Lines.Of(line).Chip), .. fault.Parameters.Select(static row => $"{row.Name}={Short(row.Text)}")]);

    private static string Join(ImmutableArray<string> lines) =>
        lines.Length == 1 ? lines[0] : $"{string.Join(", ", lines.Take(lines.Length - 1))} and {lines[^1]}";

    private static string Size(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes) ? ByteSize.Describe(bytes) : text;

    private static string Offset(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes) ? Number.Hex(bytes, 6) : text;

    private static string Hex(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? Number.Hex(value, 2) : text;

    private static string Percent(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var share) ? string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.####} %") : text;

    // A list of many members says no more in full; the JSON has them all.
    private static string Short(string text)
    {
        var members = text.Trim('[', ']').Split(", ");
        return members.Length <= MostListed ? text : $"[{string.Join(", ", members.Take(MostListed))}, ... {members.Length} in all]";
    }
}
