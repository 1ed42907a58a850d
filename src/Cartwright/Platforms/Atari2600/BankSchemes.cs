using System.Collections.Immutable;

namespace Cartwright.Platforms.Atari2600;

/// <summary>The bank schemes, a row each.</summary>
public static class BankSchemes
{
    private const int K = 1 << 10;
    private const string Memory = "from memory";
    private const string Sizes = "Bank-Switching (sizes and RAM); hot spots from memory";
    private const string SuperchipWords = "128 bytes, written at $1000-$107F and read at $1080-$10FF";

    /// <summary>All rows, the plain ones first.</summary>
    public static ImmutableArray<BankScheme> All { get; } =
    [
        new("2k", [2 * K], 2 * K, PowerOn.Only, "not switched, seen twice in the window", Memory),
        new("4k", [4 * K], 4 * K, PowerOn.Only, "not switched, fills the window", Memory),
        Superchip(new("4ksc", [4 * K], 4 * K, PowerOn.Only, "not switched", "Bank-Switching")),
        new("cv", [2 * K], 2 * K, PowerOn.Only, "not switched, at $1800-$1FFF", Sizes)
            { WindowStart = 0x1800, Ram = "1 KiB, read at $1000-$13FF and written at $1400-$17FF (from memory)" },
        F8,
        Superchip(F8),
        F6,
        Superchip(F6),
        F4,
        Superchip(F4),
        Whole("fa", 12 * K, 0xFF8, 0xFFA, Memory) with
            { PowerOn = PowerOn.Known, FirstBank = 2, Ram = "256 bytes, written at $1000-$10FF and read at $1100-$11FF", HiddenInBanks = 0x200 },
        new("e0", [8 * K], K, PowerOn.Fixed, "access to $1FE0-$1FE7 for slot 0, $1FE8-$1FEF for slot 1, $1FF0-$1FF7 for slot 2; slot 3 is the last 1 KiB", Sizes)
            { FixedTop = K },
        new("e7", [8 * K, 12 * K, 16 * K], 2 * K, PowerOn.Fixed, "access to $1FE0-$1FE6 chooses the lower 2 KiB, $1FE7 puts RAM there; the upper 2 KiB are the last", "E7")
        {
            FixedTop = 2 * K, HiddenInFixed = 0x200,
            Ram = "1 KiB instead of the lower bank, written at $1000-$13FF and read at $1400-$17FF; a page of 256 bytes by $1FE8-$1FEB, written at $1800-$18FF and read at $1900-$19FF",
        },
        new("fe", [8 * K], 4 * K, PowerOn.Known, "watches $01FE and the data byte after it: bit 5 set for bank 0 (code at $F000), clear for bank 1 (code at $D000)", Memory),
        LastFixed("3f", "writing the bank's number to $00-$3F switches $1000-$17FF; $1800-$1FFF is the last 2 KiB"),
        LastFixed("3e", "as 3f, and writing to $3E shows a bank of RAM instead") with { Ram = "banks of 1 KiB, up to 256 KiB (one table says 32 KiB)" },
        new("ua", [8 * K], 4 * K, PowerOn.Known, "access to $0220 for bank 0, $0240 for bank 1", Memory),
        new("0840", [8 * K], 4 * K, PowerOn.Known, "access to $0800 for bank 0, $0840 for bank 1", Sizes),
        Whole("f0", 64 * K, 0xFF0, 0xFF0, Memory) with { Switching = "access to $1FF0 goes to the next of 16 banks" },
        Ef,
        Superchip(Ef),
        Df,
        Superchip(Df),
        Bf,
        Superchip(Bf),
        new("wd", [8 * K], K, PowerOn.Any, "access to $30-$3F chooses a pattern of four banks: 0 0 1 3, 0 1 2 3, 4 5 6 7, 7 4 2 3, 0 0 6 7, 0 1 7 6, 2 3 4 5, 6 0 5 1", "WD")
            { Ram = "64 bytes, read at $1000-$103F and written at $1040-$107F" },
        Whole("dpc", 8 * K, 0xFF8, 0xFF9, Memory) with { Data = 2 * K },
    ];

    private static BankScheme F8 => Whole("f8", 8 * K, 0xFF8, 0xFF9, "2600 F8 bank switching");

    private static BankScheme F6 => Whole("f6", 16 * K, 0xFF6, 0xFF9, Sizes);

    private static BankScheme F4 => Whole("f4", 32 * K, 0xFF4, 0xFFB, Sizes);

    private static BankScheme Ef => Whole("ef", 64 * K, 0xFE0, 0xFEF, Sizes);

    private static BankScheme Df => Whole("df", 128 * K, 0xFC0, 0xFDF, Sizes);

    private static BankScheme Bf => Whole("bf", 256 * K, 0xF80, 0xFBF, Sizes);

    /// <summary>A row by name; the plain 4 KiB where there is none of it.</summary>
    /// <param name="name">The name.</param>
    public static BankScheme Named(string name) => All.FirstOrDefault(row => row.Name == name) ?? All[1];

    // The whole window at once, a hot spot a bank.
    private static BankScheme Whole(string name, int size, int first, int last, string source) =>
        new(name, [size], 4 * K, PowerOn.Any, $"access to $1{first:X3}-$1{last:X3} chooses the bank", source) { FirstHotSpot = first, LastHotSpot = last };

    private static BankScheme Superchip(BankScheme plain) =>
        plain with { Name = plain.Name.EndsWith("sc", StringComparison.Ordinal) ? plain.Name : plain.Name + "sc", Ram = SuperchipWords, HiddenInBanks = 0x100 };

    private static BankScheme LastFixed(string name, string switching) =>
        new(name, [8 * K, 16 * K, 32 * K, 64 * K, 128 * K, 256 * K, 512 * K], 2 * K, PowerOn.Fixed, switching, "Bank-Switching; 2600 F8 bank switching")
        { Step = 2 * K, FixedTop = 2 * K };
}
