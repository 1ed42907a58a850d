using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Inspection;

/// <summary>Writes the manifest of an adopted cart.</summary>
public static class AdoptedManifest
{
    /// <summary>The name of the program file of a region.</summary>
    /// <param name="region">The region.</param>
    public static string ProgramName(string region) => region + ".bin";

    /// <summary>The manifest's text.</summary>
    /// <param name="cart">The cart.</param>
    /// <param name="platform">The platform's id.</param>
    /// <param name="name">The cart's name, the stem of its files.</param>
    public static byte[] Write(AdoptedCart cart, string platform, string name)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            json.WriteStartObject("cart");
            json.WriteString("name", name);
            json.WriteString("platform", platform);
            json.WriteEndObject();
            WritePrograms(json, cart);
            WriteHeader(json, cart);
            WriteImages(json, cart);
            json.WriteEndObject();
        }

        return [.. stream.ToArray(), (byte)'\n'];
    }

    private static void WritePrograms(Utf8JsonWriter json, AdoptedCart cart)
    {
        json.WriteStartArray("programs");
        foreach (var region in cart.Programs.Keys)
        {
            json.WriteStartObject();
            json.WriteString("file", ProgramName(region));
            json.WriteString("region", region);
            json.WriteString("offset", "0");
            json.WriteString("format", "raw");
            json.WriteString("order", "console");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("regions");
        foreach (var (region, bytes) in cart.Programs)
        {
            json.WriteStartObject(region);
            json.WriteString("size", cart.RomLength is null ? bytes.Length.ToString(CultureInfo.InvariantCulture) : ManifestKeys.Fit);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteHeader(Utf8JsonWriter json, AdoptedCart cart)
    {
        json.WriteStartObject("header");
        foreach (var (field, value) in cart.Header)
        {
            json.WriteString(field, value.Text);
        }

        if (!cart.Kept.IsEmpty)
        {
            json.WriteStartArray("keep");
            foreach (var kept in cart.Kept)
            {
                json.WriteStringValue(kept);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WriteImages(Utf8JsonWriter json, AdoptedCart cart)
    {
        if (cart.RomLength is { } length)
        {
            json.WriteStartObject("images");
            json.WriteString("romLength", length.ToString(CultureInfo.InvariantCulture));
            json.WriteEndObject();
        }
    }
}
