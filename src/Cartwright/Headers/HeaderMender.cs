using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>Puts right what an existing image says of itself: size codes and fixed marks first, then checksums, from the same rows that write and read them.</summary>
/// <param name="also">Names of checksums that are put right even where another known rule explains the value.</param>
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
        context.Hold(header.ToArray());
        var changes = ImmutableArray.CreateBuilder<HeaderChange>();
        foreach (var field in table.Fields)
        {
            if (field.When?.Invoke(context) != false)
            {
                var bytes = header.Slice(field.Offset, field.Length);
                Keep(MendField(field, start, bytes, fill, context));
                context.Set(field.Name, field.Codec.Read(bytes));
            }
        }

        foreach (var row in table.Checksums)
        {
            if (table.Region is not null || row.Over is not null)
            {
                Keep(MendChecksum(row, start, region, row.Over is { } over ? context.RegionBytes(over).Span : region));
            }
        }

        return changes.ToImmutable();

        void Keep(HeaderChange? change)
        {
            if (change is not null)
            {
                changes.Add(change);
            }
        }
    }

    private static HeaderChange? MendField(HeaderField field, int start, Span<byte> bytes, byte fill, HeaderContext context)
    {
        var after = bytes.ToArray();
        if (!field.Mended || Right(field, bytes, fill, context) is not { } text || field.Codec.Write(text, after) is not null || bytes.SequenceEqual(after))
        {
            return null;
        }

        var change = new HeaderChange(field.Name, start + field.Offset, [.. bytes], [.. after], field.Codec.Read(bytes), field.Codec.Read(after));
        after.CopyTo(bytes);
        return change;
    }

    // What does not follow from the bytes is written only where nothing stands: other text may be somebody's own.
    private static string? Right(HeaderField field, ReadOnlySpan<byte> bytes, byte fill, HeaderContext context) =>
        field.WorkOut?.Invoke(context) ?? (field.Codec.IsBlank(bytes, fill) ? field.DefaultFrom?.Invoke(context) ?? field.Default : null);

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
