using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>Reads a header table from an image, from the same rows that write it.</summary>
public static class HeaderReader
{
    /// <summary>Reads every field and checks every checksum.</summary>
    /// <param name="table">The table.</param>
    /// <param name="bytes">The region the header lies in, or the bytes of the container.</param>
    /// <param name="context">What is known of the image; receives each field.</param>
    /// <returns>Null when the bytes end before the header does.</returns>
    public static HeaderImage? Read(HeaderTable table, ReadOnlySpan<byte> bytes, HeaderContext context)
    {
        var start = table.Anchor.In(bytes.Length);
        if (start < 0 || start + table.Length > bytes.Length)
        {
            return null;
        }

        context.Hold(bytes.Slice(start, table.Length).ToArray());
        var entries = ImmutableArray.CreateBuilder<HeaderEntry>();
        foreach (var field in table.Fields)
        {
            if (field.When?.Invoke(context) != false)
            {
                var raw = bytes.Slice(start + field.Offset, field.Length);
                var text = field.Codec.Read(raw);
                context.Set(field.Name, text);
                entries.Add(new HeaderEntry(field, start + field.Offset, [.. raw], text, EntryOrigin.Image));
            }
        }

        var checksums = ImmutableArray.CreateBuilder<ChecksumEntry>();
        foreach (var row in table.Checksums)
        {
            var stored = row.Placement.Read(bytes.Slice(start + row.Offset, row.Length));
            checksums.Add(new ChecksumEntry(row, start + row.Offset, stored, row.Compute(row.Over is { } region ? context.RegionBytes(region).Span : bytes)));
        }

        return new HeaderImage(table, entries.ToImmutable(), checksums.ToImmutable(), table.Region is null ? [.. bytes.Slice(start, table.Length)] : []);
    }
}
