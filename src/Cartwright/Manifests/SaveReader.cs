using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads the manifest's <c>save</c>.</summary>
internal static class SaveReader
{
    private const int MostSlots = 256;
    private const int LongestSignature = 64;

    public static SaveSettings Read(ManifestSection section, FindingLog log) => new(ReadBlock(section, log), ReadSlots(section["slots"], log));

    /// <summary>Bytes a check value of a kind takes.</summary>
    public static int Width(SaveCheckKind kind) => kind switch
    {
        SaveCheckKind.Sum8 => 1,
        SaveCheckKind.Sum32 or SaveCheckKind.Crc32 or SaveCheckKind.Adler32 => 4,
        _ => 2,
    };

    private static SaveBlock ReadBlock(ManifestSection section, FindingLog log) => new(
        ReadSignature(section["signature"], log),
        ReadNumber(section["version"], log),
        section.Number("version:highest", log),
        ReadCheck(section["check"], log));

    private static SaveSlots? ReadSlots(ManifestSection section, FindingLog log)
    {
        var (offset, size, count) = (section.Size("offset", log) ?? 0, section.Size("size", log), section.Number("count", log));
        var (block, sequence) = (ReadBlock(section, log), ReadNumber(section["sequence"], log));
        if (section.IsAbsent || IsMissing(section, "size", size, log) | IsMissing(section, "count", count, log))
        {
            return null;
        }

        if (count is < 1 or > MostSlots)
        {
            log.Add(ManifestFindings.BadValue, section["count"].Place, $"{count} slots are not possible.", $"1 to {MostSlots}");
            return null;
        }

        if (size is < 1 or > int.MaxValue || offset > int.MaxValue)
        {
            log.Add(ManifestFindings.BadValue, section["size"].Place, $"Slots of {ByteSize.Words(size!.Value)} from {ByteSize.Words(offset)} on are not possible.", "slots that lie in a save memory");
            return null;
        }

        return new SaveSlots(offset, size!.Value, (int)count!.Value, block, sequence);
    }

    private static bool IsMissing(ManifestSection section, string key, long? value, FindingLog log)
    {
        if (value is null && section[key].IsAbsent)
        {
            log.Add(ManifestFindings.MissingKey, section.Place with { Key = section[key].Path }, $"The key `{section[key].Path}` is missing.");
        }

        return value is null;
    }

    private static SaveSignature? ReadSignature(ManifestSection section, FindingLog log)
    {
        var offset = section.Size("offset", log) ?? 0;
        if (section.IsAbsent || section.Text("bytes", log, required: true) is not { } value)
        {
            return null;
        }

        if (ParseBytes(value.Text) is { } bytes)
        {
            return new SaveSignature(offset, bytes);
        }

        log.Add(ManifestFindings.BadValue, value.Place, $"`{value.Text}` is no row of bytes.", $"1 to {LongestSignature} bytes of two hexadecimal digits each: 51 53 41 56");
        return null;
    }

    private static ImmutableArray<byte>? ParseBytes(string text)
    {
        var digits = text.Replace(" ", "", StringComparison.Ordinal);
        return digits.Length is > 0 and <= 2 * LongestSignature && int.IsEvenInteger(digits.Length) && digits.All(char.IsAsciiHexDigit)
            ? [.. Convert.FromHexString(digits)]
            : null;
    }

    private static SaveNumber? ReadNumber(ManifestSection section, FindingLog log)
    {
        var (offset, width, order) = (section.Size("offset", log), section.Size("width", log) ?? 1, section.Choice("byteOrder", ManifestWords.LowByteFirst, log) ?? false);
        if (section.IsAbsent || IsMissing(section, "offset", offset, log))
        {
            return null;
        }

        if (width is 1 or 2 or 4)
        {
            return new SaveNumber(offset!.Value, (int)width, order);
        }

        log.Add(ManifestFindings.BadValue, section["width"].Place, string.Create(CultureInfo.InvariantCulture, $"A number of {width} bytes is not possible."), "1, 2 or 4 bytes");
        return null;
    }

    private static SaveCheckValue? ReadCheck(ManifestSection section, FindingLog log)
    {
        var (kind, offset, order) = (section.Choice("kind", ManifestWords.SaveCheckKinds, log), section.Size("offset", log), section.Choice("byteOrder", ManifestWords.LowByteFirst, log) ?? false);
        var (start, length) = (section.Size("start", log) ?? 0, section.Size("length", log));
        return section.IsAbsent || IsMissing(section, "kind", (long?)kind, log) | IsMissing(section, "offset", offset, log)
            ? null
            : new SaveCheckValue(kind!.Value, new SaveNumber(offset!.Value, Width(kind.Value), order), start, length);
    }
}
