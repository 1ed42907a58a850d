using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the C128's KERNAL looks for at $8000. The same ten bytes at $C000, where a ROM has them, are the program's own.</summary>
public static class C128Header
{
    /// <summary>Bytes of the header.</summary>
    public const int Length = 10;

    /// <summary>Offset of the mark.</summary>
    public const int MarkAt = 7;

    /// <summary>Offset of the second jump.</summary>
    public const int WarmAt = 3;

    /// <summary>The opcode of a jump.</summary>
    public const byte Jump = 0x4C;

    private const string Source = "Function ROM identification (commodore-128.org); cartridge header layout (commodore-128.org)";

    /// <summary>The mark: CBM.</summary>
    public static ReadOnlySpan<byte> Mark => "CBM"u8;

    /// <summary>The mark with bit 7 set, as one note has it.</summary>
    public static ReadOnlySpan<byte> HighMark => [0xC3, 0xC2, 0xCD];

    /// <summary>The word of the identifier that keeps the ROM from being started.</summary>
    public const string Never = "never";

    /// <summary>The header at the ROM's start.</summary>
    public static HeaderTable Table { get; } = new("function ROM header", CommodoreMapping.Region, new HeaderAnchor(0), Length,
    [
        Opcode("coldJump", 0, "The instruction the machine starts with."),
        Address("coldStart", 1, "Address where the program starts.") with { Required = true },
        Opcode("warmJump", WarmAt, "The instruction the RESTORE key leads to; it must be there."),
        Address("warmStart", WarmAt + 1, "Address the RESTORE key leads to.") with { DefaultFrom = static context => context["coldStart"] },
        new("identifier", 6, 1, new NumberCodec(BytesPlacement.Byte, new NamedValues(
                new NamedValue(0x00, Never, "not started"), new NamedValue(0x01, "at-reset", "by the KERNAL at reset"), new NamedValue(0xFF, "after-basic", "by BASIC after its message, as every other number")))
                { OnesAreSaid = true },
            "When the ROM is started.", Source) { Default = "after-basic" },
        new("mark", MarkAt, 3, new NumberCodec(new BytesPlacement(3, ByteOrder.BigEndian), new NamedValues(
                new NamedValue(0x43424D, "cbm", "43 42 4D"), new NamedValue(0xC3C2CD, "cbm-high", "C3 C2 CD, as one note has it"))),
            "What the KERNAL knows a function ROM by.", Source) { Default = "cbm" },
    ]);

    private static HeaderField Opcode(string name, int offset, string meaning) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, new NamedValues(new NamedValue(Jump, "jmp"))), meaning, Source) { Default = "jmp" };

    private static HeaderField Address(string name, int offset, string meaning) =>
        new(name, offset, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning, Source);
}
