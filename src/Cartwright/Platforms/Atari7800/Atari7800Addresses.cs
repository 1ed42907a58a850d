using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari7800;

/// <summary>The console's addresses from $4000 on, where cartridges have their ROM.</summary>
/// <param name="scheme">How the board shows it.</param>
public sealed class Atari7800Addresses(Atari7800Scheme scheme) : AddressMap
{
    private const string Region = "rom";
    private const int First = 0x4000;
    private const int End = 0x10000;
    private const int Bank = 0x4000;
    private const int HalfBank = 0x2000;

    /// <inheritdoc/>
    public override string Forms => scheme.Name switch
    {
        "linear" => "an address such as $C000",
        "activision" => "bank:address such as 03:A000, or a plain address outside $A000-$DFFF",
        "absolute" => "bank:address such as 01:4000, or a plain address from $8000 on",
        _ => "bank:address such as 03:8000, or a plain address outside $8000-$BFFF",
    };

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        // Program files hold the bank above the 16 bits of the address.
        var (bank, at) = address is { Bank: null, Address: >= End } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        return at is < First or >= End
            ? AddressPlace.Nowhere($"{address} is not among the cartridge's ROM, which is at $4000-$FFFF")
            : scheme.Name switch
            {
                "linear" => bank is > 0 ? AddressPlace.Nowhere($"the scheme linear has no bank {bank:X2}") : FromEnd((int)at, End),
                "activision" => Halves(bank, (int)at),
                "absolute" => at >= 2 * Bank ? FromEnd((int)at, End) : InBank(bank, (int)at, First, 0, 2),
                _ => SuperGame(bank, (int)at),
            };
    }

    private AddressPlace SuperGame(long? bank, int at)
    {
        var extra = scheme.Name == "supergame-9-bank" ? Bank : 0;
        return at switch
        {
            >= 0xC000 => FromEnd(at, End),
            >= 0x8000 => InBank(bank, at, 0x8000, extra, ((int)scheme.Sizes[^1] - extra) / Bank),
            _ when extra > 0 => AddressPlace.In(Region, at - First, 0x8000 - at),
            _ when scheme.Name == "supergame-bank-6" => AddressPlace.In(Region, at - First - (2 * Bank), 0x8000 - at),
            _ => AddressPlace.Nowhere($"with the scheme {scheme.Name} there is no ROM at $4000-$7FFF"),
        };
    }

    // From $4000 on: bank 6 with its halves exchanged, the upper half of bank 7, a bank of choice, the lower half of bank 7.
    private AddressPlace Halves(long? bank, int at) => at switch
    {
        >= 0xE000 => AddressPlace.In(Region, (7 * Bank) + (at - 0xE000), End - at),
        >= 0xA000 => InBank(bank, at, 0xA000, 0, 8),
        >= 0x8000 => AddressPlace.In(Region, (7 * Bank) + HalfBank + (at - 0x8000), 0xA000 - at),
        >= 0x6000 => AddressPlace.In(Region, (6 * Bank) + (at - 0x6000), 0x8000 - at),
        _ => AddressPlace.In(Region, (6 * Bank) + HalfBank + (at - First), 0x6000 - at),
    };

    private AddressPlace InBank(long? bank, int at, int window, int start, int banks) =>
        bank is not { } number ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} switches banks at ${at:X4}: write bank:address such as 01:{at:X4}"))
        : number >= banks ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} has the banks 00 to {banks - 1:X2} there"))
        : AddressPlace.In(Region, start + (number * Bank) + (at - window), window + Bank - at);

    private static AddressPlace FromEnd(int at, int end) => AddressPlace.In(Region, at - end, end - at);
}
