using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>The header at 0x00-0xBF.</summary>
public static class AdvanceHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the header.</summary>
    public const int Length = 0xC0;

    /// <summary>Where the byte that is always the same lies.</summary>
    public const int FixedAt = 0xB2;

    /// <summary>Its value.</summary>
    public const byte FixedValue = 0x96;

    private const int CheckedFrom = 0xA0;
    private const int CheckAt = 0xBD;
    private const string Source = "GBATEK, GBA chapters";

    /// <summary>The header of every cartridge.</summary>
    public static HeaderTable Table { get; } = new("Game Boy Advance header", Region, new HeaderAnchor(0), Length,
    [
        new("entry", 0x00, 4, new BytesCodec(4), "Code that runs first: an ARM branch; 2E0000EA goes to 0xC0, behind the header.", Source) { Default = "2E0000EA" },
        new("bitmap", BootBitmap.Offset, BootBitmap.Bytes.Length, new BitmapCodec(BootBitmap.Bytes), "The picture the BIOS shows and compares before it starts the cartridge.", "crt0.S v1.28, GBA start-up file")
            { Default = BitmapCodec.WriteWord, Mended = true },
        Text("title", 0xA0, 12, "The title, filled up with 00.") with { FromCart = CartKey.Title },
        Text("gameCode", 0xAC, 4, "Four letters: kind of game, two of the title, region."),
        Text("makerCode", 0xB0, 2, "Two letters for the publisher."),
        Byte("fixedValue", FixedAt, "A byte that is always 0x96.") with { Default = "0x96", Mended = true },
        Byte("unitCode", 0xB3, "The console it is for; 00 for all."),
        Byte("deviceType", 0xB4, "Bit 7 is for debug hardware; otherwise 00."),
        new("reserved1", 0xB5, 7, new BytesCodec(7), "Not used.", Source) { Default = "00000000000000" },
        new("version", 0xBC, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Revision of the game, from 0.", Source) { FromCart = CartKey.Revision, Default = "0" },
        new("reserved2", 0xBE, 2, new BytesCodec(2), "Not used.", Source) { Default = "0000" },
    ])
    {
        Checksums =
        [
            new("complement", CheckAt, 1, ByteOrder.LittleEndian, static rom => Complement(rom),
                "0, less each byte of 0xA0-0xBC, less 0x19, modulo 2^8", Source) { Enforced = true },
        ],
    };

    /// <summary>The complement check of a header.</summary>
    /// <param name="rom">The ROM from its first byte, at least as long as the header.</param>
    public static byte Complement(ReadOnlySpan<byte> rom) => (byte)(-(Checksums.ByteSum.Sum16(rom[CheckedFrom..CheckAt]) + 0x19));

    /// <summary>Whether a header's complement check is right.</summary>
    /// <param name="rom">The ROM from its first byte, at least as long as the header.</param>
    public static bool ComplementIsRight(ReadOnlySpan<byte> rom) => rom[CheckAt] == Complement(rom);

    private static HeaderField Text(string name, int offset, int length, string meaning) =>
        new(name, offset, length, new TextCodec(0x00, endsInBlanks: true), meaning, Source) { Default = "" };

    private static HeaderField Byte(string name, int offset, string meaning) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, new PlainNumber(2)), meaning, Source) { Default = "0x00" };
}
