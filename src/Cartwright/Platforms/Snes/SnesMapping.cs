using System.Collections.Immutable;

namespace Cartwright.Platforms.Snes;

/// <summary>One way to wire the ROM's address lines, and what follows from it.</summary>
/// <param name="Name">The word the manifest uses: <c>lorom</c>.</param>
/// <param name="Title">Offset of the title in the ROM; the other fields lie around it.</param>
/// <param name="BankSize">Bytes of a bank: 32 KiB or 64 KiB.</param>
/// <param name="Start">Offset in the ROM of what bank $00 shows: 0, or 4 MiB where A23 selects the half.</param>
/// <param name="Modes">Low halves of the map mode byte that belong to this place of the header, the customary one first.</param>
/// <param name="Meaning">How the lines run.</param>
public sealed record SnesMapping(string Name, int Title, int BankSize, int Start, ImmutableArray<byte> Modes, string Meaning)
{
    /// <summary>Bytes from the first field of the header to its last: $FFB0 to $FFDF.</summary>
    public const int HeaderLength = 0x30;

    /// <summary>Offset of the title from the header's first byte.</summary>
    public const int TitleInHeader = 0x10;

    /// <summary>Mode 20: 32 KiB a bank, seen at $8000-$FFFF.</summary>
    public static SnesMapping Lorom { get; } = new("lorom", 0x007FC0, 0x8000, 0, [0x0, 0x2, 0x3],
        "A0-A14 straight, A15 not connected, A16-A22 to the chip's A15-A21");

    /// <summary>Mode 21: 64 KiB a bank.</summary>
    public static SnesMapping Hirom { get; } = new("hirom", 0x00FFC0, 0x10000, 0, [0x1, 0xA],
        "A0-A21 straight, A22 and A23 not connected");

    /// <summary>Mode 25: as HiROM, with more than 4 MiB.</summary>
    public static SnesMapping Exhirom { get; } = new("exhirom", 0x40FFC0, 0x10000, 0x400000, [0x5],
        "A0-A21 straight, A23 inverted to the chip's A22: the first 4 MiB are banks $C0-$FF");

    /// <summary>Informal: as LoROM, with more than 4 MiB.</summary>
    public static SnesMapping Exlorom { get; } = new("exlorom", 0x407FC0, 0x8000, 0x400000, [0x2, 0x0],
        "as lorom, and A23 inverted to the chip's A22: the first 4 MiB are banks $80-$FF (from memory)");

    /// <summary>All of them.</summary>
    public static ImmutableArray<SnesMapping> All { get; } = [Lorom, Hirom, Exhirom, Exlorom];

    /// <summary>True where banks hold 64 KiB.</summary>
    public bool High => BankSize == 0x10000;

    /// <summary>True where the ROM is longer than 4 MiB.</summary>
    public bool Extended => Start > 0;

    /// <summary>Offset of the header's first byte, which the processor sees at $00:FFB0.</summary>
    public int Header => Title - TitleInHeader;

    /// <summary>Offset in the ROM of an address of bank $00, $8000 to $FFFF.</summary>
    /// <param name="address">The address.</param>
    public int Offset(int address) => Start + (address & (BankSize - 1));

    /// <summary>A mapping by name.</summary>
    /// <param name="name">The word, one of <see cref="All"/>.</param>
    public static SnesMapping Named(string name) => All.First(mapping => mapping.Name == name);
}
