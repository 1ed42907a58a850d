namespace Cartwright.Patching;

/// <summary>Applies IPS patches. Source: IPS patch format; zeros in gaps and the final length are common practice, from memory.</summary>
internal static class IpsPatch
{
    /// <summary>What the patch says of itself: nothing.</summary>
    public static PatchStatement? Describe(ReadOnlySpan<byte> patch) => new(PatchFormats.Ips);

    /// <inheritdoc cref="PatchApply"/>
    public static PatchResult? Apply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, PatchLog log)
    {
        if (IpsEnd.Find(patch, log) is not { } end) return null;
        var records = patch[PatchFormats.Ips.Magic.Length..end.At];
        var length = Math.Max(image.Length, Reach(records));
        var cut = Math.Min(length, end.Length ?? length);
        if (cut > Patch.LargestResult)
        {
            log.AddWhole(PatchFindings.TooLarge, $"The result would have {PatchWords.Size(cut)}.", $"at most {PatchWords.Size(Patch.LargestResult)}");
            return null;
        }

        if (cut < length) log.Add(PatchFindings.IpsCuts, end.At, $"The result is cut from {PatchWords.Size(length)} to {PatchWords.Size(cut)}");
        var output = new byte[cut];
        image[..Math.Min(cut, image.Length)].CopyTo(output);
        for (; !records.IsEmpty; records = records[IpsRecord.SizeOf(records)..]) new IpsRecord(records).WriteTo(output);
        return new PatchResult(output, PatchChecks.None);
    }

    // The end of the furthest record.
    private static int Reach(ReadOnlySpan<byte> records)
    {
        var reach = 0;
        for (; !records.IsEmpty; records = records[IpsRecord.SizeOf(records)..]) reach = Math.Max(reach, new IpsRecord(records).End);
        return reach;
    }
}
