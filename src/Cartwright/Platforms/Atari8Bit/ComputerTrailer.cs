using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The last six bytes of a computer's cartridge, $BFFA-$BFFF in the left slot (Memory map extract, cartridge B).</summary>
internal static class ComputerTrailer
{
    public const int Length = 6;

    public const string Run = "runAddress";
    public const string Present = "cartridgePresent";
    public const string RunCartridge = "runCartridge";
    public const string Diagnostic = "diagnostic";
    public const string BootDisk = "bootDisk";
    public const string Init = "initAddress";

    private const string Source = "Memory map extract, cartridge B";
    private const string BitSource = Source + "; bits from memory";

    public static HeaderTable Table { get; } = new("cartridge trailer", "rom", new HeaderAnchor(Length, FromEnd: true), Length,
    [
        Address(Run, 0, "Where the game starts, when `runCartridge` says so."),
        new(Present, 2, 1, new NumberCodec(BytesPlacement.Byte, new PlainNumber(2)) { ZeroIsSaid = true }, "0x00 says that a cartridge is there.", Source) { Default = "0x00" },
        Option(BootDisk, 0, "Whether the computer starts from disk as well.", "false"),
        Option("reservedOption1", 1, "Not used, and zero.", "false"),
        Option(RunCartridge, 2, "Whether the computer goes to the run address; otherwise to the init address only.", "true"),
        new("reservedOptions3", 3, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 3, 4)), new PlainNumber(1)) { ZeroIsSaid = true }, "Not used, and zero.", BitSource)
            { Default = "0x0" },
        Option(Diagnostic, 7, "Whether the computer goes through the init address at once, before its own set-up.", "false"),
        Address(Init, 4, "What the computer calls while it sets itself up; an RTS is enough.") with { Required = true },
    ]);

    // A program whose option byte is zero means it: initialise and go on.
    private static HeaderField Option(string name, int bit, string meaning, string byDefault) =>
        new(name, 3, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, bit, 1)), NamedValues.Truth) { ZeroIsSaid = true }, meaning, BitSource) { Default = byDefault };

    private static HeaderField Address(string name, int at, string meaning) =>
        new(name, at, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning, Source);
}
