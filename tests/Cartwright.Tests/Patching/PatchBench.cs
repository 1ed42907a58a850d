using Cartwright.Findings;
using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>Applies and makes patches for tests.</summary>
internal static class PatchBench
{
    private static readonly SourcePlace Place = new("fix.patch");

    public static PatchRun Apply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch)
    {
        var log = new FindingLog();
        var result = Patch.Apply(image, patch, log, Place);
        Assert.Equal(result is null, log.HasErrors);
        return new PatchRun(result, log.ToSorted());
    }

    public static PatchRun Make(PatchFormat format, ReadOnlySpan<byte> image, ReadOnlySpan<byte> target)
    {
        var log = new FindingLog();
        var patch = Patch.Make(format, image, target, log, Place);
        Assert.Equal(patch is null, log.HasErrors);
        return new PatchRun(patch is null ? null : new PatchResult(patch, PatchChecks.None), log.ToSorted());
    }

    /// <summary>The output of a patch that has to apply without an error.</summary>
    public static byte[] Output(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch)
    {
        var run = Apply(image, patch);
        Assert.True(run.Output is not null, run.Text);
        return run.Output;
    }

    /// <summary>Bytes from hex digits; anything else between them is left out.</summary>
    public static byte[] Hex(string text) => Convert.FromHexString(string.Concat(text.Where(char.IsAsciiHexDigit)));

    /// <summary>One byte a character.</summary>
    public static byte[] Ascii(string text) => System.Text.Encoding.ASCII.GetBytes(text);
}
