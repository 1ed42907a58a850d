using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary>Tells what a build made.</summary>
internal static class BuildReport
{
    public static void WriteText(TextWriter output, CartBuild build, CartOutputResult result, bool dryRun)
    {
        if (result.WasThere)
        {
            output.WriteLine($"{build.Manifest!.Cart.Name}: nothing has changed, and {build.OutputFolder} holds it all");
            return;
        }

        var cart = build.Cart!;
        var sizes = string.Join(" + ", cart.Rom.Regions.Select(static region => $"{region.Name} {ByteSize.Words(region.Length)}"));
        output.WriteLine($"{build.Manifest!.Cart.Name}: {build.Platform!.Facts.Name}, {cart.Layout.Variant}, {sizes}");
        output.WriteLine();
        if (build.Slots is { } slots)
        {
            SlotReport.WriteText(output, slots);
        }

        WriteHeader(output, cart);
        WriteChips(output, result.Files);
        WriteRewrites(output, result.Rewrites);
        output.WriteLine(dryRun ? $"Would be written into {build.OutputFolder}" : $"Written into {build.OutputFolder}");
        Columns.Write(output, "  ", [.. result.Files.Select(static file => new[] { file.File.Name, ByteSize.Words(file.Digest.Size), "CRC-32 " + file.Digest.Crc32Text })]);
    }

    private static void WriteHeader(TextWriter output, CartView cart)
    {
        if (cart.Headers.IsEmpty)
        {
            return;
        }

        output.WriteLine("Header");
        Columns.Write(output, "  ", [.. cart.Headers.SelectMany(static header => header.Entries).Where(static entry => entry.Text.Length > 0 && !entry.Field.Name.StartsWith("reserved", StringComparison.Ordinal)).Select(static entry => new[] { entry.Field.Name, entry.Text })]);
        var checksums = cart.Headers.SelectMany(static header => header.Checksums).Select(static entry => new[] { entry.Row.Name, entry.Row.Format(entry.Stored), entry.Right ? "" : $"computed {entry.Row.Format(entry.Computed)}" }).ToList();
        if (checksums.Count > 0)
        {
            output.WriteLine("Checksums");
            Columns.Write(output, "  ", checksums);
        }
    }

    private static void WriteChips(TextWriter output, ImmutableArray<WrittenFile> files)
    {
        var rows = new List<string[]>();
        foreach (var (file, digest) in files)
        {
            if (file.Chip is { } chip)
            {
                rows.Add([chip.Site.Name, chip.PartName ?? "(no part named)", file.Name, ByteSize.Words(chip.Capacity), $"first word {chip.WordText(0)}", $"sum {digest.Sum16Text}"]);
            }
        }

        if (rows.Count > 0)
        {
            output.WriteLine("Chips");
            Columns.Write(output, "  ", rows);
        }
    }

    // What the chips on the bench hold is for their owner to know.
    private static void WriteRewrites(TextWriter output, ImmutableArray<ChipRewrite> rewrites)
    {
        if (!rewrites.IsEmpty)
        {
            output.WriteLine("Changed since the build that was there");
            Columns.Write(output, "  ", [.. rewrites.Select(static rewrite => new[] { rewrite.Chip.Site.Name, PlanReport.Summary(rewrite.Plan) })]);
        }
    }

    private static void WriteRewrites(Utf8JsonWriter json, ImmutableArray<ChipRewrite> rewrites)
    {
        json.WriteStartArray("rewrites");
        foreach (var rewrite in rewrites)
        {
            json.WriteStartObject();
            json.WriteString("site", rewrite.Chip.Site.Name);
            json.WriteBoolean("changed", rewrite.Plan is not null);
            if (rewrite.Plan is { } plan)
            {
                PlanReport.WriteCounts(json, plan);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteJson(TextWriter output, CartBuild build, CartOutputResult? result, ImmutableArray<Finding> findings, bool dryRun) =>
        Json.Write(output, json =>
        {
            var failed = findings.Any(static finding => finding.Severity == FindingSeverity.Error);
            json.WriteBoolean("built", !failed);
            json.WriteBoolean("written", !failed && !dryRun && result is { WasThere: false });
            json.WriteBoolean("unchanged", !failed && result is { WasThere: true });
            if (result is not null && !failed)
            {
                json.WriteString("folder", build.OutputFolder);
                json.WriteStartArray("files");
                foreach (var (file, digest) in result.Files)
                {
                    json.WriteStartObject();
                    json.WriteString("file", file.Name);
                    json.WriteString("site", file.Chip?.Site.Name);
                    json.WriteNumber("size", digest.Size);
                    json.WriteString("crc32", digest.Crc32Text);
                    json.WriteString("sha256", digest.Sha256);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                WriteRewrites(json, result.Rewrites);
                json.WritePropertyName("record");
                using var record = JsonDocument.Parse(result.Files[^1].File.Parts[0]);
                record.RootElement.WriteTo(json);
            }

            Json.WriteFindings(json, findings);
        });
}
