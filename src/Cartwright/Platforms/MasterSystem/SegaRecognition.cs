using System.Globalization;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Knows images of the 8-bit Sega consoles by their mark, or by how a Z80 program commonly begins.</summary>
internal static class SegaRecognition
{
    private const int Prefix = 0x200;
    private const int BankSize = 0x4000;
    private const int RegionAt = 0x0F;

    // Where a boot ROM looks, in its order.
    private static readonly int[] Marks = [0x7FF0, 0x3FF0, 0x1FF0];

    public static RecognitionClaim? Marked(ReadOnlySpan<byte> file, string console)
    {
        foreach (var prefix in file.Length % BankSize == Prefix ? [0, Prefix] : (int[])[0])
        {
            foreach (var mark in Marks)
            {
                var at = mark + prefix;
                if (file.Length > at + RegionAt && file[at..].StartsWith("TMR SEGA"u8))
                {
                    return Claim(file[at + RegionAt] >> 4, at, prefix, console);
                }
            }
        }

        return null;
    }

    public static RecognitionClaim? Unmarked(ReadOnlySpan<byte> file) =>
        Marked(file, "") is null && StartsLikeZ80(file)
            ? new RecognitionClaim(Certainty.Candidate, "it begins as Z80 programs commonly do, and has no mark of any console")
            : null;

    // The nibble tells the console only weakly: many images carry the other one's.
    private static RecognitionClaim Claim(int region, int at, int prefix, string console)
    {
        var named = region is >= 5 and <= 7 ? SegaFacts.GameGear.Id : SegaFacts.MasterSystem.Id;
        var reason = string.Create(CultureInfo.InvariantCulture, $"`TMR SEGA` at 0x{at:X4}, region nibble {region:X}");
        return new RecognitionClaim(named == console ? Certainty.Exact : Certainty.Candidate, reason) { PrefixLength = prefix };
    }

    private static bool StartsLikeZ80(ReadOnlySpan<byte> file) => file.Length >= 0x100 && file switch
    {
        [0xF3, 0xED, 0x56, ..] => true,
        [0xF3, 0x31, _, >= 0xC0 and <= 0xDF, ..] => true,
        [0x31, 0xF0, 0xDF, 0xF3, ..] => true,
        _ => false,
    };
}
