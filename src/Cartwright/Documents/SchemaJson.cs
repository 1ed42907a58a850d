using System.Globalization;
using System.Text.Json;

namespace Cartwright.Documents;

/// <summary>Nested JSON written so that the code is nested as well, and the parts every schema has.</summary>
internal static class SchemaJson
{
    /// <summary>A member that is an object.</summary>
    public static void Object(this Utf8JsonWriter json, string name, Action content)
    {
        json.WritePropertyName(name);
        json.Object(content);
    }

    /// <summary>An object, as a list's item or after its name.</summary>
    public static void Object(this Utf8JsonWriter json, Action content)
    {
        json.WriteStartObject();
        content();
        json.WriteEndObject();
    }

    /// <summary>A member that is a list.</summary>
    public static void List(this Utf8JsonWriter json, string name, Action content)
    {
        json.WriteStartArray(name);
        content();
        json.WriteEndArray();
    }

    /// <summary>A member that is a list of texts; nothing when there are none.</summary>
    public static void Texts(this Utf8JsonWriter json, string name, IReadOnlyCollection<string> texts)
    {
        if (texts.Count > 0)
        {
            json.List(name, () =>
            {
                foreach (var text in texts)
                {
                    json.WriteStringValue(text);
                }
            });
        }
    }

    /// <summary>The words a value can be, and the JSON numbers and truth values that mean the same.</summary>
    public static void Words(this Utf8JsonWriter json, IEnumerable<string> words) => json.List("enum", () =>
    {
        foreach (var word in words)
        {
            json.WriteStringValue(word);
            if (word is "true" or "false")
            {
                json.WriteBooleanValue(word == "true");
            }
            else if (long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                json.WriteNumberValue(number);
            }
        }
    });

    /// <summary>A form of values described under <c>$defs</c>.</summary>
    public static void Reference(this Utf8JsonWriter json, string name) => json.WriteString("$ref", "#/$defs/" + name);
}
