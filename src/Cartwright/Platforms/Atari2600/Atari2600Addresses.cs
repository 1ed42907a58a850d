using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>The console's 13 address lines; the cartridge is there where line 12 is high.</summary>
/// <param name="scheme">The bank scheme.</param>
public sealed class Atari2600Addresses(BankScheme scheme) : AddressMap
{
    private const string Region = "rom";
    private const int Window = 0x1000;

    /// <inheritdoc/>
    public override string Forms => scheme switch
    {
        { PowerOn: PowerOn.Only } => "an address such as $F000",
        { FixedTop: > 0 } => string.Create(CultureInfo.InvariantCulture, $"bank:address such as 01:F000, or a plain address from ${0x10000 - scheme.FixedTop:X4} on"),
        _ => "bank:address such as 01:F000",
    };

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        // Program files hold the bank above the 16 bits of the address.
        var (bank, at) = address is { Bank: null, Address: > 0xFFFF } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        if (at > 0xFFFF || (at & 0x1FFF) < scheme.WindowStart)
        {
            return AddressPlace.Nowhere($"{address} is not among the cartridge's ROM, which is at ${0xE000 + scheme.WindowStart:X4}-$FFFF (and wherever else line 12 is high)");
        }

        var within = (int)at & (Window - 1);
        return scheme.PowerOn == PowerOn.Only ? Plain(bank, within)
            : within >= Window - scheme.FixedTop && bank is null ? AddressPlace.In(Region, within - Window, Window - within)
            : bank is { } number ? InBank(number, within, address)
            : scheme.Name == "fe" ? InBank((at & 0x2000) == 0 ? 1 : 0, within, address)
            : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} switches banks: write bank:address such as 01:{at:X4}"));
    }

    private AddressPlace Plain(long? bank, int within)
    {
        var at = within % scheme.Bank;
        return bank is > 0
            ? AddressPlace.Nowhere($"the scheme {scheme.Name} has one bank, so that there is no bank {bank:X2}")
            : AddressPlace.In(Region, at - scheme.Bank, scheme.Bank - at);
    }

    private AddressPlace InBank(long bank, int within, ConsoleAddress address)
    {
        var at = within % scheme.Bank;
        return bank >= scheme.Sizes[^1] / scheme.Bank
                ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} has the banks 00 to {(scheme.Sizes[^1] / scheme.Bank) - 1:X2}"))
            : within >= Window - scheme.FixedTop
                ? AddressPlace.Nowhere($"{address} always shows the ROM's last bytes: write it without a bank")
            : AddressPlace.In(Region, (bank * scheme.Bank) + at, scheme.Bank - at);
    }
}
