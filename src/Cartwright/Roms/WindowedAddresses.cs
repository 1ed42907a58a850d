using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Roms;

/// <summary>Addresses of a processor with 16 address lines: windows that always show the same bytes, and at most one range of banks.</summary>
/// <param name="region">The region all of them show.</param>
/// <param name="windows">What an address without a bank shows.</param>
/// <param name="banks">Where banks are seen; null on boards without.</param>
/// <param name="elsewhere">What lies at the other addresses: the last address of each range, ascending, and its name.</param>
public sealed class WindowedAddresses(string region, ImmutableArray<AddressWindow> windows, BankWindow? banks, ImmutableArray<(long Last, string What)> elsewhere) : AddressMap
{
    private const long AddressLimit = 0x10000;

    /// <inheritdoc/>
    public override string Forms => banks is null ? Ranges : $"{Ranges}; bank:address such as 03:{banks.Start:X4}; or one number with the bank above bit 16, such as $03{banks.Start:X4}";

    /// <inheritdoc/>
    public override int BankOf(string region) => banks?.BankSize ?? 0;

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        var (bank, within) = address is { Bank: null, Address: >= AddressLimit }
            ? (address.Address >> 16, address.Address & (AddressLimit - 1))
            : (address.Bank, address.Address);
        return within >= AddressLimit ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${within:X} is more than the 16 bits an address has"))
            : bank is { } number ? InBank(number, within)
            : Plain(within);
    }

    private string Ranges => string.Join(" or ", windows.Select(static window => string.Create(CultureInfo.InvariantCulture, $"${window.Start:X4}-${window.End - 1:X4}")));

    private AddressPlace Plain(long address)
    {
        foreach (var window in windows)
        {
            if (address >= window.Start && address < window.End)
            {
                return AddressPlace.In(region, window.Offset + (address - window.Start), window.End - address);
            }
        }

        return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${address:X4} is {What(address)}"));
    }

    private AddressPlace InBank(long bank, long address)
    {
        if (banks is null)
        {
            return AddressPlace.Nowhere("this board has no banks");
        }

        if (bank > banks.LastBank)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"bank ${bank:X} ({bank}) is above the last one, ${banks.LastBank:X} ({banks.LastBank})"));
        }

        var within = address % banks.BankSize;
        return address >= banks.Start && address < banks.End
            ? AddressPlace.In(region, (bank * banks.BankSize) + within, banks.BankSize - within)
            : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"banks are seen at ${banks.Start:X4}-${banks.End - 1:X4}, not at ${address:X4}"));
    }

    private string What(long address)
    {
        foreach (var (last, what) in elsewhere)
        {
            if (address <= last)
            {
                return what;
            }
        }

        return "not in the cartridge";
    }
}
