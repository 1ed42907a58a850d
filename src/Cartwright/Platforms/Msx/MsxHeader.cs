using Cartwright.Headers;

namespace Cartwright.Platforms.Msx;

/// <summary>The 16 bytes the BIOS looks for at $4000 and $8000 of every slot.</summary>
public static class MsxHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the header.</summary>
    public const int Length = 0x10;

    /// <summary>Offset of INIT.</summary>
    public const int Init = 0x02;

    private const int Statement = 0x04;
    private const int Reserved = 0x0A;
    private const string Source = "Develop a program in cartridge ROM, msx.org";

    /// <summary>The header where a mapping has it.</summary>
    /// <param name="mapping">Where the board shows the ROM.</param>
    public static HeaderTable Table(MsxMapping mapping) => new("cartridge header", Region, new HeaderAnchor(mapping.Header), Length,
    [
        new("mark", 0x00, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.BigEndian), new NamedValues(
                new NamedValue(0x4142, "cartridge", "AB"), new NamedValue(0x4344, "sub-rom", "CD: a ROM inside the computer, at $0000"))),
            "What the BIOS knows a cartridge by.", Source) { Default = "cartridge" },
        Pointer("init", Init, "Address the BIOS calls first; games start there and do not return."),
        Pointer("statement", Statement, "Address of the handler for BASIC's CALL, 0 for none.") with { Repair = Letters },
        Pointer("device", 0x06, "Address of the handler for devices, 0 for none.") with { Repair = Letters },
        Pointer("text", 0x08, "Address of a BASIC program in tokens at $8000-$BFFF, 0 for none.") with { Repair = Letters },
        new("reserved", Reserved, 6, new BytesCodec(6), "Reserved, zero.", Source) { Default = "000000000000" },
    ]);

    // The program may read its own letters there.
    private static FieldRepair Letters { get; } = new("letters where an address belongs", static (_, context) =>
        context.Held[Statement..Reserved].ContainsAnyExceptInRange((byte)' ', (byte)'~') ? null : "0x0000", OnlyNamed: true);

    private static HeaderField Pointer(string name, int offset, string meaning) =>
        new(name, offset, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning, Source) { Default = "0x0000" };
}
