using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>What the container tables have in common: rows that are alike, and values that are worked out.</summary>
internal static class NesFields
{
    /// <summary>The first four bytes: NES and an end-of-file mark.</summary>
    public static ReadOnlySpan<byte> Magic => "NES\x1A"u8;

    /// <summary>Bytes of the container header.</summary>
    public const int Length = 16;

    /// <summary>Bytes of a unit of the PRG size.</summary>
    public const long PrgUnit = 16 << 10;

    /// <summary>Bytes of a unit of the CHR size.</summary>
    public const long ChrUnit = 8 << 10;

    /// <summary>The first row of each table.</summary>
    public static HeaderField MagicRow(string source) =>
        new("magic", 0, 4, new BytesCodec(4), "The letters NES and 0x1A, by which the container is known.", source) { WorkOut = static _ => Convert.ToHexString(Magic) };

    /// <summary>Which container it is: bits 3 and 2 of byte 7.</summary>
    public static HeaderField FormatRow(string word, string source) =>
        Bits("formatMark", 7, 2, 2, NesNames.FormatMark, "Tells the generations of the container apart.", source) with { WorkOut = _ => word };

    /// <summary>Bits 3 and 0 of byte 6, once for each way boards read them.</summary>
    public static ImmutableArray<HeaderField> MirroringRows(string source) =>
    [
        Mirroring(NesNames.Mirroring, "How the board wires the nametables. Vertical mirroring is the bit set to 1, and is the same as a horizontal arrangement; the jumper on the board must agree.", source)
            with { When = static context => Number(context) is not (30 or 218) },
        Mirroring(NesNames.Mirroring30, "How the board wires the nametables; this mapper has its own meaning for two of the four values.", "NESdev Wiki, iNES mapper 030")
            with { When = static context => Number(context) == 30 },
        Mirroring(NesNames.Mirroring218, "Which PPU address line chooses the half of the console's video memory; there is no other CHR.", "NESdev Wiki, iNES mapper 218")
            with { When = static context => Number(context) == 218 },
    ];

    /// <summary>Bit 2 of byte 6.</summary>
    public static HeaderField TrainerRow(string source) =>
        Bits("trainer", 6, 2, 1, NamedValues.Truth, "512 bytes before PRG that old loaders put at $7000. No cartridge has them, so it is always false.", source) with { Default = "false" };

    /// <summary>A field of bits within one byte.</summary>
    public static HeaderField Bits(string name, int at, int low, int bits, ValueText form, string meaning, string source) =>
        new(name, at, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), form), meaning, source);

    /// <summary>Bits that are to be zero.</summary>
    public static HeaderField Reserved(string name, int at, string source, params ImmutableArray<BitSlice> slices) =>
        new(name, at, 1, new NumberCodec(new BitsPlacement(slices), new PlainNumber(2)), "Reserved, and zero.", source) { Default = "0x00", Repair = NotZero("0x00") };

    /// <summary>Reserved bits in which somebody left something: zeros are written only on request.</summary>
    /// <param name="zero">The field's text for zero.</param>
    public static FieldRepair NotZero(string zero) => new("bits that should be zero", (_, _) => zero, OnlyNamed: true);

    /// <summary>The mapper number that is stated or read; -1 when it is neither.</summary>
    public static int Number(HeaderContext context) =>
        context["mapper"] is { } text && MapperText.Instance.TryParse(text, out var number) && number <= 0xFFF ? (int)number : -1;

    /// <summary>The size a field states; 0 when it states none.</summary>
    public static long Stated(HeaderContext context, string field) =>
        context[field] is { } text && SizeText.TryRead(text, out var bytes) ? bytes : 0;

    /// <summary>The size of a region, for the field that says it.</summary>
    public static string LengthOf(HeaderContext context, string region) => ByteSize.Format(context.LengthOf(region));

    /// <summary>The submapper that a board's name says, where one number stands for two boards.</summary>
    public static string? Submapper(HeaderContext context) =>
        context["mapper"] is { } text && NesMappers.Named(text)?.Submapper is { } number ? number.ToString(CultureInfo.InvariantCulture) : null;

    /// <summary>CHR RAM of the board when nobody states any.</summary>
    public static string? ChrRam(HeaderContext context)
    {
        var chr = context.LengthOf("chr");
        var submapper = context["submapper"] is { } text && Manifests.Number.TryParse(text, out long number) ? (int)number : 0;
        var row = NesMappers.Find(Number(context), submapper, chr);
        var has = row?.Chr == ChrKind.RomAndRam || (chr == 0 && row?.TakesChrRam == true);
        // What is stated is no truth to hold against a choice of the board's maker.
        return context["chrRam"] is null && has && Stated(context, "chrSaveRam") == 0 ? ByteSize.Format(row!.ChrRam) : null;
    }

    private static HeaderField Mirroring(NamedValues words, string meaning, string source) =>
        new("mirroring", 6, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 1), new BitSlice(0, 3, 1)), words), meaning, source) { Default = words.Names[0].Name };
}
