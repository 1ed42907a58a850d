using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads the manifest's <c>slots</c>.</summary>
/// <param name="log">Receives what is wrong.</param>
internal sealed class SlotReader(FindingLog log)
{
    // A directory larger than this is a mistyped number, and eight bytes hold every number.
    private const int LargestRecord = 4096;
    private const int WidestNumber = 8;
    private const int HighestLine = 31;

    public static SlotSettings? Read(ManifestSection section, FindingLog log) => section.IsAbsent ? null : new SlotReader(log).Read(section);

    private SlotSettings Read(ManifestSection section)
    {
        if (section["games"].IsAbsent)
        {
            log.Add(ManifestFindings.MissingKey, section.Place, "The slots hold no games.", "`games`: a list of finished images");
        }

        return new SlotSettings(
            [.. section["games"].Sections.Select(ReadGame).OfType<SlotGame>()],
            section["directory"].IsAbsent ? null : ReadDirectory(section["directory"]),
            [.. section["switches"].Sections.Select(ReadSwitch)],
            section.Place);
    }

    private SlotGame? ReadGame(ManifestSection item)
    {
        var file = item.Text("file", log, required: true);
        var values = ImmutableSortedDictionary.CreateBuilder<string, long>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in item["values"].Names)
        {
            if (item["values"].Number(name, log) is { } number)
            {
                values[name] = number;
            }
        }

        return file is null ? null : new SlotGame(file, item.Text("title", log)?.Text ?? Path.GetFileNameWithoutExtension(file.Text), item.Place)
        {
            Size = item.Size("size", log),
            At = item.Size("at", log),
            Values = values.ToImmutable(),
        };
    }

    private SlotSwitch ReadSwitch(ManifestSection item)
    {
        var lines = ImmutableArray.CreateBuilder<int>();
        foreach (var line in item.Texts("lines", log))
        {
            if (line.Text is ['A' or 'a', .. var digits] && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= HighestLine && !lines.Contains(number))
            {
                lines.Add(number);
            }
            else
            {
                log.Add(ManifestFindings.BadValue, line.Place, $"`{line}` is no address line, or comes twice.", $"each of A0 to A{HighestLine} once");
            }
        }

        return new SlotSwitch(item.Text("region", log), lines.ToImmutable(), item.Place);
    }

    private SlotDirectory? ReadDirectory(ManifestSection section)
    {
        var (offset, address) = (section.Text("offset", log), section.Text("address", log));
        if ((offset is null) == (address is null))
        {
            log.Add(ManifestFindings.BadValue, section.Place, "One key must say where the directory is.", "`offset` or `address`");
            return null;
        }

        var length = section.Size("recordLength", log) ?? 0;
        if (length is < 1 or > LargestRecord)
        {
            log.Add(ManifestFindings.BadValue, section["recordLength"].Place, $"A record of {length} bytes is not possible.", $"1 to {LargestRecord} bytes");
            return null;
        }

        var at = new ProgramEntry(new ManifestValue("The directory of slots", section.Place), section.Place) { Region = section.Text("region", log), Offset = offset, Address = address };
        return new SlotDirectory(at, (int)length, [.. section["fields"].Sections.Select(item => ReadField(item, length)).OfType<SlotField>()])
        {
            RecordsAt = Within(section, "recordsAt") ?? 0,
            CountAt = Within(section, "countAt"),
            End = section.Byte("end", log),
        };
    }

    private int? Within(ManifestSection section, string key)
    {
        var at = section.Size(key, log);
        if (at is not > LargestRecord)
        {
            return (int?)at;
        }

        log.Add(ManifestFindings.BadValue, section[key].Place, $"{ByteSize.Describe(at.Value)} into the directory is not possible.", $"up to {LargestRecord} bytes");
        return null;
    }

    private SlotField? ReadField(ManifestSection item, long recordLength)
    {
        var kind = item.Choice("kind", ManifestWords.SlotFieldKinds, log);
        var (at, width) = (item.Size("at", log) ?? 0, item.Size("width", log) ?? 1);
        var name = item.Text("name", log);
        if (kind is null)
        {
            if (item["kind"].IsAbsent)
            {
                log.Add(ManifestFindings.MissingKey, item.Place, "The field does not say what it holds.", $"`kind`: one of {string.Join(", ", ManifestWords.SlotFieldKinds.Keys)}");
            }

            return null;
        }

        var widest = kind == SlotFieldKind.Title ? recordLength : Math.Min(WidestNumber, recordLength);
        if (width < 1 || width > widest || at + width > recordLength)
        {
            log.Add(ManifestFindings.BadValue, item.Place, $"A field of {width} bytes at {Number.Hex(at, 2)} is not inside a record of {recordLength}.", $"1 to {widest} bytes inside the record");
            return null;
        }

        if (kind == SlotFieldKind.Value && name is null)
        {
            log.Add(ManifestFindings.MissingKey, item.Place, "The field does not say which of a game's values it holds.", "`name`: a key of each game's `values`");
            return null;
        }

        return new SlotField(kind.Value, at, (int)width, item.Place)
        {
            Name = name?.Text,
            Region = item.Text("region", log)?.Text,
            LowByteFirst = item.Choice("byteOrder", ManifestWords.LowByteFirst, log) ?? false,
            Unit = Math.Max(1, item.Size("unit", log) ?? 1),
            Pad = item.Byte("pad", log) ?? (byte)' ',
        };
    }
}
