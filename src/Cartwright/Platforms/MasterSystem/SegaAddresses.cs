using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Three slots of 16 KiB from $0000 on, and banks of 16 KiB (Memory Map, smspower.org).</summary>
public sealed class SegaAddresses : AddressMap
{
    private const int BankSize = 0x4000;
    private const int SlotsEnd = 0xC000;
    private const int LastBank = 0xFF;

    /// <inheritdoc/>
    public override string Forms => "$0000-$BFFF for banks 0 to 2, or bank:address such as 03:8000";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        var (bank, within) = address is { Bank: null, Address: > 0xFFFF } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        if (within >= SlotsEnd)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${within:X4} is work RAM or a register of the mapper"));
        }

        if (bank > LastBank)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"bank ${bank:X} ({bank}) is above the last one, $FF (255)"));
        }

        return bank is null
            ? AddressPlace.In(SegaHeader.Region, within, SlotsEnd - within)
            : AddressPlace.In(SegaHeader.Region, (bank.Value * BankSize) + (within % BankSize), BankSize - (within % BankSize));
    }
}
