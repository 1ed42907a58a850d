using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads the manifest's <c>run</c>.</summary>
internal static class RunReader
{
    // A serial number beyond this has no name on a label.
    private const int WidestField = 256;

    private static readonly Dictionary<string, bool> Forms = new(StringComparer.OrdinalIgnoreCase) { ["text"] = false, ["binary"] = true };
    public static RunSettings Read(ManifestSection section, FindingLog log) => new(
        [.. section["fields"].Sections.Select(item => ReadField(item, log)).OfType<UnitField>()],
        section.Text("label", log),
        section.Text("boardRevision", log));

    private static UnitField? ReadField(ManifestSection item, FindingLog log)
    {
        var name = item.Text("name", log, required: true);
        var kind = item.Choice("kind", ManifestWords.UnitFieldKinds, log);
        var offset = item.Size("offset", log);
        var width = item.Size("width", log);
        foreach (var missing in new[] { kind is null ? "kind" : null, offset is null ? "offset" : null, width is null ? "width" : null }.OfType<string>().Where(key => item[key].IsAbsent))
        {
            log.Add(ManifestFindings.MissingKey, item.Place with { Key = item[missing].Path }, $"The key `{item[missing].Path}` is missing.");
        }

        if (width is < 1 or > WidestField)
        {
            log.Add(ManifestFindings.BadValue, item["width"].Place, $"A field of {width} bytes is not possible.", $"1 to {WidestField} bytes");
            return null;
        }

        var alphabet = item.Text("alphabet", log);
        if (alphabet is not null && (alphabet.Text.Length < 2 || alphabet.Text.Distinct().Count() < alphabet.Text.Length || alphabet.Text.Any(static digit => digit is < ' ' or > '~')))
        {
            log.Add(ManifestFindings.BadValue, alphabet.Place, $"`{alphabet}` cannot be the digits of a serial number.", "two or more different printable ASCII characters, that of 0 first");
            return null;
        }

        return name is null || kind is null || offset is null || width is null ? null : new UnitField(name.Text, kind.Value, offset.Value, (int)width.Value, item.Place)
        {
            Region = item.Text("region", log)?.Text,
            IsBinary = item.Choice("form", Forms, log) ?? false,
            LowByteFirst = item.Choice("byteOrder", ManifestWords.LowByteFirst, log) ?? false,
            Alphabet = alphabet?.Text ?? UnitField.TenDigits,
            Check = item.Choice("checkDigit", ManifestWords.CheckDigits, log) ?? CheckDigit.None,
            Pad = item.Byte("pad", log) ?? (byte)' ',
        };
    }
}
