namespace Cartwright.Platforms.GameBoy;

/// <summary>The bank controllers (Pan Docs, chapters on the MBCs, MMM01 and HuC).</summary>
public static class BankControllers
{
    private const long KiB = 1L << 10;
    private const long MiB = 1L << 20;

    /// <summary>No controller.</summary>
    public static BankController None { get; } = new("none", "No banks beyond $0000-$7FFF.", [new(32 * KiB, 8 * KiB)]);

    /// <summary>MBC1.</summary>
    public static BankController Mbc1 { get; } = new("MBC1", "Register 0 acts as 1; banks $20, $40 and $60 cannot be seen at $4000 in the simple way.",
        [new(2 * MiB, 8 * KiB), new(512 * KiB, 32 * KiB)])
    {
        Suggested = true,
        SingleSpeed = true,
    };

    /// <summary>MBC2.</summary>
    public static BankController Mbc2 { get; } = new("MBC2", "Holds 512 half-bytes of RAM itself; only A8 of the address tells RAM enable from bank.",
        [new(256 * KiB, 0)])
    {
        SingleSpeed = true,
    };

    /// <summary>MBC3, and its larger form MBC30.</summary>
    public static BankController Mbc3 { get; } = new("MBC3", "Register 0 acts as 1; clock registers $08-$0C.",
        [new(2 * MiB, 32 * KiB), new(4 * MiB, 64 * KiB, "only the MBC30 shows more than 2 MiB of ROM or 32 KiB of RAM, and one use of it is known")])
    {
        Suggested = true,
        SingleSpeed = true,
    };

    /// <summary>MBC5.</summary>
    public static BankController Mbc5 { get; } = new("MBC5", "Bank 0 can be seen at $4000; nine bits of bank.", [new(8 * MiB, 128 * KiB)]) { Suggested = true };

    /// <summary>MBC5 with a motor on bit 3 of its RAM bank, which leaves eight RAM banks.</summary>
    public static BankController Mbc5Rumble { get; } = new("MBC5 with rumble", "Bit 3 of the RAM bank drives the motor.", [new(8 * MiB, 64 * KiB)]);

    /// <summary>MBC6.</summary>
    public static BankController Mbc6 { get; } = new("MBC6", "ROM half-banks of 8 KiB, RAM half-banks of 4 KiB, 1 MiB of flash besides.", [new(1 * MiB, null)]);

    /// <summary>MBC7.</summary>
    public static BankController Mbc7 { get; } = new("MBC7", "Registers at $A000-$AFFF; 256 bytes of EEPROM (from memory).", [new(2 * MiB, null)]);

    /// <summary>MMM01.</summary>
    public static BankController Mmm01 { get; } = new("MMM01", "The last 32 KiB are seen at $0000-$7FFF after power-on: the menu and its own header are there; games are packed largest first.",
        [new(8 * MiB, 128 * KiB)]);

    /// <summary>HuC1 and HuC3.</summary>
    public static BankController Huc { get; } = new("HuC1 or HuC3", "Infrared.", [new(2 * MiB, 128 * KiB)]) { FromMemory = true };

    /// <summary>A latch that switches all of $0000-$7FFF.</summary>
    public static BankController Latch { get; } = new("32 KiB latch", "All 32 KiB switch at once: vectors, header and reset code in every 32 KiB bank.", []);

    /// <summary>Controllers of which no source here gives limits.</summary>
    public static BankController Other { get; } = new("other", "No limits known.", []);
}
