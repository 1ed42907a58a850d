using System.Text.Json;
using System.Text.RegularExpressions;
using Cartwright.Tests;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary><c>docs/json.md</c>, held to what verbs print: the approved answers of the golden cases.</summary>
public sealed partial class JsonPageTests
{
    // Only where a build came before, which no golden case has.
    private const string NotInACase = "build rewrites[].";

    private const string ChipOfUnit = "units[].chips[]";

    private static readonly string[] Nested = ["arrange find", "parts decode", "parts fit", "parts identify", "pattern retention", "save battery", "save check", "save compare", "save convert", "save examine", "save keep", "save kinds"];

    // Objects whose keys are names: fields, vectors, lines of a chip, keys of a manifest.
    private static readonly string[] Named = ["header", "vectors", "lines", "pins", "settings", "ties"];

    [Fact]
    public void Every_key_that_a_verb_prints_is_on_the_page_and_the_other_way_round()
    {
        var (written, seen) = (Page(), Seen());
        Assert.Empty(seen.Except(written));
        Assert.DoesNotContain(written.Except(seen), static key => !key.StartsWith(NotInACase, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_verb_with_the_option_has_its_place_on_the_page()
    {
        var titles = Title().Matches(Text()).Select(static match => match.Groups[1].Value).Order(StringComparer.Ordinal);
        var verbs = CompletionPlace.All(CartwrightCommand.Root(TextWriter.Null, TextWriter.Null)).Where(static place => place.Options.Any(static option => option.Name == "--json")).Select(static place => place.Path);
        Assert.Equal(verbs.Append("Findings").Order(StringComparer.Ordinal), titles);
    }

    private static string Text() => File.ReadAllText(Path.Combine(Approved.Root, "docs", "json.md"));

    private static HashSet<string> Page() =>
    [
        .. Text().Split("\n## ").Skip(1).Select(static part => (Verb: part.Split('\n')[0], Text: part)).Where(static part => part.Verb != "Findings")
            .SelectMany(static part => Row().Matches(part.Text).SelectMany(row => Keys(part.Verb, row))),
    ];

    private static IEnumerable<string> Keys(string verb, Match row)
    {
        var places = Word().Matches(row.Groups[1].Value).Select(static place => place.Groups[1].Value).DefaultIfEmpty("");
        return places.SelectMany(place => Word().Matches(row.Groups[2].Value).Select(key => $"{verb} {Dotted(place)}{key.Groups[1].Value}"));
    }

    private static HashSet<string> Seen()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var command in Directory.EnumerateFiles(Path.Combine(Approved.Root, "tests", "cases"), "cmd", SearchOption.AllDirectories).Where(static path => File.ReadAllText(path).Contains("--json", StringComparison.Ordinal)))
        {
            var words = File.ReadAllText(command).Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            var two = string.Join(' ', words.Take(2));
            Collect(JsonDocument.Parse(File.ReadAllText(Path.Combine(Path.GetDirectoryName(command)!, "stdout"))).RootElement, Nested.Contains(two) ? two : words[0], "", seen);
        }

        return seen;
    }

    private static void Collect(JsonElement element, string verb, string where, HashSet<string> seen)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var member in element.EnumerateArray())
            {
                Collect(member, verb, where + "[]", seen);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object && !where.EndsWith("findings[]", StringComparison.Ordinal))
        {
            // A chip of one unit stands in the answer itself, those of several units in a list.
            var place = where == ChipOfUnit ? "" : where;
            foreach (var member in element.EnumerateObject())
            {
                var name = HasNames(place) ? "*" : member.Name;
                seen.Add($"{verb} {Dotted(place)}{name}");
                Collect(member.Value, verb, Dotted(place) + name, seen);
            }
        }
    }

    private static bool HasNames(string where) => Named.Contains(where.Split('.')[^1]) || where.EndsWith(".pins.*", StringComparison.Ordinal);

    private static string Dotted(string where) => where.Length == 0 ? "" : where + ".";

    [GeneratedRegex(@"^## (.+)$", RegexOptions.Multiline)]
    private static partial Regex Title();

    [GeneratedRegex(@"^\| ((?:`[^`]+`(?:, | ))*)\| ((?:`[^`]+`(?:, )?)+) \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Word();
}
