using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>The blocks of the VIC-20's addresses a ROM may fill.</summary>
public static class Vic20Mappings
{
    /// <summary>The address of the only block the machine starts cartridges in.</summary>
    public const int StartBlock = 0xA000;

    private const int Size = CommodoreMapping.WindowSize;

    private static readonly ImmutableArray<(long Last, string What)> Elsewhere =
        [(0x1FFF, "RAM"), (0x7FFF, "a block this board does not fill"), (0x9FFF, "character ROM and I/O"), (0xBFFF, "a block this board does not fill"), (0xFFFF, "BASIC or KERNAL")];

    /// <summary>All of them, the customary one first.</summary>
    public static ImmutableArray<CommodoreMapping> All { get; } =
    [
        Single("block-5", StartBlock) with { Autostart = 0 },
        Double("blocks-3-5", 0x6000),
        Double("blocks-2-5", 0x4000),
        Double("blocks-1-5", 0x2000),
        Single("block-1", 0x2000),
        Single("block-2", 0x4000),
        Single("block-3", 0x6000),
    ];

    /// <summary>A mapping by name.</summary>
    /// <param name="name">The word, one of <see cref="All"/>.</param>
    public static CommodoreMapping Named(string name) => All.First(mapping => mapping.Name == name);

    private static CommodoreMapping Single(string name, int address) => new(name, new SizeRule([Size / 2, Size], 0, "4 or 8 KiB"),
        new WindowedAddresses(CommodoreMapping.Region, [new AddressWindow(address, address + Size, 0)], null, Elsewhere),
        [new CrtWindow(address, Size)], string.Create(CultureInfo.InvariantCulture, $"from ${address:X4} on{(address == StartBlock ? "" : "; started by hand")}"));

    private static CommodoreMapping Double(string name, int address) => new(name, SizeRule.PowersOfTwo(2 * Size, 2 * Size),
        new WindowedAddresses(CommodoreMapping.Region, [new AddressWindow(address, address + Size, 0), new AddressWindow(StartBlock, StartBlock + Size, Size)], null, Elsewhere),
        [new CrtWindow(address, Size), new CrtWindow(StartBlock, Size)], string.Create(CultureInfo.InvariantCulture, $"8 KiB at ${address:X4}, then 8 KiB at $A000"))
    {
        Autostart = Size,
    };
}
