namespace Cartwright.Patching;

/// <summary>Applies BPS patches. Source: BPS File Format Specification.</summary>
internal static class BpsPatch
{
    /// <inheritdoc cref="PatchDescribe"/>
    public static PatchStatement? Describe(ReadOnlySpan<byte> patch) =>
        BpsHeader.Read(patch, PatchLog.Silent()) is { BaseSize: <= long.MaxValue, ResultSize: <= long.MaxValue } header
            ? new PatchStatement(PatchFormats.Bps, (long)header.BaseSize, header.BaseCrc, (long)header.ResultSize, header.ResultCrc, header.Text)
            : null;

    /// <inheritdoc cref="PatchApply"/>
    public static PatchResult? Apply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, PatchLog log)
    {
        if (BpsHeader.Read(patch, log) is not { } header || !IsBase(image, header, log) || !AreSound(patch, header, image.Length, log)) return null;
        var output = GC.AllocateUninitializedArray<byte>((int)header.ResultSize);
        CarryOut(image, patch, new BpsActions(patch, header, image.Length, log), output);
        return IsResult(output, header, log) ? new PatchResult(output, PatchChecks.Patch | PatchChecks.Base | PatchChecks.Result) : null;
    }

    private static bool IsBase(ReadOnlySpan<byte> image, BpsHeader header, PatchLog log)
    {
        var found = Patch.Crc(image);
        var hasSize = (ulong)image.Length == header.BaseSize;
        if (hasSize && found == header.BaseCrc) return true;
        var message = $"The base has {PatchWords.Size(image.Length)} and {PatchWords.Crc(found)}";
        var expected = $"{PatchWords.Size(header.BaseSize)} and {PatchWords.Crc(header.BaseCrc)}";
        if ((ulong)image.Length == header.ResultSize && found == header.ResultCrc)
        {
            return log.Refuse(PatchFindings.AppliedAlready, header.ResultCrcOffset, $"{message}, which are those of the patch's result", expected);
        }

        return hasSize
            ? log.Refuse(PatchFindings.BaseCrc, header.BaseCrcOffset, message, expected)
            : log.Refuse(PatchFindings.BaseSize, PatchFormats.Bps.Magic.Length, message, expected);
    }

    // A few bytes can state any size: room for the result is made only after the actions are known to fill it.
    private static bool AreSound(ReadOnlySpan<byte> patch, BpsHeader header, int baseLength, PatchLog log)
    {
        if (header.ResultSize > Patch.LargestResult)
        {
            return log.Refuse(
                PatchFindings.TooLarge,
                header.ResultSizeAt,
                $"The result is to have {PatchWords.Size(header.ResultSize)}",
                $"at most {PatchWords.Size(Patch.LargestResult)}");
        }

        var actions = new BpsActions(patch, header, baseLength, log);
        while (actions.MoveNext())
        {
        }

        if (actions.HasFailed) return false;
        return actions.Made == (int)header.ResultSize
            || log.Refuse(PatchFindings.ResultSize, header.ResultSizeAt, $"The actions make {PatchWords.Size(actions.Made)}", PatchWords.Size(header.ResultSize));
    }

    private static void CarryOut(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, BpsActions actions, Span<byte> output)
    {
        while (actions.MoveNext())
        {
            if (actions.Command == BpsCommand.TargetCopy)
            {
                OverlapCopy.Forward(output, actions.From, actions.To, actions.Length);
                continue;
            }

            var source = actions.Command == BpsCommand.TargetRead ? patch : image;
            source.Slice(actions.From, actions.Length).CopyTo(output[actions.To..]);
        }
    }

    private static bool IsResult(ReadOnlySpan<byte> output, BpsHeader header, PatchLog log)
    {
        var found = Patch.Crc(output);
        return found == header.ResultCrc
            || log.Refuse(PatchFindings.ResultSum, header.ResultCrcOffset, $"The result has {PatchWords.Crc(found)}", PatchWords.Crc(header.ResultCrc));
    }
}
