using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

/// <summary>The 24-bit addresses of the console: bank and offset, or both as one number (SNESdev Wiki, Memory map).</summary>
/// <param name="mapping">How the ROM's address lines are wired.</param>
public sealed class SnesAddressMap(SnesMapping mapping) : AddressMap
{
    private const string Region = "rom";

    /// <inheritdoc/>
    public override string Forms => "bank:address such as C0:8000, or both as one number such as $C08000";

    /// <inheritdoc/>
    public override int BankOf(string region) => mapping.High ? 0x10000 : 0x8000;

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is > 0xFF || address.Address > (address.Bank is null ? 0xFFFFFF : 0xFFFF))
        {
            return AddressPlace.Nowhere($"{address} is more than the console's 8 bank lines and 16 address lines can say");
        }

        var linear = (int)(((address.Bank ?? 0) << 16) | address.Address);
        return (linear >> 16) is 0x7E or 0x7F
            ? AddressPlace.Nowhere($"{Name(linear)} is work RAM: banks $7E and $7F never show the ROM")
            : mapping.High ? High(linear) : Low(linear);
    }

    private AddressPlace Low(int linear)
    {
        var bank = (linear >> 16) & 0x7F;
        var within = linear & 0xFFFF;
        var offset = Half(linear) + (bank << 15) + (within & 0x7FFF);
        return within >= 0x8000 ? AddressPlace.In(Region, offset, 0x10000 - within)
            : bank < 0x40 ? SystemArea(linear)
            : bank >= 0x70 ? AddressPlace.Nowhere($"{Name(linear)} is where {mapping.Name} boards have save RAM; the ROM of this bank is at $8000-$FFFF")
            : AddressPlace.In(Region, offset, 0x8000 - within);
    }

    private AddressPlace High(int linear)
    {
        var bank = (linear >> 16) & 0x7F;
        var within = linear & 0xFFFF;
        var offset = Half(linear) + (linear & 0x3FFFFF);
        return bank >= 0x40 ? AddressPlace.In(Region, offset, (linear >= 0xC00000 ? 0x1000000 : 0x7E0000) - linear)
            : within >= 0x8000 ? AddressPlace.In(Region, offset, 0x10000 - within)
            : bank >= 0x20 && within >= 0x6000 ? AddressPlace.Nowhere($"{Name(linear)} is where {mapping.Name} boards have save RAM; the ROM of this bank is at $8000-$FFFF")
            : SystemArea(linear);
    }

    // A23 is inverted on its way to the chip: the upper banks are the first half.
    private int Half(int linear) => linear >= 0x800000 ? 0 : mapping.Start;

    private static AddressPlace SystemArea(int linear) =>
        AddressPlace.Nowhere($"{Name(linear)} belongs to the console's own RAM and registers; the ROM of this bank is at $8000-$FFFF");

    private static string Name(int linear) => string.Create(CultureInfo.InvariantCulture, $"${linear >> 16:X2}:{linear & 0xFFFF:X4}");
}
