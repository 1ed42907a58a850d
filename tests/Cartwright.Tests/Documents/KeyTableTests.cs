using System.Text;
using System.Text.Json.Nodes;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Documents;

/// <summary>Holds the table of keys against the readers: what the table lists is read, and read as the table says.</summary>
public sealed class KeyTableTests
{
    // Only editors look at the first. Any text or list is right for the other, so that no value can be refused; it has a test of its own.
    private static readonly string[] NeverRefused = ["$schema", "board:expects:*"];

    public static TheoryData<string> Patterns => [.. ManifestKeys.Rows.Select(row => row.Pattern)];

    public static TheoryData<string> Choices => [.. ManifestKeys.Rows.Where(row => row.Kind == ManifestKeyKind.Choice).Select(row => row.Pattern)];

    public static TheoryData<string> Numbers => [.. ManifestKeys.Rows.Where(row => row.Kind == ManifestKeyKind.Number && !row.Words.IsEmpty).Select(row => row.Pattern)];

    [Fact]
    public void Patterns_are_unique() =>
        Assert.Equal(ManifestKeys.Rows.Length, ManifestKeys.Rows.Select(row => row.Pattern).Distinct(StringComparer.OrdinalIgnoreCase).Count());

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_key_of_the_table_is_known(string pattern) =>
        Assert.DoesNotContain(Read(pattern, "x"), finding => finding.Rule == ManifestFindings.UnknownKey);

    // A key that nobody reads is refused by nobody, whatever stands there.
    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_key_of_the_table_is_read(string pattern)
    {
        var refused = Read(pattern, new JsonObject { ["a"] = "?" }).Concat(Read(pattern, "?"))
            .Where(finding => finding.Rule != ManifestFindings.UnknownKey && (finding.Place.Key ?? "").StartsWith(Key(pattern), StringComparison.Ordinal));
        Assert.NotEqual(NeverRefused.Contains(pattern), refused.Any());
    }

    [Fact]
    public void What_a_board_is_wired_for_is_read_as_one_text_or_as_several()
    {
        var document = Document("board:expects:*", "nrom");
        var board = BoardReader.Read(document.Root["board"], "own", new FindingLog());
        Assert.Equal(["nrom"], board!.Expects["x"]);
    }

    [Theory]
    [MemberData(nameof(Choices))]
    public void The_words_of_the_table_are_those_the_reader_takes(string pattern)
    {
        var row = Row(pattern);
        Assert.All(row.Words, word => Assert.DoesNotContain(Read(pattern, word), finding => finding.Place.Key == Key(pattern)));
        var refusal = Assert.Single(Read(pattern, "?"), finding => finding.Rule == ManifestFindings.BadValue && finding.Place.Key == Key(pattern));
        Assert.Equal(row.Words.Order(StringComparer.Ordinal), refusal.Expected!["one of ".Length..].Split(", ").Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_numbers_of_the_table_are_those_the_reader_takes(string pattern)
    {
        // Bus and chip must fit each other, so that a width is judged beside every width and lane the other can have.
        bool Takes(string number) =>
            Row("board:busWidth").Words.Any(bus => Row("board:sites:#:width").Words.Any(width => Row("board:sites:#:lane").Words.Any(lane =>
                Read(("board:busWidth", bus), ("board:sites:#:width", width), ("board:sites:#:lane", lane), (pattern, number)).Count == 0)));
        Assert.Equal(Row(pattern).Words, Enumerable.Range(0, 40).Select(number => number.ToString(System.Globalization.CultureInfo.InvariantCulture)).Where(Takes));
    }

    [Theory]
    [InlineData("rom:size")]
    [InlineData("regions:*:size")]
    [InlineData("board:sites:#:length")]
    public void The_words_a_size_can_have_are_taken_and_others_are_not(string pattern)
    {
        Assert.All(Row(pattern).Words, word => Assert.DoesNotContain(Read(pattern, word), finding => finding.Place.Key == Key(pattern)));
        Assert.Single(Read(pattern, "?"), finding => finding.Rule == ManifestFindings.WrongType && finding.Place.Key == Key(pattern));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_default_is_a_value_the_reader_takes(string pattern)
    {
        if (Row(pattern).Default is { } text && !ManifestKeys.Rows.Any(row => row.Pattern == text))
        {
            Assert.DoesNotContain(Read(pattern, text), finding => finding.Place.Key == Key(pattern));
        }
    }

    private static ManifestKey Row(string pattern) => ManifestKeys.Rows.Single(row => row.Pattern == pattern);

    private static string Key(string pattern) => pattern.Replace('#', '0').Replace("ties:*", "ties:A30", StringComparison.Ordinal).Replace('*', 'x');

    // The findings of both readers, for a manifest with this value at this key.
    private static List<Finding> Read(string pattern, JsonNode value) => Read((pattern, value));

    private static List<Finding> Read(params (string Pattern, JsonNode Value)[] values)
    {
        var log = new FindingLog();
        var text = Text(values);
        ManifestReader.Read("cart.json", text, ManifestOverrides.None, log);
        var board = ManifestDocument.Read("cart.json", text, ManifestOverrides.None, log)!.Root["board"];
        BoardReader.Read(board, "own", log);
        board.Text("name", log);
        return [.. log.ToSorted()];
    }

    private static ManifestDocument Document(string pattern, JsonNode value) =>
        ManifestDocument.Read("cart.json", Text((pattern, value)), ManifestOverrides.None, new FindingLog())!;

    private static byte[] Text(params (string Pattern, JsonNode Value)[] values)
    {
        var root = JsonNode.Parse("""
            {
              "cart": { "name": "lantern-tide", "platform": "none" },
              "programs": [ { "file": "main.bin" } ],
              "conflictTables": [ { "offset": "0", "count": "4" } ],
              "board": { "joins": [ { "name": "both", "parts": [ { "region": "rom" } ] } ], "sites": [ { "site": "U1" } ] },
              "slots": { "games": [ { "file": "game.gb" } ], "directory": { "offset": "0", "recordLength": "16", "fields": [ { "kind": "index" } ] }, "switches": [ { "region": "rom" } ] },
              "run": { "fields": [ { "name": "serial", "kind": "serial", "offset": "0", "width": "8" } ] }
            }
            """)!;
        foreach (var (pattern, value) in values)
        {
            Put(root, pattern, value.DeepClone());
        }

        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static void Put(JsonNode node, string pattern, JsonNode value)
    {
        var parts = Key(pattern).Split(':');
        for (var i = 0; i < parts.Length - 1; i++)
        {
            node = Step(node, parts[i], list: parts[i + 1] == "0");
        }

        if (node is JsonArray list)
            list.Add(value);
        else
            node[parts[^1]] = value;
    }

    private static JsonNode Step(JsonNode node, string name, bool list)
    {
        if (node is JsonArray items)
            return items[0]!;
        return node[name] ??= list ? new JsonArray() : new JsonObject();
    }
}
