using System.Text.Json;
using Cartwright.Chips;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Documents;

/// <summary>The forms of single values, each described once under <c>$defs</c> of the schema.</summary>
internal static class SchemaForms
{
    /// <summary>The manifest reader takes any single value as text.</summary>
    public const string Text = "text";

    /// <summary>A part of the catalogue, or another.</summary>
    public const string Part = "part";

    private const string Digits = "(0[xX]|\\$)[0-9A-Fa-f][0-9A-Fa-f_]*|[0-9][0-9_]*";
    private const string HexDigits = "(0[xX]|\\$)[0-9A-Fa-f]+";
    private const string SmallNumber = "(0[xX]|\\$)0*[0-9A-Fa-f]{1,2}|0*([0-9]{1,2}|1[0-9]{2}|2[0-4][0-9]|25[0-5])";

    private static readonly string Size = $"{Digits}|([0-9]+\\.?[0-9]*|\\.[0-9]+) *({string.Join('|', ByteSize.UnitNames.Select(AnyCase))})";

    /// <summary>The name of the form of a manifest key.</summary>
    /// <param name="kind">The key's kind.</param>
    public static string Name(ManifestKeyKind kind) => kind switch
    {
        ManifestKeyKind.Size => "size",
        ManifestKeyKind.Number => "number",
        ManifestKeyKind.Fraction => "fraction",
        ManifestKeyKind.Address => "address",
        ManifestKeyKind.Byte => "byte",
        ManifestKeyKind.Truth => "truth",
        _ => Text,
    };

    /// <summary>The name of what a header field takes besides its words.</summary>
    /// <param name="form">The field's form.</param>
    public static string Name(ValueForm form) => form switch
    {
        ValueForm.Number => "number",
        ValueForm.Code => "code",
        ValueForm.SizeOrCode => "sizeOrCode",
        _ => Text,
    };

    /// <summary>Writes the forms.</summary>
    /// <param name="json">Receives them, inside <c>$defs</c>.</param>
    public static void Write(Utf8JsonWriter json)
    {
        json.Object(Text, () =>
        {
            json.WriteString("description", "A single value.");
            json.Texts("type", ["string", "number", "boolean"]);
        });
        WritePattern(json, "size", "A size: 524288, 0x80000, 512KiB or 4Mbit.", "integer", Size);
        WritePattern(json, "number", "A whole number, decimal or hexadecimal: 32768, 0x8000 or $8000.", "integer", Digits);
        WritePattern(json, "fraction", "A number: 5 or 3.3.", "number", "[0-9]+\\.?[0-9]*|\\.[0-9]+");
        WritePattern(json, "address", "An address of the console: $C08000, or bank:address such as 03:4000.", "integer", $"{Digits}|\\$?[0-9A-Fa-f]+:\\$?[0-9A-Fa-f]+");
        WritePattern(json, "byte", "A byte: 0xFF or 255.", "integer", SmallNumber, largest: 0xFF);
        WritePattern(json, "truth", "true or false.", "boolean", $"{AnyCase("true")}|{AnyCase("false")}");
        WritePattern(json, "code", "The raw value in hexadecimal: 0x1B.", null, HexDigits);
        WritePattern(json, "sizeOrCode", "A size such as 8KiB, or `raw` and the code: raw 0x05.", "integer", $"{AnyCase("none")}|{AnyCase("raw")} +{HexDigits}|{Size}");
        WriteParts(json);
    }

    private static void WritePattern(Utf8JsonWriter json, string name, string meaning, string? plain, string pattern, int? largest = null) => json.Object(name, () =>
    {
        json.WriteString("description", meaning);
        json.List("anyOf", () =>
        {
            if (plain is not null)
            {
                json.Object(() => WritePlain(json, plain, largest));
            }

            json.Object(() =>
            {
                json.WriteString("type", "string");
                json.WriteString("pattern", $"^({pattern})$");
            });
        });
    });

    private static void WritePlain(Utf8JsonWriter json, string type, int? largest)
    {
        json.WriteString("type", type);
        if (type != "boolean")
        {
            json.WriteNumber("minimum", 0);
        }

        if (largest is { } most)
        {
            json.WriteNumber("maximum", most);
        }
    }

    private static void WriteParts(Utf8JsonWriter json) => json.Object(Part, () =>
    {
        json.WriteString("description", "A part of the catalogue, by its name or order code, or another with its capacity stated.");
        json.List("anyOf", () =>
        {
            json.Object(() => json.Words(PartCatalog.BuiltIn.All.Select(static part => part.Name)));
            json.Object(() => json.WriteString("type", "string"));
        });
    });

    // Regular expressions of a schema have no switch for letter case.
    private static string AnyCase(string word) =>
        string.Concat(word.Select(static letter => char.IsAsciiLetter(letter) ? $"[{char.ToUpperInvariant(letter)}{char.ToLowerInvariant(letter)}]" : letter.ToString()));
}
