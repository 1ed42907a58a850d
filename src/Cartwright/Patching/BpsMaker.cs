namespace Cartwright.Patching;

/// <summary>Makes BPS patches: one pass over the target, at each place the copy that saves most.</summary>
internal static class BpsMaker
{
    // A match among new bytes splits them in two: the second part has a head of its own, of one or two bytes.
    private const int LeastGain = 2;

    // Where nothing matched for long, not every place is looked at; a match found late is followed back to its beginning.
    private const int PlacesBeforeHaste = 0x100;
    private const int LongestStep = 32;

    /// <inheritdoc cref="PatchMake"/>
    public static byte[]? Make(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, PatchLog log)
    {
        var writer = new BpsWriter();
        writer.Bytes(PatchFormats.Bps.Magic.AsSpan());
        writer.Number((ulong)image.Length);
        writer.Number((ulong)target.Length);
        writer.Number(0);
        WriteActions(writer, image, target);
        writer.LittleEndian32(Patch.Crc(image));
        writer.LittleEndian32(Patch.Crc(target));
        writer.LittleEndian32(Patch.Crc(writer.Written));
        return writer.Written.ToArray();
    }

    private static void WriteActions(BpsWriter writer, ReadOnlySpan<byte> image, ReadOnlySpan<byte> target)
    {
        var matcher = new BpsMatcher(image, target);
        for (var at = 0; at < target.Length;)
        {
            var match = matcher.Best(at);
            if (match.Gain < LeastGain)
            {
                at += Math.Min(LongestStep, 1 + ((at - matcher.LiteralAt) / PlacesBeforeHaste));
                continue;
            }

            WriteNew(writer, target[matcher.LiteralAt..match.To]);
            WriteCopy(writer, match, matcher);
            matcher.Take(match);
            at = matcher.LiteralAt;
        }

        WriteNew(writer, target[matcher.LiteralAt..]);
    }

    private static void WriteNew(BpsWriter writer, ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty) return;
        writer.Action(BpsCommand.TargetRead, bytes.Length);
        writer.Bytes(bytes);
    }

    private static void WriteCopy(BpsWriter writer, BpsMatch match, BpsMatcher matcher)
    {
        writer.Action(match.Command, match.Length);
        if (match.Command == BpsCommand.SourceCopy) writer.Distance(match.From - matcher.ImageAt);
        if (match.Command == BpsCommand.TargetCopy) writer.Distance(match.From - matcher.TargetAt);
    }
}
