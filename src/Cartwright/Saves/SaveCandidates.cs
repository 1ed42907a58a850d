using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Finds what a file can be by its length and by the filler in it. Nothing else of a save is the platform's.</summary>
public static class SaveCandidates
{
    private const int PaddedOnly = 0;
    private const int ExactSize = 1;
    private const int OwnBytes = 1;

    /// <summary>All that a file can be, the best founded first.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="platforms">Ids of the platforms to think of.</param>
    public static ImmutableArray<SaveCandidate> Of(ReadOnlySpan<byte> bytes, IEnumerable<string> platforms)
    {
        ArgumentNullException.ThrowIfNull(platforms);
        var found = new List<SaveCandidate>();
        foreach (var platform in platforms)
        {
            foreach (var kind in SaveKinds.Of(platform))
            {
                Add(found, bytes, platform, kind, kind.HasClock ? SaveClock.LengthIn(bytes.Length) : 0);
            }
        }

        return [.. found.OrderByDescending(static row => row.Strength)];
    }

    private static void Add(List<SaveCandidate> found, ReadOnlySpan<byte> bytes, string platform, SaveKind kind, int clock)
    {
        var body = bytes[..^clock];
        foreach (var layout in kind.Layouts.Select(static word => SaveLayouts.Find(word)!))
        {
            if (layout.MemorySize(body.Length) is { } length && Fits(kind, layout, body, (int)length) is { } fit)
            {
                var reasons = ImmutableArray.Create(fit.Reason);
                var strength = fit.Size == length ? ExactSize : PaddedOnly;
                if (layout.FileUnit > layout.MemoryUnit)
                {
                    reasons = reasons.Add($"{layout.Meaning}, throughout");
                    strength += body.ContainsAnyExcept(body[0]) ? OwnBytes : 0;
                }

                if (clock > 0)
                {
                    reasons = reasons.Add($"{clock} bytes of a clock behind the memory");
                    strength += OwnBytes;
                }

                found.Add(new SaveCandidate(platform, kind, new SaveForm(layout, clock), fit.Size, strength, reasons));
            }
        }
    }

    private static (int Size, string Reason)? Fits(SaveKind kind, SaveLayout layout, ReadOnlySpan<byte> body, int length)
    {
        if (layout.FileUnit > layout.MemoryUnit && layout.FirstForeign(body) >= 0)
            return null;

        if (kind.HasSize(length))
            return (length, $"a memory of {ByteSize.Words(length)}");

        var memory = layout.ToMemory(body);
        foreach (var size in kind.Sizes.Where(size => size < length))
        {
            if (SavePad.Behind(memory, size) is { } pad)
                return (size, $"a memory of {ByteSize.Words(size)}, and {(pad.Fill is null ? "the same again" : $"{pad} throughout")} behind it");
        }

        return null;
    }
}
