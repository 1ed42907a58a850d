using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Plans;

namespace Cartwright;

/// <summary>The build that is in the output folder: its chip images, as far as its record vouches for them.</summary>
internal static class LastBuild
{
    // In bytes: far above any record, and no danger to the machine that builds.
    private const long LargestRecord = 16 << 20;

    /// <summary>What a build changes on its chips. Only chips of a known part are told of, and only where the old image is there and is what its record says.</summary>
    /// <param name="build">The build.</param>
    /// <param name="files">Its files, which are not in the folder yet.</param>
    public static ImmutableArray<ChipRewrite> Changes(CartBuild build, ImmutableArray<WrittenFile> files)
    {
        var path = Path.Combine(build.OutputFolder, build.Manifest!.Cart.Name.Text + ".record.json");
        if (!files.Any(static file => file.File.Chip?.Part is not null) || Read(path, LargestRecord) is not { } record)
        {
            return [];
        }

        var digests = Digests(record);
        return
        [
            .. files.Where(static file => file.File is { Format: ImageFormat.Raw, Chip.Part: not null })
                .Select(file => digests.TryGetValue(file.File.Name, out var digest) ? Change(build, file, digest) : null)
                .OfType<ChipRewrite>(),
        ];
    }

    private static ChipRewrite? Change(CartBuild build, WrittenFile file, string before)
    {
        var chip = file.File.Chip!;
        if (before == file.Digest.Sha256)
        {
            return new ChipRewrite(chip, null);
        }

        var name = build.Manifest!.Board.Chips.GetValueOrDefault(chip.Site.Name)?.Part?.Text;
        return ChipRewrite.TargetOf(chip, name) is { } target
            && Read(Path.Combine(build.OutputFolder, file.File.Name), chip.Capacity) is { } old
            && old.Length == chip.Capacity
            && FileDigest.Of(old).Sha256 == before
            ? new ChipRewrite(chip, WritePlanner.Plan(target, old, chip.Bytes.Span))
            : null;
    }

    private static byte[]? Read(string path, long longest)
    {
        try
        {
            var file = new FileInfo(path);
            return file.Exists && file.Length <= longest ? File.ReadAllBytes(path) : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // File names and SHA-256 of a record; none when it is no record.
    private static Dictionary<string, string> Digests(byte[] record)
    {
        var digests = new Dictionary<string, string>(StringComparer.Ordinal);
        try
        {
            using var document = JsonDocument.Parse(record);
            if (document.RootElement is { ValueKind: JsonValueKind.Object } root && root.TryGetProperty("files", out var files) && files.ValueKind == JsonValueKind.Array)
            {
                foreach (var file in files.EnumerateArray())
                {
                    if (Text(file, "file") is { } name && Text(file, "sha256") is { } digest)
                    {
                        digests[name] = digest;
                    }
                }
            }
        }
        catch (JsonException)
        {
            digests.Clear();
        }

        return digests;
    }

    private static string? Text(JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
