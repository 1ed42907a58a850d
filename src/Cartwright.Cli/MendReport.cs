using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>Tells what mending changed.</summary>
internal static class MendReport
{
    public static int Write(FittedImage? image, MendedImage? mended, string? written, FindingLog log, bool json, TextWriter output, TextWriter errors)
    {
        var findings = log.ToSorted();
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteString("platform", image?.Image.Found.Platform.Facts.Id);
                writer.WriteString("written", written);
                writer.WriteNumber("stripped", image?.Stripped ?? 0);
                writer.WriteNumber("added", image?.Added ?? 0);
                WriteChanges(writer, "changes", mended?.Changes ?? []);
                Json.WriteFindings(writer, findings);
            });
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            if (image is not null && mended is not null && !log.HasErrors)
            {
                WriteText(output, image, mended, written);
            }
        }

        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }

    public static void WriteChanges(Utf8JsonWriter json, string name, ImmutableArray<HeaderChange> changes)
    {
        json.WriteStartArray(name);
        foreach (var change in changes)
        {
            json.WriteStartObject();
            json.WriteString("name", change.Name);
            json.WriteNumber("offset", change.Offset);
            json.WriteString("before", Convert.ToHexString(change.Before.AsSpan()));
            json.WriteString("after", Convert.ToHexString(change.After.AsSpan()));
            json.WriteString("left", change.Left);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteRows(TextWriter output, ImmutableArray<HeaderChange> changes) => Columns.Write(output, "  ", [.. changes.Select(Row)]);

    private static void WriteText(TextWriter output, FittedImage fitted, MendedImage mended, string? written)
    {
        var image = fitted.Image;
        output.WriteLine($"{image.File}: {image.Found.Platform.Facts.Name}, {image.Cart.Layout.Variant}");
        WriteLengths(output, fitted);
        WriteRows(output, mended.Changes);
        output.WriteLine(written is not null ? $"Written to {written}"
            : mended.IsChanged || fitted.IsChanged ? "Nothing was written: only checked."
            : mended.Changes.IsEmpty ? "Nothing is wrong that could be put right."
            : "Nothing was changed; name a checksum or field with --also to put it right all the same.");
    }

    private static void WriteLengths(TextWriter output, FittedImage fitted)
    {
        if (fitted.Stripped > 0)
        {
            output.WriteLine($"  {ByteSize.Describe(fitted.Stripped)} taken off the front");
        }

        if (fitted.Added > 0)
        {
            output.WriteLine($"  filled up by {ByteSize.Describe(fitted.Added)} to {ByteSize.Words(fitted.Image.Bytes.Length)}");
        }
    }

    private static string[] Row(HeaderChange change) =>
    [
        Number.Hex(change.Offset, 6),
        change.Name,
        $"{Convert.ToHexString(change.Before.AsSpan())} -> {Convert.ToHexString(change.After.AsSpan())}",
        change.Left is null ? $"{change.Was} -> {change.Is}" : $"left as it is: it holds {change.Left}, which may be meant",
    ];
}
