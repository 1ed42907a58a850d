using Cartwright.Checksums;

namespace Cartwright.Patching;

/// <summary>Applies VCDIFF patches. Source: RFC 3284.</summary>
internal static class VcdiffPatch
{
    /// <inheritdoc cref="PatchDescribe"/>
    public static PatchStatement? Describe(ReadOnlySpan<byte> patch) =>
        VcdiffHeader.Read(patch, PatchLog.Silent()) is { } header ? new PatchStatement(PatchFormats.Vcdiff, Text: header.Text) : null;

    /// <inheritdoc cref="PatchApply"/>
    public static PatchResult? Apply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, PatchLog log)
    {
        if (VcdiffHeader.Read(patch, log) is not { } header) return null;
        var cache = new VcdiffAddresses();
        if (Measure(patch, new VcdiffWindows(patch, header, image.Length, log), cache, log) is not { } size) return null;
        if (header.WindowsAt == patch.Length)
        {
            log.Add(PatchFindings.VcdiffNoWindow, header.WindowsAt, "The patch has no window: it makes an empty file", "at least one window");
        }

        var output = GC.AllocateUninitializedArray<byte>(size);
        var windows = new VcdiffWindows(patch, header, image.Length, log);
        var areSummed = size > 0;
        while (windows.MoveNext())
        {
            var window = windows.Current;
            var segments = window.IsFromResult ? output : image;
            var instructions = new VcdiffInstructions(patch, window, cache, log);
            var made = output.AsSpan(windows.Made, window.Size);
            CarryOut(patch, segments.Slice(window.SegmentAt, window.SegmentSize), instructions, made);
            if (!IsResult(made, window, log)) return null;
            areSummed &= window.Adler is not null;
        }

        return new PatchResult(output, areSummed ? PatchChecks.Result : PatchChecks.None);
    }

    // A few bytes can state any size: room for the result is made only after the instructions are known to fill it.
    private static int? Measure(ReadOnlySpan<byte> patch, VcdiffWindows windows, VcdiffAddresses cache, PatchLog log)
    {
        while (windows.MoveNext())
        {
            var instructions = new VcdiffInstructions(patch, windows.Current, cache, log);
            while (instructions.MoveNext())
            {
            }

            if (instructions.HasFailed) return null;
        }

        return windows.HasFailed ? null : windows.Made;
    }

    private static void CarryOut(ReadOnlySpan<byte> patch, ReadOnlySpan<byte> segment, VcdiffInstructions instructions, Span<byte> made)
    {
        while (instructions.MoveNext())
        {
            var target = made.Slice(instructions.To, instructions.Length);
            var from = instructions.From;
            if (instructions.Kind == VcdiffKind.Run) target.Fill(patch[from]);
            else if (instructions.Kind == VcdiffKind.Add) patch.Slice(from, target.Length).CopyTo(target);
            else if (from < segment.Length) segment.Slice(from, target.Length).CopyTo(target);
            else OverlapCopy.Forward(made, from - segment.Length, instructions.To, target.Length);
        }
    }

    private static bool IsResult(ReadOnlySpan<byte> made, VcdiffWindow window, PatchLog log)
    {
        if (window.Adler is not { } stated || Adler32.Of(made) is var found && found == stated) return true;
        return log.Refuse(PatchFindings.ResultSum, window.At, $"What the window makes has Adler-32 0x{Adler32.Of(made):X8}", $"Adler-32 0x{stated:X8}");
    }
}
