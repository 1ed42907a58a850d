using System.Diagnostics;
using System.IO.Hashing;
using Cartwright.Findings;

namespace Cartwright.Patching;

/// <summary>Applies patches, makes them, and reads what they say of themselves.</summary>
public static class Patch
{
    /// <summary>The most bytes a result may have: 128 MiB, more than any cartridge holds.</summary>
    public const int LargestResult = 0x800_0000;

    /// <summary>Applies a patch to its base.</summary>
    /// <param name="image">The base.</param>
    /// <param name="patch">The whole patch file, of any format of <see cref="PatchFormats"/>.</param>
    /// <param name="log">Where findings go.</param>
    /// <param name="place">The patch file; offsets are filled in.</param>
    /// <returns>The result; null when an error was logged.</returns>
    public static PatchResult? Apply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, FindingLog log, SourcePlace place)
    {
        var own = new PatchLog(log, place);
        if (PatchFormats.Recognise(patch) is not { } format)
        {
            var known = string.Join(", ", PatchFormats.All.Select(static row => $"{row.Name} ({Convert.ToHexString(row.Magic.AsSpan())})"));
            own.Add(PatchFindings.UnknownFormat, 0, $"The file begins with {PatchWords.FirstBytes(patch)}", $"the beginning of one of {known}");
            return null;
        }

        var result = format.ApplyIt(image, patch, own);
        if (result is not null && image.SequenceEqual(result.Output)) own.Add(PatchFindings.ChangesNothing, 0, "The result is the base itself, byte for byte");
        return result;
    }

    /// <summary>Makes a patch and applies it once, so that it is known to work.</summary>
    /// <param name="format">A format that can be made.</param>
    /// <param name="image">The base.</param>
    /// <param name="target">What the patch is to make of it.</param>
    /// <param name="log">Where findings go.</param>
    /// <param name="place">The patch file to be.</param>
    /// <returns>The patch file; null when an error was logged.</returns>
    /// <exception cref="ArgumentException">Patches of this format cannot be made.</exception>
    public static byte[]? Make(PatchFormat format, ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, FindingLog log, SourcePlace place)
    {
        if (format.MakeIt is not { } make) throw new ArgumentException($"{format} patches cannot be made.", nameof(format));
        var own = new PatchLog(log, place);
        if (target.Length > LargestResult)
        {
            own.AddWhole(PatchFindings.TooLarge, $"The new image has {PatchWords.Size(target.Length)}.", $"at most {PatchWords.Size(LargestResult)}");
            return null;
        }

        if (make(image, target, own) is not { } patch) return null;
        var trial = format.ApplyIt(image, patch, PatchLog.Silent());
        return trial is not null && target.SequenceEqual(trial.Output)
            ? patch
            : throw new UnreachableException($"A {format} patch does not make what it was made for.");
    }

    /// <summary>Reads what a patch says of itself.</summary>
    /// <param name="patch">The whole patch file.</param>
    /// <returns>Its statement; null when it is no patch, or damaged.</returns>
    public static PatchStatement? Describe(ReadOnlySpan<byte> patch) => PatchFormats.Recognise(patch)?.DescribeIt(patch);

    internal static uint Crc(ReadOnlySpan<byte> bytes) => Crc32.HashToUInt32(bytes);
}
