using System.Collections.Immutable;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>The 156 bytes at 0x04 that the BIOS shows and compares before it starts a cartridge (crt0.S v1.28, GBA start-up file).</summary>
public static class BootBitmap
{
    /// <summary>Its first byte in the ROM.</summary>
    public const int Offset = 0x04;

    /// <summary>Where bits 2 and 7 are not compared: they open the debug handler.</summary>
    public const int DebugAt = 0x9C;

    /// <summary>Where bits 0 and 1 are not compared: they belong to a key number.</summary>
    public const int KeyAt = 0x9E;

    private const byte DebugBits = 0x84;
    private const byte KeyBits = 0x03;

    /// <summary>The bytes, with the bits that are not compared at their usual values.</summary>
    public static ImmutableArray<byte> Bytes { get; } =
    [
        .. Convert.FromHexString(
            "24FFAE51699AA2213D84820A84E409AD11248B98C0817F21A352BE199309CE2010464A4AF827"
            + "31EC58C7E83382E3CEBF85F4DF94CE4B09C194568AC01372A7FC9F844D73A3CA9A615897A327"
            + "FC039876231DC7610304AE56BF38840040A70EFDFF52FE036F9530F197FBC08560D68025A963"
            + "BE03014E38E2F9A234FFBB3E0344780090CB88113A9465C07C6387F03CAFD625E48B380AAC72"
            + "21D4F807"),
    ];

    /// <summary>The first byte that the BIOS would find different, counted from the bitmap's first; null when it starts the cartridge.</summary>
    /// <param name="field">The 156 bytes of the cartridge.</param>
    public static int? FirstWrong(ReadOnlySpan<byte> field)
    {
        for (var i = 0; i < Bytes.Length; i++)
        {
            if (((field[i] ^ Bytes[i]) & ~Ignored(i)) != 0)
            {
                return i;
            }
        }

        return null;
    }

    private static byte Ignored(int index) => (index + Offset) switch
    {
        DebugAt => DebugBits,
        KeyAt => KeyBits,
        _ => 0,
    };
}
