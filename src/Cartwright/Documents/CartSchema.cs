using System.Text;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Documents;

/// <summary>The JSON Schema of the manifest, for completion and checks in editors.</summary>
/// <remarks>Source of the form: JSON Schema, draft 2020-12, Core and Validation.</remarks>
public static class CartSchema
{
    /// <summary>Writes the schema.</summary>
    /// <param name="platforms">The platforms a manifest can name.</param>
    /// <returns>JSON with LF line ends and one at its end.</returns>
    public static string Json(PlatformCatalog platforms)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.Object(() => WriteAll(json, platforms));
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteAll(Utf8JsonWriter json, PlatformCatalog platforms)
    {
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", "Manifest of a cart (cart.json)");
        json.WriteString("description", "Words and keys are expected as they are spelled here; a build does not mind their letter case.");
        WriteObject(json, SchemaNode.Root());
        json.List("allOf", () =>
        {
            json.Object(() => PlatformSchema.WriteChoice(json, platforms));
            foreach (var platform in platforms.All)
            {
                json.Object(() => PlatformSchema.WriteCondition(json, platform));
            }
        });
        json.Object("$defs", () =>
        {
            SchemaForms.Write(json);
            foreach (var platform in platforms.All)
            {
                json.Object(PlatformSchema.HeaderName(platform), () => PlatformSchema.WriteHeader(json, platform));
            }
        });
    }

    private static void WriteNode(Utf8JsonWriter json, SchemaNode node)
    {
        if (node.Meaning is { } meaning)
        {
            json.WriteString("description", meaning);
        }

        if (node.Row?.Default is { } text)
        {
            json.WriteString("default", text);
        }

        WriteAny(json, Shapes(json, node));
    }

    // A key may take a single value, a list or an object; few take more than one of them.
    private static List<Action> Shapes(Utf8JsonWriter json, SchemaNode node)
    {
        var shapes = new List<Action>();
        if (node.Row is { } row)
        {
            shapes.Add(() => WriteValue(json, row));
        }

        if (node.Item is { } item)
        {
            shapes.Add(() =>
            {
                json.WriteString("type", "array");
                json.Object("items", () => WriteNode(json, item));
            });
        }

        if (node.IsObject)
        {
            shapes.Add(() => WriteObject(json, node));
        }

        return shapes;
    }

    private static void WriteAny(Utf8JsonWriter json, List<Action> shapes)
    {
        if (shapes is [var only])
        {
            only();
            return;
        }

        json.List("anyOf", () => shapes.ForEach(json.Object));
    }

    private static void WriteObject(Utf8JsonWriter json, SchemaNode node)
    {
        json.WriteString("type", "object");
        json.Object("properties", () =>
        {
            foreach (var member in node.Members)
            {
                json.Object(member.Name, () => WriteNode(json, member));
            }
        });
        if (node.Other is { } other)
        {
            json.Object("additionalProperties", () => WriteNode(json, other));
        }
        else
        {
            json.WriteBoolean("additionalProperties", false);
        }

        json.Texts("required", [.. node.Members.Where(static member => member.IsRequired).Select(static member => member.Name)]);
        if (node.Members.Any(static member => member.Pattern == Sources[0]))
        {
            json.List("anyOf", () => Array.ForEach(Sources, source => json.Object(() => json.Texts("required", [source]))));
        }
    }

    // A manifest must have programs or finished games, though no single key of them says so.
    private static readonly string[] Sources = ["programs", "slots"];

    private static void WriteValue(Utf8JsonWriter json, ManifestKey row)
    {
        var form = row.Pattern == "board:chips:*:part" ? SchemaForms.Part : SchemaForms.Name(row.Kind);
        if (row.Words.IsEmpty)
        {
            json.Reference(form);
        }
        else if (row.Kind != ManifestKeyKind.Size)
        {
            json.Words(row.Words);
        }
        else
        {
            WriteAny(json, [() => json.Words(row.Words), () => json.Reference(form)]);
        }
    }
}
