using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>The boards of C64 cartridges.</summary>
public static class C64Mappings
{
    private const int Roml = 0x8000;
    private const int Romh = 0xA000;
    private const int BehindRomh = 0xC000;
    private const int Top = 0xE000;
    private const int End = 0x10000;
    private const int Half = CommodoreMapping.WindowSize;
    private const int Pair = 2 * Half;
    private const int VectorsLength = 6;

    private static readonly ImmutableArray<(long Last, string What)> Elsewhere =
        [(0x7FFF, "RAM"), (0x9FFF, "not shown by this board"), (0xBFFF, "BASIC or RAM"), (0xCFFF, "RAM"), (0xDFFF, "I/O"), (0xFFFF, "KERNAL or RAM")];

    /// <summary>All of them, the customary one first.</summary>
    public static ImmutableArray<CommodoreMapping> All { get; } =
    [
        Plain("8k", SizeRule.PowersOfTwo(Half, Half), [new(Roml, Romh, 0)], [new(Roml, Half)], "ROML at $8000") with { Lines = CrtLines.OneWindow, Autostart = 0 },
        Plain("16k", SizeRule.PowersOfTwo(Pair, Pair), [new(Roml, BehindRomh, 0)], [new(Roml, Pair)], "ROML at $8000, then ROMH at $A000") with { Lines = CrtLines.TwoWindows, Autostart = 0 },
        Plain("ultimax", new SizeRule([Half / 2, Half], 0, "4 or 8 KiB"), [new(Top, End, -Half)], [new(Top, Half)], "ROMH at $E000 in place of the KERNAL; RAM up to $0FFF only") with
        {
            Lines = CrtLines.Ultimax,
            Align = RegionAlign.End,
            Vectors = new HeaderAnchor(VectorsLength, FromEnd: true),
        },
        Plain("ultimax-16k", SizeRule.PowersOfTwo(Pair, Pair), [new(Roml, Romh, 0), new(Top, End, Half)], [new(Roml, Half), new(Top, Half)], "ROML at $8000, then ROMH at $E000 in place of the KERNAL; RAM up to $0FFF only") with
        {
            Lines = CrtLines.Ultimax,
            Vectors = new HeaderAnchor(VectorsLength, FromEnd: true),
        },
        Banked(5, new SizeRule([32 << 10, 128 << 10, 256 << 10, 512 << 10], 0, "32, 128, 256 or 512 KiB"), 0x3F,
            "one register at $DE00, bits 5-0 the bank of 8 KiB at $8000; with 256 KiB banks 16-31 at $A000") with { SplitSize = 256 << 10 },
        Banked(7, UpTo(16), 0x0F, "bank of 8 KiB at $8000, its bits 0-2 in bits 3-5 and bit 3 in bit 0 of the value written to $DE00; 86 is off"),
        Banked(8, SizeRule.PowersOfTwo(2 * Pair, 4 * Pair), 3, "bank of 16 KiB at $8000 in bits 1-0 of $DF00, bit 2 off, bit 3 lock", Pair) with { Lines = CrtLines.TwoWindows },
        Banked(15, UpTo(64), 0x3F, "bank of 8 KiB at $8000, chosen by a write to $DE00 plus the bank; a read of $DE00-$DEFF is off"),
        Banked(17, UpTo(16), 0x0F, "bank of 8 KiB at $8000, chosen by a read of $DE00 plus the bank"),
        Banked(19, UpTo(128), 0x7F, "bank of 8 KiB at $8000 in bits 6-0 of $DE00, bit 7 off"),
        TwoFlashChips(),
    ];

    /// <summary>A mapping by name.</summary>
    /// <param name="name">The word, one of <see cref="All"/>.</param>
    public static CommodoreMapping Named(string name) => All.First(mapping => mapping.Name == name);

    private static CommodoreMapping Plain(string name, SizeRule sizes, ImmutableArray<AddressWindow> shown, ImmutableArray<CrtWindow> windows, string meaning) =>
        new(name, sizes, new WindowedAddresses(CommodoreMapping.Region, shown, null, Elsewhere), windows, meaning);

    private static CommodoreMapping Banked(int hardware, SizeRule sizes, int lastBank, string meaning, int bankSize = Half)
    {
        // Without a bank an address means the one at reset, bank 0.
        var addresses = new WindowedAddresses(CommodoreMapping.Region, [new AddressWindow(Roml, Roml + bankSize, 0)],
            new BankWindow(Roml, hardware == 5 ? BehindRomh : Roml + bankSize, bankSize, lastBank), Elsewhere);
        return new CommodoreMapping(string.Create(CultureInfo.InvariantCulture, $"type-{hardware}"), sizes, addresses, [new CrtWindow(Roml, bankSize)], meaning)
        {
            Holds = $"banks of {ByteSize.Words(bankSize)}, the one of reset first",
            Hardware = hardware,
            Lines = CrtLines.OneWindow,
            HasOwnLines = true,
            Autostart = 0,
        };
    }

    private static CommodoreMapping TwoFlashChips() => new("type-32", SizeRule.PowersOfTwo(64 * Pair, 64 * Pair),
        new WindowedAddresses(CommodoreMapping.Region, [new(Roml, BehindRomh, 0), new(Top, End, Half)], new BankWindow(Roml, BehindRomh, Pair, 0x3F), Elsewhere),
        [new CrtWindow(Roml, Half), new CrtWindow(Romh, Half)],
        "two flash chips, one for ROML and one for ROMH; bank in $DE00, lines in $DE02; starts as Ultimax in bank 0, so that its ROMH holds the vectors")
    {
        Holds = "64 banks, each 8 KiB of ROML and then 8 KiB of ROMH",
        Hardware = 32,
        Lines = CrtLines.Ultimax,
        ChipKind = CrtPacket.Flash,
        Vectors = new HeaderAnchor(Pair - VectorsLength),
    };

    private static SizeRule UpTo(int banks) => SizeRule.PowersOfTwo(Pair, (long)banks * Half);
}
