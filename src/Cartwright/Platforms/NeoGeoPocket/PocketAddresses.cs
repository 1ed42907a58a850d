using Cartwright.Roms;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>Two flash chips of 2 MiB: $200000 and $800000 (NGPC specification text).</summary>
public sealed class PocketAddresses : AddressMap
{
    /// <summary>Bytes of one chip's window.</summary>
    public const int Window = 2 << 20;

    private const int Second = 0x800000;

    /// <inheritdoc/>
    public override string Forms => "$200000-$3FFFFF, or $800000-$9FFFFF for the second chip";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize) => address switch
    {
        { Bank: not null } => AddressPlace.Nowhere("this console has no banks"),
        { Address: >= PocketHeader.Start and < PocketHeader.Start + Window } => In(address.Address - PocketHeader.Start, 0),
        { Address: >= Second and < Second + Window } => In(address.Address - Second, Window),
        { Address: < PocketHeader.Start } => AddressPlace.Nowhere("it is RAM or a register of the console; give the segment a load address in ROM"),
        _ => AddressPlace.Nowhere("no cartridge is there"),
    };

    private static AddressPlace In(long within, long chip) => AddressPlace.In(PocketHeader.Region, chip + within, Window - within);
}
