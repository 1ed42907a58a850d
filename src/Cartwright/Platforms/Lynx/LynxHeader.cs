using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Lynx;

/// <summary>The container of 64 bytes that stands in front of the ROM in the exchange file, and on no chip. The ROM itself begins with the encrypted boot header, which is the program's own.</summary>
public static class LynxHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the container.</summary>
    public const int Length = 0x40;

    private const string Source = "Cartridge headers (The Atari Lynx Book)";
    private const string Memory = "from memory";

    /// <summary>The first bytes of a container.</summary>
    public static ReadOnlySpan<byte> Magic => "LYNX"u8;

    /// <summary>The container of every ROM.</summary>
    public static HeaderTable Table { get; } = new("LYNX container", null, new HeaderAnchor(0), Length,
    [
        new("magic", 0x00, 4, new BytesCodec(4), "The letters LYNX, by which the container is known.", Source) { WorkOut = static _ => Convert.ToHexString(Magic) },
        Word("bank0BlockSize", 0x04, "Bytes of a block of the first bank.") with { WorkOut = static context => Decimal(LynxBlocks.SizeFor(context.LengthOf(Region))) },
        Word("bank1BlockSize", 0x06, "Bytes of a block of the second select line's bank; 0 on nearly every board.") with { Default = "0" },
        Word("version", 0x08, "Version of the container.") with { Default = "1" },
        new("title", 0x0A, 32, new TextCodec(0x00), "The title.", Source) { FromCart = CartKey.Title, Default = "" },
        new("maker", 0x2A, 16, new TextCodec(0x00), "Who made it.", Source) { Default = "" },
        Bits("rotation", 0x3A, 0, 8, new NamedValues(new(0, "none"), new(1, "left"), new(2, "right")), "How the console is held.", Source) with { Default = "none" },
        Bits("audin", 0x3B, 0, 8, NamedValues.Truth, "Whether the line AUDIN switches between two banks.", Source) with { DefaultFrom = static context => IsBanked(context.LengthOf(Region)) ? "true" : "false" },
        Bits("eeprom", 0x3C, 0, 3, new NamedValues(new(0, "none"), new(1, "93C46"), new(2, "93C56"), new(3, "93C66"), new(4, "93C76"), new(5, "93C86")),
            "Serial EEPROM for saves, of 128, 256 or 512 bytes, 1 or 2 KiB.", Source) with { Default = "none" },
        Bits("reserved3C", 0x3C, 3, 3, new PlainNumber(2), "Not used.", Source) with { Default = "0x00" },
        Bits("eepromOnCard", 0x3C, 6, 1, NamedValues.Truth, "Whether saves go to a file of a memory card instead.", Memory) with { Default = "false" },
        Bits("eepromWidth", 0x3C, 7, 1, new NamedValues(new(0, "16"), new(1, "8")), "Bits of a word of the EEPROM.", Memory) with { Default = "16" },
        new("reserved3D", 0x3D, 3, new BytesCodec(3), "Not used.", Source) { Default = "000000" },
    ]);

    /// <summary>Whether a ROM needs a second bank.</summary>
    /// <param name="length">Its length in bytes.</param>
    internal static bool IsBanked(long length) => length > (long)LynxBlocks.Count * LynxBlocks.Largest;

    private static string Decimal(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static HeaderField Word(string name, int offset, string meaning) =>
        new(name, offset, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), PlainNumber.InDecimal), meaning, Source);

    private static HeaderField Bits(string name, int offset, int low, int bits, ValueText form, string meaning, string source) =>
        new(name, offset, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), form), meaning, source);
}
