using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Documents;

/// <summary>What the schema says only of manifests of one platform: header fields, regions, boards.</summary>
internal static class PlatformSchema
{
    /// <summary>The key of <c>$defs</c> with a platform's header fields.</summary>
    /// <param name="platform">The platform.</param>
    public static string HeaderName(Platform platform) => "header-" + platform.Facts.Id;

    /// <summary>Writes which platforms there are.</summary>
    /// <param name="json">Receives the members of a schema.</param>
    /// <param name="platforms">The platforms.</param>
    public static void WriteChoice(Utf8JsonWriter json, PlatformCatalog platforms) => WriteCart(json, platforms.All.SelectMany(Names));

    /// <summary>Writes the condition on the platform's name and what then holds.</summary>
    /// <param name="json">Receives the members of a schema.</param>
    /// <param name="platform">The platform.</param>
    public static void WriteCondition(Utf8JsonWriter json, Platform platform)
    {
        json.Object("if", () =>
        {
            WriteCart(json, Names(platform));
            json.Texts("required", ["cart"]);
        });
        json.Object("then", () =>
        {
            json.Object("properties", () =>
            {
                json.Object("header", () => json.Reference(HeaderName(platform)));
                WriteRegions(json, platform);
                WriteBoards(json, platform);
            });
            if (platform.Options.Any(static option => option.Required))
            {
                json.Texts("required", ["header"]);
            }
        });
    }

    /// <summary>Writes the platform's header fields.</summary>
    /// <param name="json">Receives the members of a schema.</param>
    /// <param name="platform">The platform.</param>
    public static void WriteHeader(Utf8JsonWriter json, Platform platform)
    {
        var tables = platform.Layouts.SelectMany(static layout => layout.Headers).ToList();
        json.WriteString("description", $"Header fields: {platform.Facts.Name}.");
        json.WriteString("type", "object");
        json.Object("properties", () =>
        {
            json.WriteBoolean("keep", true);
            foreach (var option in platform.Options)
            {
                json.Object(option.Name, () => WriteOption(json, option));
            }

            foreach (var field in tables.SelectMany(static table => table.Fields).GroupBy(static field => field.Name))
            {
                json.Object(field.Key, () => WriteField(json, [.. field]));
            }

            foreach (var checksum in tables.SelectMany(static table => table.Checksums).DistinctBy(static row => row.Name))
            {
                json.Object(checksum.Name, () =>
                {
                    json.WriteString("description", $"Always worked out; a stated value is checked against it. {checksum.Rule}.");
                    json.Reference(SchemaForms.Name(ManifestKeyKind.Number));
                });
            }
        });
        if (platform.Options.Any(static option => option.Required))
        {
            json.Texts("required", [.. platform.Options.Where(static option => option.Required).Select(static option => option.Name)]);
        }

        json.WriteBoolean("additionalProperties", false);
    }

    private static IEnumerable<string> Names(Platform platform) => platform.Facts.Aliases.Prepend(platform.Facts.Id);

    private static void WriteCart(Utf8JsonWriter json, IEnumerable<string> platforms) =>
        json.Object("properties", () => json.Object("cart", () =>
        {
            json.Object("properties", () => json.Object("platform", () => json.Words(platforms)));
            json.Texts("required", ["platform"]);
        }));

    private static void WriteOption(Utf8JsonWriter json, PlatformOption option)
    {
        json.WriteString("description", option.Meaning);
        if (!option.Required)
        {
            json.WriteString("default", option.Default);
        }

        json.Words(option.Values.Select(static value => value.Name));
    }

    // Layouts may have different rows of one name; whatever one of them takes is taken here.
    private static void WriteField(Utf8JsonWriter json, List<HeaderField> rows)
    {
        var words = rows.SelectMany(static row => row.Codec.Names).Select(static row => row.Name).Distinct().ToList();
        json.WriteString("description", string.Join(" ", rows.Select(static row => row.Meaning).Distinct()));
        if (rows.Select(static row => row.Default).Distinct().ToList() is [{ Length: > 0 } text])
        {
            json.WriteString("default", text);
        }

        json.List("anyOf", () =>
        {
            if (words.Count > 0)
            {
                json.Object(() => json.Words(words));
            }

            foreach (var form in rows.Select(static row => row.Codec.Form).Distinct().Order())
            {
                json.Object(() => json.Reference(SchemaForms.Name(form)));
            }
        });
    }

    private static void WriteRegions(Utf8JsonWriter json, Platform platform)
    {
        var regions = platform.Layouts.SelectMany(static layout => layout.Regions).Select(static rule => rule.Name).Distinct().ToList();
        json.Object("programs", () => json.Object("items", () => json.Object("properties", () => json.Object("region", () => json.Words(regions)))));
        json.Object("regions", () => json.Object("propertyNames", () => json.Words(regions)));
        if (!regions.Contains(ManifestReader.OnlyRegion))
        {
            json.WriteBoolean(ManifestReader.OnlyRegion, false);
        }
    }

    private static void WriteBoards(Utf8JsonWriter json, Platform platform)
    {
        var boards = BoardCatalog.All.Where(board => string.Equals(board.Platform, platform.Facts.Id, StringComparison.OrdinalIgnoreCase)).Select(static board => board.Id).ToList();
        if (boards.Count > 0)
        {
            json.Object("board", () => json.Object("properties", () => json.Object("use", () => json.Words(boards))));
        }
    }
}
