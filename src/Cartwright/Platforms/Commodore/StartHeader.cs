using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the machines look for to start a cartridge.</summary>
public static class StartHeader
{
    /// <summary>Bytes of the header of the C64 and the VIC-20.</summary>
    public const int Length = 9;

    /// <summary>Offset of the mark in the header of the C64 and the VIC-20.</summary>
    public const int MarkAt = 4;

    private const string C64Source = "CRT file format (codebase64.org)";
    private const string Vic20Source = "VIC-20 cartridge format (comp.sys.cbm)";

    /// <summary>The C64's mark: CBM80, the first three letters with bit 7 set.</summary>
    public static ReadOnlySpan<byte> C64Mark => [0xC3, 0xC2, 0xCD, 0x38, 0x30];

    /// <summary>The VIC-20's mark: A0CBM, the last three letters with bit 7 set.</summary>
    public static ReadOnlySpan<byte> Vic20Mark => [0x41, 0x30, 0xC3, 0xC2, 0xCD];

    /// <summary>The header the C64's KERNAL looks for at $8000.</summary>
    /// <param name="offset">Where $8000 lies in the ROM.</param>
    public static HeaderTable ForC64(int offset) => Table(offset, new NamedValue(0xC3C2CD3830, "cbm80", "C3 C2 CD 38 30"), C64Source);

    /// <summary>The header the VIC-20's KERNAL looks for at $A000.</summary>
    /// <param name="offset">Where $A000 lies in the ROM.</param>
    public static HeaderTable ForVic20(int offset) => Table(offset, new NamedValue(0x4130C3C2CD, "a0cbm", "41 30 C3 C2 CD"), Vic20Source);

    /// <summary>The vectors of the processor, where the ROM is seen at the top of its addresses.</summary>
    /// <param name="anchor">Where $FFFA lies in the ROM.</param>
    public static HeaderTable Vectors(HeaderAnchor anchor) => new("processor vectors", CommodoreMapping.Region, anchor, 6,
    [
        Address("nmi", 0, "Address of the handler of the RESTORE key.", C64Source),
        Address("reset", 2, "Address where the program starts.", C64Source) with { Required = true },
        Address("irq", 4, "Address of the handler of interrupts.", C64Source),
    ]);

    private static HeaderTable Table(int offset, NamedValue mark, string source) => new("cartridge header", CommodoreMapping.Region, new HeaderAnchor(offset), Length,
    [
        Address("coldStart", 0, "Address where the program starts at power-on; the machine is not set up yet.", source) with { Required = true },
        Address("warmStart", 2, "Address the RESTORE key leads to.", source) with { DefaultFrom = static context => context["coldStart"] },
        new("mark", MarkAt, 5, new NumberCodec(new BytesPlacement(5, ByteOrder.BigEndian), new NamedValues(mark)), "What the KERNAL knows a cartridge by.", source) { Default = mark.Name },
    ]);

    private static HeaderField Address(string name, int offset, string meaning, string source) =>
        new(name, offset, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning, source);
}
