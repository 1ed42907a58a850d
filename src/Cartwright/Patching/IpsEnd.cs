namespace Cartwright.Patching;

/// <summary>Where the records of an IPS patch end.</summary>
/// <param name="At">Offset of the end mark.</param>
/// <param name="Length">The final length that follows it; null when none does.</param>
internal readonly record struct IpsEnd(int At, int? Length)
{
    /// <summary>The offset that reads as the end mark.</summary>
    public const int EndOffset = 0x454F46;

    // Bytes of the end mark, and of a final length.
    private const int Size = 3;

    private static ReadOnlySpan<byte> Mark => "EOF"u8;

    /// <summary>
    /// Finds the end. An end mark with nothing or a final length behind it ends the patch. One with anything else behind it is a record at
    /// 0x454F46 if records lead from there to such an end; if they do not, the first mark is the end, as most programs have it.
    /// </summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="log">Where findings go.</param>
    /// <returns>The end; null when an error was logged.</returns>
    public static IpsEnd? Find(ReadOnlySpan<byte> patch, PatchLog log)
    {
        var firstMark = -1;
        var at = PatchFormats.Ips.Magic.Length;
        for (var size = 1; size > 0; at += size)
        {
            var left = patch[at..];
            if (left.StartsWith(Mark))
            {
                if (left.Length is Size or (2 * Size)) return Real(patch, at, firstMark, log);
                if (firstMark < 0) firstMark = at;
            }

            size = IpsRecord.SizeOf(left);
        }

        if (firstMark < 0)
        {
            TellBroken(patch, at, log);
            return null;
        }

        log.Add(
            PatchFindings.IpsTextAfterEnd,
            firstMark + Size,
            $"{PatchWords.Size(patch.Length - firstMark - Size)} follow the end mark; the first end mark counts",
            "nothing, or three bytes of a final length");
        return new IpsEnd(firstMark, null);
    }

    private static IpsEnd Real(ReadOnlySpan<byte> patch, int at, int firstMark, PatchLog log)
    {
        if (firstMark >= 0)
        {
            log.Add(
                PatchFindings.IpsOffsetReadsEnd,
                firstMark,
                $"A record begins at {PatchWords.Offset(EndOffset)}, which reads as the end mark; it was taken as a record because the patch goes on and ends properly",
                "a record that begins one byte earlier");
        }

        return new IpsEnd(at, patch.Length - at == Size ? null : IpsRecord.Number24(patch[(at + Size)..]));
    }

    private static void TellBroken(ReadOnlySpan<byte> patch, int at, PatchLog log)
    {
        var left = patch[at..];
        if (IpsRecord.IsEmptyRun(left))
        {
            log.Add(PatchFindings.IpsEmptyRun, at, "The record is a run of 0 bytes", "1 to 65535 bytes");
            return;
        }

        var message = left.IsEmpty ? "The patch ends without its end mark" : $"The patch ends inside the record that begins {PatchWords.Size(left.Length)} before its end";
        log.Add(PatchFindings.EndsEarly, at, message, "records, then the end mark EOF");
    }
}
