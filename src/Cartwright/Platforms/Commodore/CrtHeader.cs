using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>The first 64 bytes of a container. Packets with the ROM's bytes follow; nothing of it is on a chip.</summary>
public static class CrtHeader
{
    /// <summary>Bytes of the header.</summary>
    public const int Length = 0x40;

    /// <summary>Bytes of the signature.</summary>
    public const int SignatureLength = 0x10;

    /// <summary>Offset of the header's length.</summary>
    public const int LengthAt = 0x10;

    /// <summary>Offset of the kind of board.</summary>
    public const int HardwareAt = 0x16;

    /// <summary>Offset of the level of /EXROM.</summary>
    public const int ExromAt = 0x18;

    /// <summary>Offset of the level of /GAME.</summary>
    public const int GameAt = 0x19;

    private const string Source = "CRT file format (codebase64.org)";

    private static readonly NamedValues Level = new(new NamedValue(0, "low", "asserted"), new NamedValue(1, "high"));

    /// <summary>The word for a level.</summary>
    /// <param name="level">0 or 1.</param>
    public static string Word(int level) => Level.Format((ulong)level);

    /// <summary>The container of a C64 cartridge.</summary>
    /// <param name="mapping">How its board shows the ROM.</param>
    public static HeaderTable ForC64(CommodoreMapping mapping) => Table("C64 CARTRIDGE", 0x0100, mapping.Hardware,
    [
        Line("exrom", ExromAt, "Level of the line /EXROM at reset.", mapping, static lines => lines.Exrom),
        Line("game", GameAt, "Level of the line /GAME at reset.", mapping, static lines => lines.Game),
        new("reserved", 0x1A, 6, new BytesCodec(6), "Reserved, zero.", Source) { Default = "000000000000" },
    ]);

    /// <summary>The container of another machine, which has no such lines.</summary>
    /// <param name="signature">Its first words.</param>
    public static HeaderTable For(string signature) => Table(signature, 0x0200, 0,
        [new("reserved", ExromAt, 8, new BytesCodec(8), "Lines of the C64, and reserved; zero.", Source) { Default = "0000000000000000" }]);

    private static HeaderTable Table(string signature, ulong version, int hardware, ReadOnlySpan<HeaderField> lines) => new("CRT container header", null, new HeaderAnchor(0), Length,
    [
        new("signature", 0x00, SignatureLength, new TextCodec(0x20), "What the file is, and for which machine.", Source) { Default = signature },
        Number("headerLength", LengthAt, 4, new PlainNumber(2), "Bytes of this header.", 0x40),
        Number("version", 0x14, 2, new PlainNumber(4), "Version of the format.", version),
        Number("hardware", HardwareAt, 2, PlainNumber.InDecimal, "Kind of board; 0 where the lines say everything.", (ulong)hardware),
        .. lines,
        new("name", 0x20, 0x20, new TextCodec(0x00), "Name of the game.", Source) { FromCart = CartKey.Title, Default = "" },
    ]);

    private static HeaderField Number(string name, int offset, int length, PlainNumber form, string meaning, ulong usual) =>
        new(name, offset, length, new NumberCodec(new BytesPlacement(length, ByteOrder.BigEndian), form), meaning, Source) { Default = form.Format(usual) };

    private static HeaderField Line(string name, int offset, string meaning, CommodoreMapping mapping, Func<CrtLines, int> level) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, Level), meaning, Source)
        {
            DefaultFrom = context => Usual(context, mapping, level),
            // Only where the board's number settles them: without one the lines are what says how the ROM is seen.
            Repair = mapping is { Hardware: > 0, HasOwnLines: false }
                ? new FieldRepair("another level than the board has at reset", (held, context) => Usual(context, mapping, level) is var usual && Level.Format(held[0]) != usual ? usual : null, OnlyNamed: false)
                : null,
        };

    private static string Usual(HeaderContext context, CommodoreMapping mapping, Func<CrtLines, int> level) =>
        Word(level(mapping.LinesFor(context.LengthOf(CommodoreMapping.Region))));
}
