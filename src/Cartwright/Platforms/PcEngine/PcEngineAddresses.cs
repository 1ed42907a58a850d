using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.PcEngine;

/// <summary>
/// The processor sees banks of 8 KiB through eight mapping registers, so a place is a bank and an address of which the lower
/// 13 bits count, or the 21-bit address that the two make.
/// </summary>
/// <param name="pages">True for a card that shows pages in its upper half; its banks then count on through the pages.</param>
public sealed class PcEngineAddresses(bool pages) : AddressMap
{
    private const int Logical = 0x10000;
    private const int FirstOtherBank = 0x80;
    private const int FirstSystemBank = 0xF7;
    private const int LastBank = 0xFF;
    private const int ThreeEighthsEnd = HuCard.UpperHalf + HuCard.ThreeEighths - HuCard.ThreeEighthsFirst;

    private int Banks => (pages ? HuCard.Paged : HuCard.Window) / HuCard.Bank;

    /// <inheritdoc/>
    public override string Forms => pages
        ? "bank:address such as 03:C000, where banks 40-7F are page 0, 80-BF page 1, C0-FF page 2, 100-13F page 3; or a 21-bit address from $000000 to $07FFFF"
        : "bank:address such as 03:C000, of which the lower 13 bits count, or a 21-bit address from $000000 to $0FFFFF";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address is { Bank: not null, Address: >= Logical })
        {
            return AddressPlace.Nowhere("an address behind a bank has 16 bits");
        }

        var bank = address.Bank ?? (address.Address / HuCard.Bank);
        if (bank >= Banks || (pages && address.Bank is null && bank >= HuCard.UpperHalf / HuCard.Bank))
        {
            return AddressPlace.Nowhere(Describe(bank));
        }

        var physical = (bank * HuCard.Bank) + (address.Address % HuCard.Bank);
        return statedSize(HuCard.Region) == HuCard.ThreeEighths ? InThreeEighths(physical)
            : AddressPlace.In(HuCard.Region, physical, (address.Bank is null ? End : (bank + 1) * HuCard.Bank) - physical);
    }

    private long End => pages ? HuCard.UpperHalf : HuCard.Window;

    private static AddressPlace InThreeEighths(long physical) => physical switch
    {
        < HuCard.ThreeEighthsFirst => AddressPlace.In(HuCard.Region, physical, HuCard.ThreeEighthsFirst - physical),
        < HuCard.UpperHalf => AddressPlace.Nowhere("in a card of 384 KiB banks 20-3F show banks 00-1F again"),
        < ThreeEighthsEnd => AddressPlace.In(HuCard.Region, physical - HuCard.UpperHalf + HuCard.ThreeEighthsFirst, ThreeEighthsEnd - physical),
        _ => AddressPlace.Nowhere("in a card of 384 KiB banks 50-7F show banks 40-4F again"),
    };

    private string Describe(long bank) => bank switch
    {
        < FirstOtherBank when pages => "the upper half of this card shows pages; name the bank, such as 40:4000",
        > LastBank => string.Create(CultureInfo.InvariantCulture, $"bank ${bank:X} is above the last one"),
        >= FirstSystemBank => "it is RAM or a register of the console",
        _ => "no card is there",
    };
}
