using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The computer's addresses of a cartridge slot.</summary>
/// <param name="scheme">How the board shows the ROM.</param>
internal sealed class ComputerAddresses(ComputerScheme scheme) : AddressMap
{
    private const string Region = "rom";

    /// <inheritdoc/>
    public override string Forms => scheme switch
    {
        { Name: "oss" } => "none: write `offset`",
        { Bank: 0 } => string.Create(CultureInfo.InvariantCulture, $"an address such as ${scheme.End - 0x2000:X4}"),
        { FixedTop: > 0 } => string.Create(CultureInfo.InvariantCulture, $"bank:address such as 01:{scheme.Window:X4}, or a plain address from ${scheme.End - scheme.FixedTop:X4} on"),
        _ => string.Create(CultureInfo.InvariantCulture, $"bank:address such as 01:{scheme.Window:X4}"),
    };

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        // Program files hold the bank above the 16 bits of the address.
        var (bank, at) = address is { Bank: null, Address: > 0xFFFF } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        var first = scheme.Bank > 0 ? scheme.Window : scheme.End - (scheme.KiB[^1] * 1024);
        return scheme.Name == "oss" ? AddressPlace.Nowhere("which 4 KiB of an oss ROM show at which address is not known here: write `offset` instead of an address")
            : at < first || at >= scheme.End ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"{address} is not among the cartridge's addresses ${first:X4}-${scheme.End - 1:X4}"))
            : scheme.Bank == 0 || at >= scheme.End - scheme.FixedTop ? Fixed(bank, (int)at)
            : InBank(bank, (int)at);
    }

    private AddressPlace Fixed(long? bank, int at) => bank is > 0
        ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${at:X4} is never switched: write it without a bank"))
        : AddressPlace.In(Region, at - scheme.End, scheme.End - at);

    private AddressPlace InBank(long? bank, int at)
    {
        var banks = scheme.KiB[^1] * 1024 / scheme.Bank;
        return bank is not { } number ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} switches banks at ${at:X4}: write bank:address such as 01:{at:X4}"))
            : number >= banks ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the scheme {scheme.Name} has the banks 00 to {banks - 1:X2}"))
            : AddressPlace.In(Region, (number * scheme.Bank) + (at - scheme.Window), scheme.Window + scheme.Bank - at);
    }
}
