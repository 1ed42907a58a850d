namespace Cartwright.Headers;

/// <summary>Takes out of a region what a header's rows can write again.</summary>
public static class HeaderEraser
{
    /// <summary>Clears every bit that a field or checksum owns.</summary>
    /// <param name="header">The header as it was read.</param>
    /// <param name="region">The bytes of its region; changed.</param>
    /// <param name="stays">Names of fields and checksums whose bytes stay.</param>
    public static void TakeOut(HeaderImage header, Span<byte> region, IReadOnlySet<string> stays)
    {
        foreach (var entry in header.Entries.Where(entry => !stays.Contains(entry.Field.Name)))
        {
            TakeOut(entry, region);
        }

        foreach (var entry in header.Checksums.Where(entry => !stays.Contains(entry.Row.Name)))
        {
            region.Slice(entry.Offset, entry.Row.Length).Clear();
        }
    }

    private static void TakeOut(HeaderEntry entry, Span<byte> region)
    {
        var mask = new byte[entry.Field.Length];
        entry.Field.Codec.Mask(mask);
        // Where zero is a value that programs may mean, only the fill says nothing.
        var blank = entry.Field.Codec.IsBlank(new byte[mask.Length], Roms.Blank.Erased) ? (byte)0 : Roms.Blank.Erased;
        for (var i = 0; i < entry.Field.Codec.Reach(entry.Raw.AsSpan()); i++)
        {
            ref var held = ref region[entry.Offset + i];
            held = (byte)((held & ~mask[i]) | (blank & mask[i]));
        }
    }
}
