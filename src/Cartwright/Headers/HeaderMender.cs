using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>Puts right what an existing image says of itself: size codes and fixed marks first, then checksums, from the same rows that write and read them.</summary>
/// <param name="also">Names of checksums and fields that are put right even where the value may be meant.</param>
public sealed class HeaderMender(IReadOnlySet<string> also)
{
    /// <summary>Mends one header in place.</summary>
    /// <param name="table">The table.</param>
    /// <param name="region">The bytes of its region or container; changed.</param>
    /// <param name="fill">The region's fill value.</param>
    /// <param name="context">What is known of the image, with the regions as they are mended; receives each field.</param>
    /// <returns>Everything that was not right, in the order of the table; nothing when the bytes end before the header does.</returns>
    public ImmutableArray<HeaderChange> Mend(HeaderTable table, Span<byte> region, byte fill, HeaderContext context)
    {
        var start = table.Anchor.In(region.Length);
        if (start < 0 || start + table.Length > region.Length)
        {
            return [];
        }

        var header = region.Slice(start, table.Length);
        if (table.IsOther?.Invoke(header) == true)
        {
            return [];
        }

        var changes = ImmutableArray.CreateBuilder<HeaderChange>();
        changes.AddRange(MendFields(table, start, header, fill, context));
        foreach (var row in table.Checksums.Where(row => table.Region is not null || row.Over is not null))
        {
            if (MendChecksum(row, start, region, row.Over is { } over ? context.RegionBytes(over).Span : region) is { } change)
            {
                changes.Add(change);
            }
        }

        return changes.ToImmutable();
    }

    /// <summary>Mends the fields of one header in place, and no checksum.</summary>
    /// <param name="table">The table.</param>
    /// <param name="start">Offset of the header in its region or container.</param>
    /// <param name="header">The header's bytes; changed.</param>
    /// <param name="fill">The region's fill value.</param>
    /// <param name="context">What is known of the image; receives each field.</param>
    public ImmutableArray<HeaderChange> MendFields(HeaderTable table, int start, Span<byte> header, byte fill, HeaderContext context)
    {
        context.Hold(header.ToArray());
        var changes = ImmutableArray.CreateBuilder<HeaderChange>();
        foreach (var field in table.Fields)
        {
            if (field.When?.Invoke(context) != false)
            {
                var bytes = header.Slice(field.Offset, field.Length);
                if (MendField(field, start, bytes, fill, context) is { } change)
                {
                    changes.Add(change);
                }

                context.Set(field.Name, field.Codec.Read(bytes));
            }
        }

        return changes.ToImmutable();
    }

    private HeaderChange? MendField(HeaderField field, int start, Span<byte> bytes, byte fill, HeaderContext context)
    {
        var known = field.Repair?.Right(bytes, context);
        var after = bytes.ToArray();
        if ((known ?? Right(field, bytes, fill, context)) is not { } text || field.Codec.Write(text, after) is not null || bytes.SequenceEqual(after))
        {
            return null;
        }

        var change = new HeaderChange(field.Name, start + field.Offset, [.. bytes], [.. after], field.Codec.Read(bytes), field.Codec.Read(after))
        {
            Left = known is not null && field.Repair is { OnlyNamed: true } repair && !also.Contains(field.Name) ? repair.Seen : null,
        };
        if (change.Left is null)
        {
            after.CopyTo(bytes);
        }

        return change;
    }

    // What does not follow from the bytes is written only where nothing stands: other text may be somebody's own.
    private static string? Right(HeaderField field, ReadOnlySpan<byte> bytes, byte fill, HeaderContext context) =>
        !field.Mended ? null
        : field.WorkOut?.Invoke(context) ?? (field.Codec.IsBlank(bytes, fill) ? field.DefaultFrom?.Invoke(context) ?? field.Default : null);

    private HeaderChange? MendChecksum(ChecksumRow row, int start, Span<byte> region, ReadOnlySpan<byte> summed)
    {
        var bytes = region.Slice(start + row.Offset, row.Length);
        var stored = row.Placement.Read(bytes);
        var computed = row.Compute(summed);
        if (stored == computed)
        {
            return null;
        }

        var after = new byte[row.Length];
        row.Placement.Write(after, computed);
        var change = new HeaderChange(row.Name, start + row.Offset, [.. bytes], [.. after], row.Format(stored), row.Format(computed))
        {
            Left = also.Contains(row.Name) ? null : row.Explain(summed, stored),
        };
        if (change.Left is null)
        {
            after.CopyTo(bytes);
        }

        return change;
    }
}
