using System.Globalization;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Knows images of the 8-bit Sega consoles by their mark, or by how a Z80 program commonly begins.</summary>
internal static class SegaRecognition
{
    private const int RegionAt = 0x0F;
    private const int Head = 0x100;

    // Where a boot ROM looks, in its order.
    private static readonly int[] Marks = [0x7FF0, 0x3FF0, 0x1FF0];

    public static bool HasMark(ReadOnlySpan<byte> image) => FindMark(image) is not null;

    public static RecognitionClaim? Marked(ReadOnlySpan<byte> file, string console) => CopierPrefix.Best(file, image => Claim(image, console));

    /// <summary>An image without a mark: a customary start, and how many further signs there are. Nothing tells an SG-1000's from a Master System's.</summary>
    public static RecognitionClaim? Unmarked(ReadOnlySpan<byte> file)
    {
        if (file.Length < Head || !StartsLikeZ80(file) || Marked(file, "") is not null)
        {
            return null;
        }

        var score = (HandlesInterrupt(file) ? 1 : 0) + (HandlesPause(file) ? 1 : 0) + (NamesConsole(file[..Head]) ? 1 : 0);
        return new RecognitionClaim(Certainty.Candidate, $"it begins as Z80 programs commonly do, with {score} of 3 further signs, and has no mark of any console") { Score = score };
    }

    // The nibble tells the console only weakly: many images carry the other one's.
    private static RecognitionClaim? Claim(ReadOnlySpan<byte> image, string console)
    {
        if (FindMark(image) is not { } at)
        {
            return null;
        }

        var region = image[at + RegionAt] >> 4;
        var named = region is >= 5 and <= 7 ? SegaFacts.GameGear.Id : SegaFacts.MasterSystem.Id;
        return new RecognitionClaim(named == console ? Certainty.Exact : Certainty.Candidate, string.Create(CultureInfo.InvariantCulture, $"`TMR SEGA` at 0x{at:X4}, region nibble {region:X}"));
    }

    private static int? FindMark(ReadOnlySpan<byte> image)
    {
        foreach (var at in Marks)
        {
            if (image.Length > at + RegionAt && image[at..].StartsWith("TMR SEGA"u8))
            {
                return at;
            }
        }

        return null;
    }

    private static bool StartsLikeZ80(ReadOnlySpan<byte> file) => file switch
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
