using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Cli;

/// <summary>Prints what existing images are as JSON; docs/images.md documents the shape.</summary>
internal static class ExamineJson
{
    public static void Write(TextWriter output, IEnumerable<ExaminedImage> examined) =>
        Json.Write(output, json =>
        {
            json.WriteStartArray("images");
            foreach (var image in examined)
            {
                json.WriteStartObject();
                json.WriteString("file", image.File);
                if (image.Image is { } opened)
                {
                    Write(json, opened);
                }

                Json.WriteFindings(json, image.Findings);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    private static void Write(Utf8JsonWriter json, OpenedImage image)
    {
        json.WriteString("platform", image.Found.Platform.Facts.Id);
        json.WriteString("variant", image.Cart.Layout.Variant);
        json.WriteString("order", ManifestWords.Word(image.Found.Claim.Order));
        json.WriteNumber("prefix", image.Parts.Min(static part => part.Start));
        WriteCandidates(json, image);
        WriteFields(json, "header", image.Cart.Headers);
        WriteFields(json, "vectors", image.Vectors);
        WriteChecksums(json, image);
        WriteRegions(json, image);
        json.WriteStartObject("digests");
        BuildRecord.WriteDigest(json, FileDigest.Of(image.Bytes.Span));
        json.WriteEndObject();
    }

    private static void WriteCandidates(Utf8JsonWriter json, OpenedImage image)
    {
        json.WriteStartArray("candidates");
        foreach (var row in image.Ranked)
        {
            json.WriteStartObject();
            json.WriteString("platform", row.Platform.Facts.Id);
            json.WriteString("certainty", CertaintyWord.Of(row.Claim.Certainty));
            json.WriteString("reason", row.Claim.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFields(Utf8JsonWriter json, string name, ImmutableArray<HeaderImage> headers)
    {
        json.WriteStartObject(name);
        foreach (var entry in headers.SelectMany(static header => header.Entries).DistinctBy(static entry => entry.Field.Name))
        {
            WriteField(json, entry);
        }

        json.WriteEndObject();
    }

    private static void WriteField(Utf8JsonWriter json, HeaderEntry entry)
    {
        json.WriteStartObject(entry.Field.Name);
        json.WriteString("value", entry.Text);
        json.WriteNumber("offset", entry.Offset);
        json.WriteString("bytes", Convert.ToHexString(entry.Raw.AsSpan()));
        json.WriteEndObject();
    }

    private static void WriteChecksums(Utf8JsonWriter json, OpenedImage image)
    {
        json.WriteStartArray("checksums");
        foreach (var entry in image.Cart.Headers.SelectMany(static header => header.Checksums))
        {
            json.WriteStartObject();
            json.WriteString("name", entry.Row.Name);
            json.WriteNumber("offset", entry.Offset);
            json.WriteString("stored", entry.Row.Format(entry.Stored));
            json.WriteString("computed", entry.Row.Format(entry.Computed));
            json.WriteBoolean("ok", entry.Right);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRegions(Utf8JsonWriter json, OpenedImage image)
    {
        json.WriteStartArray("regions");
        foreach (var region in image.Cart.Rom.Regions)
        {
            var measure = ContentMeasure.Of(region.Bytes.Span);
            json.WriteStartObject();
            json.WriteString("region", region.Name);
            json.WriteNumber("length", region.Length);
            json.WriteNumber("content", measure.Content);
            json.WriteNumber("period", measure.Period);
            WriteBanks(json, image, region);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteBanks(Utf8JsonWriter json, OpenedImage image, RegionImage region)
    {
        json.WriteStartArray("banks");
        foreach (var bank in BankUse.Of(region.Bytes.Span, image.Cart.Layout.Addresses.BankOf(region.Name)))
        {
            json.WriteStartObject();
            json.WriteNumber("bank", bank.Number);
            json.WriteNumber("offset", bank.Offset);
            json.WriteNumber("length", bank.Length);
            json.WriteNumber("used", bank.Used);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
