using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoy;

/// <summary>The cartridge types (Pan Docs, The Cartridge Header).</summary>
public static class CartridgeTypes
{
    /// <summary>ROM alone.</summary>
    public const byte RomOnly = 0x00;

    /// <summary>MBC5 with RAM and battery, which multicart loaders share.</summary>
    public const byte Mbc5RamBattery = 0x1B;

    /// <summary>The value proposed to loaders for latch boards.</summary>
    public const byte LatchBoard = 0xC0;

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<CartridgeType> All { get; } =
    [
        new(RomOnly, "rom", BankControllers.None, RamKind.None, false),
        new(0x01, "mbc1", BankControllers.Mbc1, RamKind.None, false),
        new(0x02, "mbc1-ram", BankControllers.Mbc1, RamKind.Chip, false),
        new(0x03, "mbc1-ram-battery", BankControllers.Mbc1, RamKind.Chip, true),
        new(0x05, "mbc2", BankControllers.Mbc2, RamKind.Inside, false),
        new(0x06, "mbc2-battery", BankControllers.Mbc2, RamKind.Inside, true),
        new(0x08, "rom-ram", BankControllers.None, RamKind.Chip, false, "never sold"),
        new(0x09, "rom-ram-battery", BankControllers.None, RamKind.Chip, true, "never sold"),
        new(0x0B, "mmm01", BankControllers.Mmm01, RamKind.None, false),
        new(0x0C, "mmm01-ram", BankControllers.Mmm01, RamKind.Chip, false),
        new(0x0D, "mmm01-ram-battery", BankControllers.Mmm01, RamKind.Chip, true),
        new(0x0F, "mbc3-timer-battery", BankControllers.Mbc3, RamKind.None, true),
        new(0x10, "mbc3-timer-ram-battery", BankControllers.Mbc3, RamKind.Chip, true),
        new(0x11, "mbc3", BankControllers.Mbc3, RamKind.None, false),
        new(0x12, "mbc3-ram", BankControllers.Mbc3, RamKind.Chip, false),
        new(0x13, "mbc3-ram-battery", BankControllers.Mbc3, RamKind.Chip, true),
        new(0x19, "mbc5", BankControllers.Mbc5, RamKind.None, false),
        new(0x1A, "mbc5-ram", BankControllers.Mbc5, RamKind.Chip, false),
        new(Mbc5RamBattery, "mbc5-ram-battery", BankControllers.Mbc5, RamKind.Chip, true, "with destination 0xE1 loaders take it for an OR-mask multicart"),
        new(0x1C, "mbc5-rumble", BankControllers.Mbc5Rumble, RamKind.None, false),
        new(0x1D, "mbc5-rumble-ram", BankControllers.Mbc5Rumble, RamKind.Chip, false),
        new(0x1E, "mbc5-rumble-ram-battery", BankControllers.Mbc5Rumble, RamKind.Chip, true),
        new(0x20, "mbc6", BankControllers.Mbc6, RamKind.Unsaid, false),
        new(0x22, "mbc7-sensor-rumble-ram-battery", BankControllers.Mbc7, RamKind.Inside, true),
        new(0xBE, "multicart", BankControllers.Other, RamKind.Unsaid, false, "a value proposed to loaders"),
        new(LatchBoard, "latch-32k", BankControllers.Latch, RamKind.None, false, "a value proposed to loaders for boards that switch 32 KiB at once, with destination 0xD1"),
        new(0xFC, "camera", BankControllers.Other, RamKind.Unsaid, false),
        new(0xFD, "tama5", BankControllers.Other, RamKind.Unsaid, false),
        new(0xFE, "huc3", BankControllers.Huc, RamKind.Unsaid, false),
        new(0xFF, "huc1-ram-battery", BankControllers.Huc, RamKind.Chip, true),
    ];

    /// <summary>The words of the manifest.</summary>
    public static NamedValues Words { get; } = new([.. All.Select(static type => new NamedValue(type.Code, type.Name, type.Meaning))]);

    /// <summary>The row of a byte; null when it is none of them.</summary>
    /// <param name="code">The byte at 0x147.</param>
    public static CartridgeType? Find(byte code) => All.FirstOrDefault(type => type.Code == code);
}
