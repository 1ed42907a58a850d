using System.Text.Json.Nodes;

namespace Cartwright.Cli.Tests.Mutations;

/// <summary>Spoils a manifest as a tired hand, a broken script or an ill-meaning stranger would.</summary>
internal static class ManifestMutation
{
    // Edges of every reader: numbers, sizes, addresses, paths, names, letters, kinds of value.
    private static readonly string[] Values =
    [
        "\"\"", "\" \"", "0", "1", "-1", "3", "256", "65535", "9223372036854775807", "\"0x7FFFFFFFFFFFFFFF\"", "\"$FFFFFFFF\"", "\"4GiB\"", "\"2GiB\"", "\"1KiB\"", "\"0.5KiB\"",
        "\"48KiB\"", "\"fit\"", "\"rest\"", "1e99", "0.1", "true", "false", "null", "[]", "{}", "[[\"x\"]]", "{\"a\":{\"b\":1}}", "\"..\"", "\"../x\"", "\"/etc\"", "\"C:\\\\x\"", "\"a\\u0000b\"",
        "\"\\n\"", "\"\\u00FF\\u3042\"", "\"aux\"", "\"U1\"", "\"rom\"", "\"prg\"", "\"chr\"", "\"hirom\"", "\"exhirom\"", "\"mmc3\"", "\"mbc1\"", "\"keep\"", "\"raw 0xFF\"", "\"hex 0102\"",
        "\"programmer\"", "\"intel-hex\"", "\"elf\"", "\"s-record\"", "\"md-double-8bit\"", "\"nes-plain\"", "\"SST39VF1601\"", "\"M27C400\"", "\"7E:0000\"", "\"FF:FFFF\"", "\"snes\"", "\"md\"", "\"gb\"", "\"nes\"",
        "\"" + new string('L', 300) + "\"", "\".\"", "\"cart.json\"", "\"dist\"", "\"\\ud83d\\ude00\"", "2147483647", "2147483648", "4294967304",
    ];

    // Keys that other manifests have, and some that none has.
    private static readonly string[] Keys =
    [
        "skip", "length", "address", "offset", "region", "format", "addressUnit", "load", "size", "fill", "keep", "capacity", "part", "wordOrder", "folder", "formats", "use", "sites", "busWidth",
        "byteOrder", "busVolts", "expects", "U2", "romSize", "saveRam", "title", "mapper", "checksum", "cgbFlag", "newLicensee", "saveMemory", "chrRam", "x", "", "a:b", "0", "$schema",
    ];

    /// <summary>The manifest with a few things changed.</summary>
    public static string Spoil(string manifest, Random random)
    {
        var root = JsonNode.Parse(manifest)!;
        for (var i = random.Next(3); i >= 0; i--)
        {
            Change(root, random);
        }

        var text = root.ToJsonString();
        return random.Next(6) == 0 ? Scratch(text, random) : text;
    }

    private static void Change(JsonNode root, Random random)
    {
        var places = Containers(root).ToList();
        switch (places[random.Next(places.Count)])
        {
            case JsonObject group when group.Count > 0 && random.Next(4) > 0:
                var key = group.ElementAt(random.Next(group.Count)).Key;
                if (random.Next(6) == 0)
                {
                    group.Remove(key);
                }
                else
                {
                    group[key] = Value(random);
                }

                break;
            case JsonObject group:
                group[Keys[random.Next(Keys.Length)]] = Value(random);
                break;
            case JsonArray list when list.Count > 0 && random.Next(2) > 0:
                list[random.Next(list.Count)] = Value(random);
                break;
            case JsonArray list:
                list.Add(random.Next(2) > 0 && list.Count > 0 ? list[0]?.DeepClone() : Value(random));
                break;
        }
    }

    private static JsonNode? Value(Random random) => JsonNode.Parse(Values[random.Next(Values.Length)]);

    private static IEnumerable<JsonNode> Containers(JsonNode node)
    {
        var below = node switch
        {
            JsonObject group => group.Select(static pair => pair.Value),
            JsonArray list => list,
            _ => Enumerable.Empty<JsonNode?>(),
        };
        return (node is JsonValue ? [] : new[] { node }).Concat(below.OfType<JsonNode>().SelectMany(Containers));
    }

    private static string Scratch(string text, Random random)
    {
        var at = random.Next(text.Length);
        const string Marks = "{}[]\",:\\\0\uD800";
        return random.Next(3) switch
        {
            0 => text[..at],
            1 when text.Length > 0 => text.Remove(at, Math.Min(random.Next(1, 9), text.Length - at)),
            _ => text.Insert(at, Marks[random.Next(Marks.Length)].ToString()),
        };
    }
}
