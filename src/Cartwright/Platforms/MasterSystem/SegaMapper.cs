using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>A way the board switches banks.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Banks">Where banks are seen; null without.</param>
/// <param name="Largest">The largest ROM in bytes.</param>
/// <param name="Meaning">How it works.</param>
public sealed record SegaMapper(string Name, BankWindow? Banks, long Largest, string Meaning)
{
    private const int BankSize = 0x4000;
    private const int SmallBank = 0x2000;
    private const long Unbanked = 48 << 10;

    // Registers of 8 bits: 256 banks.
    private const long LargestBanked = 256 * BankSize;

    private static readonly ImmutableArray<long> Customary = [8 << 10, 16 << 10, 32 << 10, Unbanked, 64 << 10, 128 << 10, 256 << 10, 512 << 10, 1 << 20];

    /// <summary>The console maker's own.</summary>
    public static SegaMapper Sega { get; } = new("sega", new BankWindow(0x0000, 0xC000, BankSize), LargestBanked,
        "slots of 16 KiB at $0000, $4000 and $8000 set by $FFFD, $FFFE and $FFFF; the first 1 KiB always shows bank 0");

    /// <summary>No mapper.</summary>
    public static SegaMapper Linear { get; } = new("linear", null, Unbanked, "no mapper: up to 48 KiB at $0000-$BFFF");

    /// <summary>Registers in the ROM's own addresses.</summary>
    public static SegaMapper ThreeRegister { get; } = new("three-register", new BankWindow(0x0000, 0xC000, BankSize), LargestBanked,
        "slots of 16 KiB set by writing to $0000, $4000 and $8000; they start with banks 0, 1 and 0, and the first 1 KiB is switched too");

    /// <summary>One register.</summary>
    public static SegaMapper OneRegister { get; } = new("one-register", new BankWindow(0x8000, 0xC000, BankSize), LargestBanked,
        "32 KiB fixed, and a bank of 16 KiB at $8000 set by writing to $A000 (from memory)");

    /// <summary>Four registers for banks of 8 KiB.</summary>
    public static SegaMapper FourRegister { get; } = new("four-register", new BankWindow(0x4000, 0xC000, SmallBank), 256 * SmallBank,
        "banks of 8 KiB at $8000, $A000, $4000 and $6000 set by writing to $0000, $0001, $0002 and $0003 (from memory)");

    /// <summary>The sizes of a ROM.</summary>
    public SizeRule Sizes => new([.. Customary.Where(size => size <= Largest)], BankSize, Banks is null
        ? "8, 16, 32 or 48 KiB"
        : $"8, 16, 32, 48, 64, 128, 256 or 512 KiB, or 1 MiB; stated, any number of 16 KiB banks up to {Manifests.ByteSize.Words(Largest)}")
    {
        Largest = Largest,
    };

    /// <summary>The addresses of a ROM.</summary>
    public AddressMap Addresses => new WindowedAddresses(SegaHeader.Region, [new AddressWindow(0, (int)Unbanked, 0)], Banks, SegaMemory.BehindRom);
}
