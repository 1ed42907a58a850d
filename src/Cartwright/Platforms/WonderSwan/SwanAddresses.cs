using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>Addresses count from the end of the ROM: $FFFFF is its last byte, bank $FF its last 64 KiB (Mapper, ws.nesdev.org).</summary>
public sealed class SwanAddresses : AddressMap
{
    /// <summary>Where the linear window begins.</summary>
    public const int WindowStart = 0x40000;

    /// <summary>Where it ends.</summary>
    public const int WindowEnd = 0x100000;

    private const int BankSize = 0x10000;
    private const int Banks = 0x100;

    /// <inheritdoc/>
    public override string Forms => "$40000-$FFFFF, or bank:address such as FF:0000, where FF is the last bank of 64 KiB";

    /// <inheritdoc/>
    public override int BankOf(string region) => BankSize;

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize) => address switch
    {
        { Bank: >= Banks } => AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"bank ${address.Bank:X} is above the last one, $FF")),
        { Bank: not null, Address: >= BankSize } => AddressPlace.Nowhere("a bank has 64 KiB, $0000-$FFFF"),
        { Bank: { } bank } => AddressPlace.In(SwanHeader.Region, ((bank - Banks) * BankSize) + address.Address, BankSize - address.Address),
        { Address: >= WindowStart and < WindowEnd } => AddressPlace.In(SwanHeader.Region, address.Address - WindowEnd, WindowEnd - address.Address),
        { Address: < BankSize } => AddressPlace.Nowhere("it is internal RAM"),
        { Address: < 2 * BankSize } => AddressPlace.Nowhere("it is cartridge RAM"),
        { Address: < WindowStart } => AddressPlace.Nowhere("a bank is seen there; name it, as in FF:0000"),
        _ => AddressPlace.Nowhere("it is beyond the processor's 20 bits"),
    };
}
