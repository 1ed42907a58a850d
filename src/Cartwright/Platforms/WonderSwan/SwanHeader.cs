using Cartwright.Checksums;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>The footer: the last 16 bytes, at whose first the processor starts.</summary>
public static class SwanHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the footer.</summary>
    public const int Length = 0x10;

    private const int ChecksumAt = 0x0E;
    private const string Source = "ROM header (ws.nesdev.org)";

    /// <summary>Sizes of the ROM by code.</summary>
    public static SizeCode RomSizes { get; } = new(
        (0x00UL, 128L << 10), (0x01UL, 256L << 10), (0x02UL, 512L << 10), (0x03UL, 1L << 20), (0x04UL, 2L << 20), (0x05UL, 3L << 20),
        (0x06UL, 4L << 20), (0x07UL, 6L << 20), (0x08UL, 8L << 20), (0x09UL, 16L << 20), (0x0AUL, 32L << 20), (0x0BUL, 64L << 20));

    /// <summary>Kinds of save memory by code.</summary>
    public static NamedValues Saves { get; } = new(
        new(0x00, "none"), new(0x02, "sram-32KiB"), new(0x03, "sram-128KiB"), new(0x04, "sram-256KiB"), new(0x05, "sram-512KiB"),
        new(0x10, "eeprom-128"), new(0x20, "eeprom-2KiB"), new(0x50, "eeprom-1KiB"));

    /// <summary>The footer of every cartridge.</summary>
    public static HeaderTable Table { get; } = new("WonderSwan footer", Region, new HeaderAnchor(Length, FromEnd: true), Length,
    [
        new("entry", 0x00, 5, new FarJumpCodec(), "Where the program begins: the far jump that runs first; F000:0000 goes to $F0000.", Source),
        Byte("maintenance", 0x05, new PlainNumber(2), "Low half 0, or the boot ROM refuses; bit 7 skips the cartridge's own splash.", "0x00"),
        Byte("developer", 0x06, SwanDevelopers.Names, "The publisher, by the letters on the label; any for homebrew.", "none"),
        Bits("console", 0x07, 0, 1, new NamedValues(new(0, "mono"), new(1, "color")), "Whether it is for the Color model.", "mono"),
        Bits("reserved7", 0x07, 1, 7, new PlainNumber(2), "Not used.", "0x00"),
        Byte("gameId", 0x08, new PlainNumber(2), "The last two digits of the product number, in BCD.", "0x00"),
        Bits("version", 0x09, 0, 7, PlainNumber.InDecimal, "Revision of the game, 0 to 127.", "0") with { FromCart = CartKey.Revision },
        Bits("openEeprom", 0x09, 7, 1, NamedValues.Truth, "Leaves the console's own EEPROM unprotected (unverified).", "false"),
        Byte("romSize", 0x0A, RomSizes, "Size of the ROM.", null) with { WorkOut = Size, Mended = true },
        Byte("save", 0x0B, Saves, "Kind of save memory.", "none"),
        Bits("orientation", 0x0C, 0, 1, new NamedValues(new(0, "horizontal"), new(1, "vertical")), "How the console is held.", "horizontal"),
        Bits("busWidth", 0x0C, 2, 1, new NamedValues(new(0, "8"), new(1, "16")), "Data lines of the ROM.", "16"),
        Bits("reservedC", 0x0C, 1, 1, new PlainNumber(2), "Not used.", "0x00"),
        Bits("flags", 0x0C, 3, 5, new PlainNumber(2), "Speed of the ROM in bit 3, and bits whose meaning is not known.", "0x00"),
        Byte("mapper", 0x0D, new NamedValues(new(0, "2001"), new(1, "2003", "also with a clock")), "Bank controller.", "2001"),
    ])
    {
        Checksums =
        [
            new("checksum", ChecksumAt, 2, ByteOrder.LittleEndian, static rom => ByteSum.Sum16(rom[..^2]), "sum of all bytes but the last two, modulo 2^16", Source) { Unread = true },
        ],
    };

    private static string? Size(HeaderContext context)
    {
        // 64 KiB has no code of its own; the smallest there is stands for it.
        var length = Math.Max(context.LengthOf(Region), 128L << 10);
        return RomSizes.TryParse(ByteSize.Format(length), out _) ? ByteSize.Format(length) : null;
    }

    private static HeaderField Byte(string name, int offset, ValueText form, string meaning, string? usual) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, form), meaning, Source) { Default = usual };

    private static HeaderField Bits(string name, int offset, int low, int bits, ValueText form, string meaning, string usual) =>
        new(name, offset, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), form), meaning, Source) { Default = usual };
}
