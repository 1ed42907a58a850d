using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Banks of 16 KiB: bank 0 at $0000-$3FFF, one other at $4000-$7FFF (Pan Docs, Memory Map).</summary>
public sealed class GameBoyAddresses : AddressMap
{
    /// <summary>Bytes of a bank.</summary>
    public const int BankSize = 0x4000;

    /// <summary>The number of the last bank a controller can show: MBC5 counts banks in nine bits.</summary>
    public const int LastBank = 0x1FF;

    private const int RomEnd = 0x8000;

    private static readonly (long Last, string What)[] Elsewhere =
    [
        (0x9FFF, "video RAM"),
        (0xBFFF, "cartridge RAM"),
        (0xDFFF, "work RAM"),
        (0xFDFF, "a repeat of work RAM"),
        (0xFE9F, "sprite memory"),
        (0xFEFF, "an area without memory"),
        (0xFF7F, "registers"),
        (0xFFFF, "high RAM"),
    ];

    /// <inheritdoc/>
    public override string Forms =>
        "bank:address such as 03:4000; $0000-$7FFF for banks 0 and 1; or one number with the bank above bit 16, such as $034000";

    /// <inheritdoc/>
    public override int BankOf(string region) => BankSize;

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        var (bank, within) = address is { Bank: null, Address: > 0xFFFF }
            ? (address.Address >> 16, address.Address & 0xFFFF)
            : (address.Bank, address.Address);
        if (Problem(bank, within) is { } problem)
        {
            return AddressPlace.Nowhere(problem);
        }

        // Programs of 32 KiB without banks are one run from $0000 to $7FFF; a stated bank ends where it ends.
        return bank is null
            ? AddressPlace.In(GameBoyHeader.Region, within, RomEnd - within)
            : AddressPlace.In(GameBoyHeader.Region, (bank.Value * BankSize) + (within % BankSize), BankSize - (within % BankSize));
    }

    private static string? Problem(long? bank, long within) => (bank, within) switch
    {
        (_, > 0xFFFF) => string.Create(CultureInfo.InvariantCulture, $"${within:X} is more than the 16 bits an address has"),
        (_, >= RomEnd) => string.Create(CultureInfo.InvariantCulture, $"${within:X4} is {What(within)}"),
        ( > LastBank, _) => string.Create(CultureInfo.InvariantCulture, $"bank ${bank:X} ({bank}) is above the last one, $1FF (511)"),
        (0, >= BankSize) => "bank 0 is seen at $0000-$3FFF",
        ( > 0, < BankSize) => string.Create(CultureInfo.InvariantCulture, $"bank ${bank:X2} is seen at $4000-$7FFF"),
        _ => null,
    };

    private static string What(long address)
    {
        foreach (var (last, what) in Elsewhere)
        {
            if (address <= last)
            {
                return what;
            }
        }

        return "not in the memory map";
    }
}
