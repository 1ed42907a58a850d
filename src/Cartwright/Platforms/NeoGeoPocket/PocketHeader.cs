using Cartwright.Headers;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>The header: the first 64 bytes. There is no checksum of any kind.</summary>
public static class PocketHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the header.</summary>
    public const int Length = 0x40;

    /// <summary>The address of the ROM's first byte.</summary>
    public const int Start = 0x200000;

    /// <summary>The texts the boot ROM takes.</summary>
    public static IReadOnlyList<string> Licences { get; } = [" LICENSED BY SNK CORPORATION", "COPYRIGHT BY SNK CORPORATION"];

    private const string Source = "NGPC specification text (devrs.com)";

    /// <summary>The header of every cartridge.</summary>
    public static HeaderTable Table { get; } = new("Neo Geo Pocket header", Region, new HeaderAnchor(0), Length,
    [
        new("licence", 0x00, 28, new TextCodec(0x00), "The text the boot ROM looks for.", Source) { Default = Licences[0] },
        new("entry", 0x1C, 4, new NumberCodec(new BytesPlacement(4, ByteOrder.LittleEndian), new PlainNumber(8)), "Address where the program begins.", Source) { Default = "0x00200040" },
        new("softwareId", 0x20, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), "Number of the game, four digits in BCD; 0 for none.", Source) { Default = "0x0000" },
        new("version", 0x22, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Revision of the game.", Source) { FromCart = CartKey.Revision, Default = "0" },
        new("console", 0x23, 1, new NumberCodec(BytesPlacement.Byte, new NamedValues(new(0x00, "mono"), new(0x10, "color"))), "Whether it is for the Color model.", Source) { Default = "color" },
        new("title", 0x24, 12, new TextCodec(0x20), "The title, filled up with spaces.", Source) { FromCart = CartKey.Title, Default = "" },
        new("reserved", 0x30, 16, new BytesCodec(16), "Not used.", Source)
        {
            Default = new string('0', 32),
            Repair = new FieldRepair("erased bytes where zeros belong", static (held, _) => held.ContainsAnyExcept((byte)0xFF) ? null : new string('0', 32), OnlyNamed: true),
        },
    ]);
}
