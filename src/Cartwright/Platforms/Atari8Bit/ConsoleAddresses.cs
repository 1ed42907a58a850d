using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The 5200's addresses of the cartridge, $4000-$BFFF.</summary>
/// <param name="scheme">How the board shows the ROM.</param>
internal sealed class ConsoleAddresses(ConsoleScheme scheme) : AddressMap
{
    private const string Region = "rom";
    private const int First = 0x4000;
    private const int Middle = 0x8000;
    private const int End = 0xC000;
    private const int Chip = 0x2000;
    private const int Bank = 0x1000;

    /// <inheritdoc/>
    public override string Forms => scheme.Name == ConsoleScheme.Banked
        ? "bank:address such as 02:4000 or 02:5000, or a plain address from $8000 on"
        : "an address such as $8000";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        // Program files hold the bank above the 16 bits of the address.
        var (bank, at) = address is { Bank: null, Address: > 0xFFFF } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        return at is < First or >= End
            ? AddressPlace.Nowhere($"{address} is not among the cartridge's addresses $4000-$BFFF")
            : scheme.Name == ConsoleScheme.Banked && at < Middle ? InBank(bank, (int)at)
            : bank is > 0 ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${at:X4} is never switched: write it without a bank"))
            : scheme.Name == ConsoleScheme.Plain ? Plain((int)at, statedSize(Region))
            : InChip((int)at);
    }

    // A ROM smaller than the window is seen again below; counted from its end both lead to the same bytes.
    private static AddressPlace Plain(int at, long? stated)
    {
        var size = stated is > 0 and <= End - First ? (int)stated : End - First;
        var back = ((End - at - 1) % size) + 1;
        return AddressPlace.In(Region, -back, back);
    }

    // Each chip of 8 KiB is seen twice.
    private static AddressPlace InChip(int at)
    {
        var within = at % Chip;
        return AddressPlace.In(Region, within - (at < Middle ? 2 * Chip : Chip), Chip - within);
    }

    private static AddressPlace InBank(long? bank, int at)
    {
        var within = at % Bank;
        return bank is not { } number ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${at:X4} is switched: write bank:address such as 01:{at:X4}"))
            : number >= 4 || at >= First + (2 * Bank) ? AddressPlace.Nowhere("the banks 00 to 03 are seen at $4000-$4FFF, and four others at $5000-$5FFF")
            : AddressPlace.In(Region, (at < First + Bank ? 0 : 4 * Bank) + (number * Bank) + within, Bank - within);
    }
}
