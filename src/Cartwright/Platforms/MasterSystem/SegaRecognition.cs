using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Knows ROMs of the three consoles by their bytes.</summary>
internal static class SegaRecognition
{
    private const int RegionFromMark = 0x0F;
    private const int Head = 0x100;

    private static readonly ImmutableArray<int> Places = [0x7FF0, 0x3FF0, 0x1FF0];

    /// <summary>Where the mark lies, searched in a console's order; null when nowhere.</summary>
    public static int? FindMark(ReadOnlySpan<byte> image)
    {
        foreach (var place in Places)
        {
            if (image.Length >= place + SegaHeader.MarkedLength && image[place..].StartsWith("TMR SEGA"u8))
            {
                return place;
            }
        }

        return null;
    }

    public static bool HasMark(ReadOnlySpan<byte> file) =>
        FindMark(file) is not null || (SegaPrefix.IsLikely(file.Length) && FindMark(file[SegaPrefix.Length..]) is not null);

    /// <summary>A ROM with a header: whose it is, the region says, and that is a hint only.</summary>
    public static RecognitionClaim? Marked(ReadOnlySpan<byte> file, SegaPlatform platform)
    {
        var prefix = SegaPrefix.IsLikely(file.Length) && FindMark(file[SegaPrefix.Length..]) is not null ? SegaPrefix.Length : 0;
        var image = file[prefix..];
        if (FindMark(image) is not { } place)
        {
            return null;
        }

        var region = image[place + RegionFromMark] >> 4;
        var other = SegaHeader.Regions.Names.Any(row => row.Value == (ulong)region) && !platform.Owns(region);
        var reason = string.Create(CultureInfo.InvariantCulture,
            $"{SegaHeader.Mark} at 0x{place:X4}, and the region is {SegaHeader.Regions.Format((ulong)region)}");
        return new RecognitionClaim(other ? Certainty.Structural : Certainty.Exact, reason) { PrefixLength = prefix };
    }

    /// <summary>A ROM without a header: a customary start of a Z80 program, and how many further signs there are.</summary>
    public static RecognitionClaim? Unmarked(ReadOnlySpan<byte> file, int largest)
    {
        if (file.Length < Head || file.Length > largest || !StartsLikeProgram(file))
        {
            return null;
        }

        var score = (HandlesInterrupt(file) ? 1 : 0) + (HandlesPause(file) ? 1 : 0) + (NamesConsole(file[..Head]) ? 1 : 0);
        return new RecognitionClaim(Certainty.Candidate, $"it starts as Z80 programs do, with {score} of 3 further signs and no header") { Score = score };
    }

    private static bool StartsLikeProgram(ReadOnlySpan<byte> file) => file switch
    {
        [0xF3, 0xED, 0x56, ..] => true,
        [0xF3, 0x31, _, >= 0xC0 and <= 0xDF, ..] => true,
        [0xF3, 0xC3, ..] => true,
        [0x31, 0xF0, 0xDF, 0xF3, ..] => true,
        _ => false,
    };

    private static bool HandlesInterrupt(ReadOnlySpan<byte> file) => file[SegaMemory.Interrupt..(SegaMemory.Interrupt + 8)].ContainsAny((byte)0xC9, (byte)0xFB);

    private static bool HandlesPause(ReadOnlySpan<byte> file) => file[SegaMemory.Pause..] is [0xED, 0x45, ..] or [0xC3, ..] or [0x18, ..];

    private static bool NamesConsole(ReadOnlySpan<byte> head) => head.IndexOf("SEGA"u8) >= 0 || head.IndexOf("SG-1000"u8) >= 0 || head.IndexOf("SC-3000"u8) >= 0;
}
