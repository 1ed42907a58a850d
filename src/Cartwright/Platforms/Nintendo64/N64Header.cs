using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The header at 0x00-0x3F. The boot code behind it, up to 0xFFF, is the user's own.</summary>
public static class N64Header
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the header.</summary>
    public const int Length = 0x40;

    /// <summary>Where the entry address lies.</summary>
    public const int EntryAt = 0x08;

    /// <summary>The name of the check words.</summary>
    public const string CheckValue = "checkValue";

    /// <summary>Fields that only the homebrew extension has.</summary>
    public static ImmutableArray<string> Extension { get; } = ["controller1", "controller2", "controller3", "controller4", "realTimeClock", "regionFree", "saveMemory"];

    private const string Source = "N64brew Wiki, ROM Header";
    private const string Boot = "Disassembly of the N64 boot stages IPL1/2/3";

    /// <summary>The header for a boot code.</summary>
    /// <param name="chip">The chip whose stock boot code reads the header; null for boot codes that do not read it.</param>
    internal static HeaderTable Table(BootChip? chip) => new("Nintendo 64 header", Region, new HeaderAnchor(0), Length,
    [
        .. Bus,
        .. Start(chip),
        .. chip is null ? Unchecked : [],
        new("reserved18", 0x18, 8, new BytesCodec(8), "Not used.", Source) { Default = "0000000000000000" },
        new("title", 0x20, 20, new TextCodec(0x20), "The title, filled up with spaces.", Source) { FromCart = CartKey.Title, Default = "" },
        .. Game,
        .. Plain,
        .. Extended,
    ])
    {
        Checksums = chip is null ? [] :
        [
            new(CheckValue, 0x10, 8, ByteOrder.BigEndian, rom => CheckWords.Compute(rom, chip), Rule(chip), Boot) { Enforced = true },
        ],
    };

    private static ImmutableArray<HeaderField> Bus =>
    [
        Number("reserved0", 0x00, 1, 2, "Not read; readers of images expect 0x80.") with { Default = "0x80" },
        Bits("pageSize", 0x01, 0, 4, "How much is read before the address is sent again: 7 is 512 bytes, F is 128 KiB.", "0x07"),
        Bits("release", 0x01, 4, 2, "How long the bus rests between two reads.", "0x03"),
        Bits("reserved1", 0x01, 6, 2, "Not read.", "0x00"),
        Number("pulseWidth", 0x02, 1, 2, "How long a read lasts; more for slow chips, FF is about 4 microseconds.") with { Default = "0x12", Source = Boot },
        Number("latency", 0x03, 1, 2, "How long the chip has from the address to the first read.") with { Default = "0x40", Source = Boot },
    ];

    private static ImmutableArray<HeaderField> Start(BootChip? chip) =>
    [
        Number("clockRate", 0x04, 4, 8, "Clock in Hz, its last four bits not read; below 0x10 the usual 62500000.") with { Default = chip is null ? "0x00000000" : "0x0000000F" },
        new("entry", EntryAt, 4, new NumberCodec(new BytesPlacement(4, ByteOrder.BigEndian), new EntryAddress(chip?.EntryShift ?? 0)), EntryMeaning(chip), Boot)
        {
            Required = chip is { FixedEntry: null },
            Default = chip is null ? "0x00000000" : chip.FixedEntry is null ? null : "0x80000480",
        },
        new("systemVersion", 0x0C, 4, new SystemVersionCodec(), "Version of the system library.", Source) { Default = chip is null ? SystemVersionCodec.None : "2.0D" },
    ];

    private static ImmutableArray<HeaderField> Unchecked =>
        [new(CheckValue, 0x10, 8, new BytesCodec(8), "Two check words, which this boot code does not read.", Boot) { Default = "0000000000000000" }];

    private static ImmutableArray<HeaderField> Game =>
    [
        Coded("category", 0x3B, N64Values.Categories, "The medium.", "cartridge"),
        new("uniqueCode", 0x3C, 2, new TextCodec(0x00), "Two letters for the game; ED marks the homebrew extension.", Source) { Default = "", DefaultFrom = ExtensionIfStated },
        Coded("destination", 0x3E, N64Values.Destinations, "Where the game is sold.", "none"),
    ];

    private static ImmutableArray<HeaderField> Plain =>
    [
        new("titleEnd", 0x34, 7, new TextCodec(0x00, endsInBlanks: true), "Not used; older templates let the title run on here.", Source) { Default = "", When = IsPlain },
        new("version", 0x3F, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Revision of the game, from 0; the homebrew extension has no place for it.", Source)
            { FromCart = CartKey.Revision, Default = "0", When = IsPlain },
    ];

    private static ImmutableArray<HeaderField> Extended =>
    [
        .. Enumerable.Range(0, 4).Select(Controller),
        new("reserved38", 0x38, 3, new BytesCodec(3), "Not used.", Source) { Default = "000000", When = IsExtended },
        Flags("realTimeClock", 0, 1, NamedValues.Truth, "Whether the cartridge has a clock.", "false"),
        Flags("regionFree", 1, 1, NamedValues.Truth, "Whether the game runs on consoles of any region.", "false"),
        Flags("reserved3F", 2, 2, new PlainNumber(2), "Not used.", "0x00"),
        Flags("saveMemory", 4, 4, N64Values.Saves, "Kind of save memory on the cartridge.", "none"),
    ];

    private static string EntryMeaning(BootChip? chip) =>
        chip is null ? "Where the program starts in RAM; open boot codes do not read it."
        : chip.FixedEntry is not null ? "Not read: this boot code always starts the program at 0x80000480."
        : chip.EntryShift > 0 ? $"Where the program is copied to in RAM, and started; the header holds 0x{chip.EntryShift:X6} more, as this boot code asks."
        : "Where the program is copied to in RAM, and started.";

    private static string Rule(BootChip chip) => $"six running numbers over the words of 0x001000-0x100FFF, started from seed 0x{chip.Seed:X2}, joined " + chip.Rule switch
    {
        CheckRule.Sum => "by addition",
        CheckRule.Product => "by multiplication",
        CheckRule.Window => "by exclusive or, the boot code's words at 0x750-0x84F mixed in",
        _ => "by exclusive or",
    };

    private static bool IsExtended(HeaderContext context) => context["uniqueCode"] == N64Values.ExtensionCode;

    private static bool IsPlain(HeaderContext context) => !IsExtended(context);

    private static string? ExtensionIfStated(HeaderContext context) => Extension.Any(field => context[field] is not null) ? N64Values.ExtensionCode : null;

    private static HeaderField Number(string name, int offset, int length, int digits, string meaning) =>
        new(name, offset, length, new NumberCodec(new BytesPlacement(length, ByteOrder.BigEndian), new PlainNumber(digits)), meaning, Source);

    private static HeaderField Bits(string name, int offset, int low, int bits, string meaning, string usual) =>
        new(name, offset, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), new PlainNumber(2)), meaning, Boot) { Default = usual };

    private static HeaderField Flags(string name, int low, int bits, ValueText form, string meaning, string usual) =>
        new(name, 0x3F, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, bits)), form), meaning, Source) { Default = usual, When = IsExtended };

    private static HeaderField Controller(int port) =>
        new($"controller{port + 1}", 0x34 + port, 1, new NumberCodec(BytesPlacement.Byte, N64Values.Controllers) { OnesAreSaid = true }, $"What port {port + 1} should hold.", Source)
        {
            Default = "pad",
            When = IsExtended,
        };

    private static HeaderField Coded(string name, int offset, NamedValues words, string meaning, string usual) =>
        new(name, offset, 1, new NumberCodec(BytesPlacement.Byte, words), meaning, Source) { Default = usual };
}
