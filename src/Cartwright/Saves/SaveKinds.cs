using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>The kinds of save memory of every platform.</summary>
public static class SaveKinds
{
    private const int KiB = 1024;
    private const string Linear = "address order";
    private const string Plain = "plain bytes in address order";
    private const string MegaDriveSource = "ROM Cartridge Data; ROM header reference";
    private const string Nintendo64Source = "N64brew Wiki, ROM Header; Nintendo 64 memory map";
    private const string GameBoySource = "Pan Docs, MBC chapters";
    private const string Gbatek = "GBATEK, GBA chapters";
    private const string NesSource = "NESdev Wiki, NES 2.0; NESdev Wiki, List of mappers";
    private const string WonderSwanSource = "WonderSwan header template; ROM header (ws.nesdev.org)";
    private const string Memory = "from memory";

    private static readonly ImmutableArray<string> Packed = ["packed"];
    private static readonly ImmutableArray<string> Swapped = ["packed", "swap16"];
    private static readonly ImmutableArray<string> AnyWordOrder = ["packed", "swap16", "swap32"];
    private static readonly ImmutableArray<string> Odd = ["packed", "odd-ff", "odd-00", "odd-doubled"];
    private static readonly ImmutableArray<string> Even = ["packed", "even-ff", "even-00", "even-doubled"];

    /// <summary>All of them, those of one platform together.</summary>
    public static ImmutableArray<SaveKind> All { get; } =
    [
        new("high-score", ["a7800"], SaveMemory.Accessory, SaveLanes.EveryByte, [2 * KiB]) { OnChip = Linear, OnConsole = "$1000-$17FF", InFiles = Plain, Layouts = Packed, Source = "A78 Header Specification", FromMemory = true },

        new("sram", ["gb"], SaveMemory.Ram, SaveLanes.EveryByte, [8 * KiB, 32 * KiB, 64 * KiB, 128 * KiB]) { OnChip = "bank 0 first", OnConsole = "banks of 8 KiB at $A000-$BFFF", InFiles = Plain + "; with a clock, 44 or 48 bytes behind them", Layouts = Packed, HasClock = true, Source = GameBoySource + "; File-format wiki: GB (saves)" },
        new("mbc2", ["gb"], SaveMemory.Ram, SaveLanes.EveryByte, [512]) { OnChip = "512 half-bytes", OnConsole = "one half-byte an address at $A000-$A1FF, the high half undefined", InFiles = "one half-byte a byte; packed files of 256 bytes exist, and files of 8192 bytes with the data first", Layouts = ["packed", "nibbles-low", "nibbles-high"], Source = GameBoySource },
        new("mbc7", ["gb"], SaveMemory.SerialEeprom, SaveLanes.Serial, [256]) { OnChip = "128 words of 16 bits", OnConsole = "a serial register", InFiles = "words in order of address; which byte of a word comes first differs", Layouts = Swapped, Source = GameBoySource, FromMemory = true },

        new("sram", ["gba"], SaveMemory.Ram, SaveLanes.EveryByte, [32 * KiB]) { OnChip = Linear, OnConsole = "8-bit at $0E000000", InFiles = Plain, Layouts = Packed, Source = Gbatek },
        new("eeprom", ["gba"], SaveMemory.SerialEeprom, SaveLanes.Serial, [512, 8 * KiB]) { OnChip = "blocks of 8 bytes", OnConsole = "64 bits a block, the most significant first", InFiles = "blocks of 8 bytes; some are stored with the 8 bytes of each block reversed", Layouts = ["packed", "reversed8"], Source = Gbatek + "; EEPROM save types, forum" },
        new("flash", ["gba"], SaveMemory.Flash, SaveLanes.EveryByte, [64 * KiB, 128 * KiB]) { OnChip = "bank 0 first", OnConsole = "8-bit at $0E000000, 128 KiB in two banks", InFiles = Plain, Layouts = Packed, Source = Gbatek },

        new("eeprom", ["gg"], SaveMemory.SerialEeprom, SaveLanes.Serial, [128]) { OnChip = "64 words of 16 bits", OnConsole = "a serial register", InFiles = "words in order of address; the order of their bytes differs", Layouts = Swapped, Source = Memory, FromMemory = true },
        new("sram", ["sms", "gg"], SaveMemory.Ram, SaveLanes.EveryByte, [8 * KiB, 16 * KiB, 32 * KiB]) { OnChip = Linear, OnConsole = "slot 2, $8000-$BFFF", InFiles = Plain + ", often padded to 32 KiB", Layouts = Packed, Source = "Mappers (smspower.org)" },

        new("eeprom", ["lynx"], SaveMemory.SerialEeprom, SaveLanes.Serial, [128, 256, 512, KiB, 2 * KiB]) { OnChip = "words of 16 bits", OnConsole = "a serial line", InFiles = "words in order of address; the order of their bytes differs", Layouts = Swapped, Source = "Cartridge headers (The Atari Lynx Book)", FromMemory = true },

        new("sram-odd", ["md", "32x"], SaveMemory.Ram, SaveLanes.OddBytes, [8 * KiB, 32 * KiB]) { OnChip = Linear + ", chip A0 = VA1", OnConsole = "the odd bytes from $200001 on", InFiles = "packed, or expanded with FF, 00 or a copy at the even bytes, often padded to 64 KiB", Layouts = Odd, Source = MegaDriveSource },
        new("sram-even", ["md", "32x"], SaveMemory.Ram, SaveLanes.EvenBytes, [8 * KiB, 32 * KiB]) { OnChip = Linear + ", chip A0 = VA1", OnConsole = "the even bytes from $200000 on", InFiles = "packed, or expanded with FF, 00 or a copy at the odd bytes", Layouts = Even, Source = MegaDriveSource },
        new("sram-16", ["md", "32x"], SaveMemory.Ram, SaveLanes.Words, [64 * KiB, 512 * KiB]) { OnChip = "words, the even byte on D15-D8", OnConsole = "every byte from $200000 on", InFiles = "plain big-endian words", Layouts = Swapped, Source = MegaDriveSource },
        new("eeprom", ["md", "32x"], SaveMemory.SerialEeprom, SaveLanes.Serial, [128, 256, KiB, 2 * KiB, 8 * KiB]) { OnChip = Linear, OnConsole = "serial at $200001; clock and data bits are the board's", InFiles = Plain, Layouts = Packed, Source = Memory, FromMemory = true },

        new("sram", ["msx"], SaveMemory.Ram, SaveLanes.EveryByte, [2 * KiB, 8 * KiB, 32 * KiB]) { OnChip = Linear, OnConsole = "$8000-$BFFF, repeated within the window", InFiles = Plain, Layouts = Packed, Source = "MegaROM Mappers, msx.org" },

        new("eeprom", ["n64"], SaveMemory.SerialEeprom, SaveLanes.Serial, [512, 2 * KiB]) { OnChip = "blocks of 8 bytes", OnConsole = "blocks of 8 bytes on the serial line", InFiles = "plain bytes", Layouts = Packed, Source = Nintendo64Source },
        new("sram", ["n64"], SaveMemory.Ram, SaveLanes.Words, [32 * KiB, 96 * KiB, 128 * KiB]) { OnChip = "big-endian, banks one behind the other", OnConsole = "big-endian at $08000000; 96 KiB also at $08040000 and $08080000 (from memory)", InFiles = "big-endian, or each 32-bit word reversed, or each 16-bit word swapped", Layouts = AnyWordOrder, Source = Nintendo64Source },
        new("flash", ["n64"], SaveMemory.Flash, SaveLanes.Words, [128 * KiB]) { OnChip = "big-endian", OnConsole = "big-endian at $08000000", InFiles = "big-endian, or each 32-bit word reversed, or each 16-bit word swapped", Layouts = AnyWordOrder, Source = Nintendo64Source },
        new("controller-pak", ["n64"], SaveMemory.Accessory, SaveLanes.EveryByte, [32 * KiB]) { OnChip = Linear, OnConsole = "in the controller, not in the cartridge", InFiles = Plain, Layouts = Packed, Source = Nintendo64Source },

        new("sram", ["nes"], SaveMemory.Ram, SaveLanes.EveryByte, [2 * KiB, 8 * KiB, 16 * KiB, 32 * KiB, 64 * KiB]) { OnChip = "bank 0 first", OnConsole = "banks at $6000-$7FFF", InFiles = Plain, Layouts = Packed, Source = NesSource },
        new("mmc6", ["nes"], SaveMemory.Ram, SaveLanes.EveryByte, [KiB]) { OnChip = "inside the mapper", OnConsole = "$7000-$7FFF", InFiles = Plain, Layouts = Packed, Source = NesSource },
        new("n163", ["nes"], SaveMemory.Ram, SaveLanes.EveryByte, [128, (8 * KiB) + 128]) { OnChip = "inside the mapper", OnConsole = "a register", InFiles = "plain bytes, sometimes behind the 8 KiB of the other RAM", Layouts = Packed, Source = NesSource },
        new("eeprom", ["nes"], SaveMemory.SerialEeprom, SaveLanes.Serial, [128, 256]) { OnChip = Linear, OnConsole = "a serial line", InFiles = Plain, Layouts = Packed, Source = NesSource },
        new("program-flash", ["nes"], SaveMemory.ProgramFlash, SaveLanes.EveryByte, [4 * KiB, 512 * KiB]) { OnChip = "sectors of 4 KiB of the program's chip", OnConsole = "in PRG", InFiles = "a copy of PRG, or of its save sectors", Layouts = Packed, Source = NesSource },

        new("program-flash", ["ngp"], SaveMemory.ProgramFlash, SaveLanes.EveryByte, [8 * KiB, 16 * KiB, 32 * KiB, 64 * KiB]) { OnChip = "blocks of the program's chip", OnConsole = "written by the boot ROM", InFiles = "a copy of the blocks", Layouts = Packed, Source = "NGPC specification text" },

        new("card-ram", ["pce"], SaveMemory.Ram, SaveLanes.EveryByte, [32 * KiB]) { OnChip = Linear, OnConsole = "banks 40-43", InFiles = Plain, Layouts = Packed, Source = "bank maps and page select, public programs" },
        new("console-ram", ["pce"], SaveMemory.Accessory, SaveLanes.EveryByte, [2 * KiB]) { OnChip = Linear, OnConsole = "in the console, not in the cartridge", InFiles = "plain bytes that begin with HUBM", Layouts = Packed, Source = Memory, FromMemory = true },

        new("sram", ["snes"], SaveMemory.Ram, SaveLanes.EveryByte, [2 * KiB, 8 * KiB, 32 * KiB, 64 * KiB, 128 * KiB]) { OnChip = Linear, OnConsole = "lorom: from $70:0000; hirom: $6000-$7FFF of banks $20-$3F or $30-$3F", InFiles = Plain + "; longer files often repeat the content", Layouts = Packed, Source = "fullsnes, cartridge chapters" },

        new("sram", ["vb"], SaveMemory.Ram, SaveLanes.EvenBytes, [8 * KiB]) { OnChip = Linear, OnConsole = "every second address from $06000000 on; which lane is the board's", InFiles = "plain bytes; some are 16 KiB with the lane that is not there", Layouts = ["packed", "even-ff", "even-00", "even-doubled", "odd-ff", "odd-00", "odd-doubled"], Source = Memory, FromMemory = true },

        new("sram", ["ws"], SaveMemory.Ram, SaveLanes.EveryByte, [8 * KiB, 32 * KiB, 128 * KiB, 256 * KiB, 512 * KiB]) { OnChip = Linear, OnConsole = "banks at $10000", InFiles = Plain, Layouts = Packed, Source = WonderSwanSource },
        new("eeprom", ["ws"], SaveMemory.SerialEeprom, SaveLanes.Serial, [128, KiB, 2 * KiB]) { OnChip = "words of 16 bits", OnConsole = "ports C4-C8", InFiles = "words in order of address, low byte first", Layouts = Swapped, Source = WonderSwanSource, FromMemory = true },
    ];

    /// <summary>The kinds of one platform; none where its cartridges keep nothing.</summary>
    /// <param name="platform">The platform's id.</param>
    public static ImmutableArray<SaveKind> Of(string platform) => [.. All.Where(kind => kind.Platforms.Contains(platform, StringComparer.Ordinal))];
}
