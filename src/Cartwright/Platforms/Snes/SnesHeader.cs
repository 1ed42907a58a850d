using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Snes;

/// <summary>The header at $00:FFB0-$00:FFDF. The vectors behind it are the program's own bytes.</summary>
public static class SnesHeader
{
    internal const string Battery = "battery";

    private const string Fullsnes = "fullsnes, cartridge chapters";
    private const string Wiki = "SNESdev Wiki, ROM header";
    private const int Complement = 0x2C;
    private const int Checksum = 0x2E;

    // The sub-type is apart: an early form of the header has it alone.
    private static readonly string[] ExtendedNames = ["makerCode", "gameCode", "reserved", "expansionFlash", "expansionRam", "specialVersion"];

    /// <summary>The header where a mapping has it.</summary>
    /// <param name="mapping">How the ROM's address lines are wired.</param>
    public static HeaderTable Table(SnesMapping mapping) =>
        new("internal header", "rom", new HeaderAnchor(mapping.Header), SnesMapping.HeaderLength, [.. Fields(mapping), .. ExtendedFields])
        {
            Checksums =
            [
                new ChecksumRow("complement", Complement, 2, ByteOrder.LittleEndian, rom => SnesChecksum.Complement(rom, mapping.Header + Complement),
                    "the checksum with every bit turned over (XOR $FFFF)", Wiki),
                new ChecksumRow("checksum", Checksum, 2, ByteOrder.LittleEndian, rom => SnesChecksum.Sum(rom, mapping.Header + Complement),
                    "the sum of all bytes modulo 65536, the complement counted as FF FF and the checksum as 00 00, over the ROM completed to a power of two by repeating its remainder", Wiki),
            ],
        };

    /// <summary>The number behind a chipset's text; 0 when the text is none.</summary>
    internal static ulong Chipset(string? text) => SnesValues.Chipset.TryParse(text ?? "", out var value) ? value : 0;

    private static ImmutableArray<HeaderField> Fields(SnesMapping mapping) =>
    [
        new("title", 0x10, 21, new JisTextCodec(), "The game's title, filled up with spaces.", Wiki) { FromCart = CartKey.Title, Required = true },
        Byte("saveRam", 0x28, SnesValues.SaveRam, "Size of the save RAM; code 0 is none, not 1 KiB.") with { Default = "none" },
        Byte("chipset", 0x26, SnesValues.Chipset, "What the cartridge holds besides ROM; from saveRam and battery unless stated.") with { DefaultFrom = PlainChipset },
        Bits("mapModeMark", 0x25, 5, 3, PlainNumber.InDecimal, "Bits 7-5 of the map mode byte, always 1.") with { WorkOut = static _ => "1", Mended = true },
        Bits("speed", 0x25, 4, 1, SnesValues.Speed, "Speed of the ROM chips.") with { Default = "slow" },
        Bits("mapMode", 0x25, 0, 4, SnesValues.MapMode(mapping), "The mapping, with the coprocessors that change it; from mapping unless stated.") with { Default = mapping.Name },
        Byte("romSize", 0x27, SnesValues.RomSize, "Size of the ROM, rounded up to a power of two.") with { WorkOut = RomSize, Mended = true },
        Byte("region", 0x29, SnesValues.Region, "The country the game is for; the lock chip is another matter and must fit the console.") with { Default = "japan" },
        Byte("version", 0x2B, PlainNumber.InDecimal, "The game's revision, 0 for the first.") with { FromCart = CartKey.Revision, Default = "0" },
        Byte("developerId", 0x2A, SnesValues.DeveloperId, "Old maker code; `extended` makes the fields at $FFB0-$FFBF count.")
            with { DefaultFrom = static context => UsesExtended(context) ? SnesValues.Extended : null, Default = "none" },
    ];

    private static readonly ImmutableArray<HeaderField> ExtendedFields =
    [
        Extended("makerCode", 0x00, 2, new TextCodec(0x20), "Maker code, two letters.", "hex 0000"),
        Extended("gameCode", 0x02, 4, new TextCodec(0x20), "Game code; the last letter goes with the region.", "hex 00000000"),
        Extended("reserved", 0x06, 6, new BytesCodec(6), "Reserved, zero.", "000000000000"),
        Extended("expansionFlash", 0x0C, 1, new NumberCodec(BytesPlacement.Byte, SnesValues.Expansion), "Size of an expansion flash.", "none"),
        Extended("expansionRam", 0x0D, 1, new NumberCodec(BytesPlacement.Byte, SnesValues.Expansion), "Size of a coprocessor's RAM.", "none"),
        Extended("specialVersion", 0x0E, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Marks special versions, 0 otherwise.", "0"),
        Extended("chipsetSubtype", 0x0F, 1, new NumberCodec(BytesPlacement.Byte, SnesValues.ChipsetSubtype), "The chip meant by a custom chipset ($Fx).", "0x00")
            with { When = static context => AppliesExtended(context) || context["chipsetSubtype"] is not null || IsCustom(context) },
    ];

    private static HeaderField Byte(string name, int offset, ValueText form, string meaning) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, form), meaning, Fullsnes);

    private static HeaderField Bits(string name, int offset, int lowBit, int bits, ValueText form, string meaning) =>
        new(name, offset, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, lowBit, bits)), form), meaning, Fullsnes);

    private static HeaderField Extended(string name, int offset, int length, FieldCodec codec, string meaning, string otherwise) =>
        new(name, offset, length, codec, meaning, Fullsnes) { Default = otherwise, When = AppliesExtended };

    private static bool AppliesExtended(HeaderContext context) =>
        Same(context["developerId"], SnesValues.Extended) || ExtendedNames.Any(name => context[name] is not null);

    private static bool UsesExtended(HeaderContext context) =>
        ExtendedNames.Any(name => context[name] is not null) || ((context["chipsetSubtype"] is not null || IsCustom(context)) && !IsEarly(context["title"]));

    // The early form marks itself by a zero behind the title, which makes the title no text.
    private static bool IsEarly(string? title) =>
        title is not null && title.StartsWith("hex ", StringComparison.Ordinal) && title.EndsWith("00", StringComparison.Ordinal);

    private static bool IsCustom(HeaderContext context) => SnesValues.IsCustom(Chipset(context["chipset"]));

    private static string PlainChipset(HeaderContext context) =>
        context["saveRam"] is null or "0" ? "rom" : Same(context[Battery], "false") ? "rom-ram" : "rom-ram-battery";

    private static string RomSize(HeaderContext context)
    {
        var size = 1024L;
        while (size < context.LengthOf("rom"))
        {
            size *= 2;
        }

        return ByteSize.Format(size);
    }

    private static bool Same(string? left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
