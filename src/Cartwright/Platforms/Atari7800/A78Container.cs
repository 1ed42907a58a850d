using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari7800;

/// <summary>The A78 container: 128 bytes in front of the ROM in the exchange file, on no chip.</summary>
public static class A78Container
{
    /// <summary>Bytes of the container header.</summary>
    public const int Length = 0x80;

    internal const string Television = "television";

    private const string Source = "A78 Header Specification";
    private const string Newest = "4";
    private const int Mark = 0x64;

    private static readonly NamedValues Controllers = new(new NamedValue(0, "none"), new NamedValue(1, "joystick"), new NamedValue(2, "light-gun"));

    // Bits of the cart type that are no matter of the scheme.
    private static readonly ImmutableArray<(int Bit, string Name, string Meaning)> Extras =
    [
        (0, "soundAt4000", "A sound chip at $4000."),
        (2, "ramAt4000", "RAM at $4000."),
        (5, "bankedRam", "RAM in banks."),
        (6, "soundAt450", "A sound chip at $0450."),
        (7, "mirrorRamAt4000", "RAM at $4000 that repeats."),
        (10, "soundAt440", "A sound chip at $0440."),
        (11, "fmSound", "An FM sound chip."),
    ];

    private static readonly ImmutableArray<(int Bit, string Name, string Meaning)> Schemes =
    [
        (1, "superGame", "The board switches banks of 16 KiB at $8000."),
        (3, "romAt4000", "ROM of its own at $4000."),
        (4, "bank6At4000", "The last bank but one at $4000."),
        (8, "activisionBanks", "The board switches at $FF80-$FF87."),
        (9, "absoluteBanks", "The board switches at $8000 what is at $4000."),
    ];

    private static readonly ImmutableArray<string> NewestFields = ["mapper", "mapperOptions", "audio", "interrupts"];

    internal static ReadOnlySpan<byte> Magic => "ATARI7800"u8;

    internal static ReadOnlySpan<byte> DataMark => "ACTUAL CART DATA STARTS HERE"u8;

    /// <summary>What has its place at $4000, by field names.</summary>
    internal static ImmutableArray<string> At4000 { get; } = ["soundAt4000", "ramAt4000", "mirrorRamAt4000", "romAt4000", "bank6At4000"];

    /// <summary>The table of a scheme.</summary>
    /// <param name="scheme">The scheme.</param>
    public static HeaderTable Table(Atari7800Scheme scheme) => new("A78 container", null, new HeaderAnchor(0), Length,
    [
        Number("version", 0, 1, PlainNumber.InDecimal, "Version of the container, 1 to 4.") with
            { DefaultFrom = static context => NewestFields.Any(field => context[field] is not null) ? Newest : null, Default = "1" },
        new("magic", 0x01, 16, new TextCodec(0), "The letters ATARI7800, by which the container is known.", Source) { WorkOut = static _ => "ATARI7800" },
        new("title", 0x11, 32, new TextCodec(0, endsInBlanks: true), "The game's title.", Source) { FromCart = CartKey.Title },
        Number("romSize", 0x31, 4, PlainNumber.InDecimal, "Bytes of the ROM behind the container.") with
            { WorkOut = static context => context.LengthOf("rom").ToString(CultureInfo.InvariantCulture) },
        .. Schemes.Select(row => TypeBit(row) with { WorkOut = _ => scheme.TypeBits.Contains(row.Bit) ? "true" : "false" }),
        .. Extras.Select(static row => TypeBit(row) with { Default = "false" }),
        Bits("reservedType", 0x35, 4, 4, "Reserved, and zero."),
        Number("controller1", 0x37, 1, Controllers, "What is plugged into the left port.") with { Default = "joystick" },
        Number("controller2", 0x38, 1, Controllers, "What is plugged into the right port.") with { Default = "joystick" },
        new(Television, 0x39, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 1)), new NamedValues(new NamedValue(0, "ntsc"), new NamedValue(1, "pal"))),
            "The television system the game is for.", Source) { Default = "ntsc" },
        Bits("reservedTelevision", 0x39, 1, 7, "Reserved, and zero."),
        Flag("highScoreCartridge", 0x3A, 0, "The game keeps scores on a high-score cartridge."),
        Flag("memoryKey", 0x3A, 1, "The game keeps scores on a memory key."),
        Bits("reservedSave", 0x3A, 2, 6, "Reserved, and zero."),
        Zeros("reserved3B", 0x3B, 4),
        Number("passThrough", 0x3F, 1, new PlainNumber(2), "The device between console and cartridge; 0x00 for none.") with { Default = "0x00" },
        Fourth("mapper", 0x40, 1, "The mapper."),
        Fourth("mapperOptions", 0x41, 1, "Options of the mapper."),
        Fourth("audio", 0x42, 2, "Sound chips."),
        Fourth("interrupts", 0x44, 2, "Sources of interrupts."),
        Zeros("reserved40", 0x40, 6) with { When = static context => !IsNewest(context) },
        Zeros("reserved46", 0x46, Mark - 0x46),
        new("mark", Mark, 28, new TextCodec(0), "The letters ACTUAL CART DATA STARTS HERE.", Source) { WorkOut = static _ => "ACTUAL CART DATA STARTS HERE" },
    ]);

    /// <summary>Whether bytes begin with the container.</summary>
    /// <param name="file">The bytes.</param>
    public static bool Begins(ReadOnlySpan<byte> file) =>
        file.Length >= Length && file[1..].StartsWith(Magic) && file[Mark..].StartsWith(DataMark);

    // The cart type is a number of two bytes, the high one first.
    private static HeaderField TypeBit((int Bit, string Name, string Meaning) row) =>
        new(row.Name, row.Bit < 8 ? 0x36 : 0x35, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, row.Bit & 7, 1)), NamedValues.Truth), row.Meaning, Source);

    private static HeaderField Flag(string name, int at, int bit, string meaning) =>
        new(name, at, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, bit, 1)), NamedValues.Truth), meaning, Source) { Default = "false" };

    private static HeaderField Bits(string name, int at, int low, int bits, string meaning) =>
        new(name, at, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), new PlainNumber(2)), meaning, Source) { Default = "0x00" };

    private static HeaderField Zeros(string name, int at, int length) =>
        new(name, at, length, new BytesCodec(length), "Reserved, and zero.", Source) { Default = new string('0', length * 2) };

    private static HeaderField Fourth(string name, int at, int length, string meaning) =>
        Number(name, at, length, new PlainNumber(length * 2), meaning + " Raw; from version 4 on.") with { When = IsNewest, Default = "0x00" };

    private static HeaderField Number(string name, int at, int length, ValueText form, string meaning) =>
        new(name, at, length, new NumberCodec(new BytesPlacement(length, ByteOrder.BigEndian), form), meaning, Source);

    private static bool IsNewest(HeaderContext context) => context["version"] == Newest;
}
