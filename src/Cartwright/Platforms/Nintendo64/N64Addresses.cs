using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The cartridge's ROM at $10000000, which programs see at $B0000000, or at $90000000 through the cache (Nintendo 64 memory map).</summary>
public sealed class N64Addresses : AddressMap
{
    /// <summary>Bytes of ROM the processor can see.</summary>
    public const long Window = 0x0FC00000;

    private const long Start = 0x10000000;
    private const long Direct = 0xA0000000;
    private const long Cached = 0x80000000;
    private const long SegmentMask = 0x1FFFFFFF;

    private static readonly (long Last, string What)[] Elsewhere =
    [
        (0x03EFFFFF, "RAM; the boot code copies the ROM from 0x1000 on to the entry address, so place the program with `offset` 0x1000"),
        (0x04FFFFFF, "registers"),
        (0x07FFFFFF, "the disk drive's"),
        (0x0FFFFFFF, "save memory"),
    ];

    /// <inheritdoc/>
    public override string Forms => "an address from $B0000000 to $BFBFFFFF";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is not null)
        {
            return AddressPlace.Nowhere("this console has no banks");
        }

        var isMapped = address.Address is >= Cached and < Direct + SegmentMask + 1;
        var bus = isMapped ? address.Address & SegmentMask : address.Address;
        return bus is >= Start and < Start + Window
            ? AddressPlace.In(N64Header.Region, bus - Start, Start + Window - bus)
            : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${address.Address:X8} is {What(bus)}"));
    }

    private static string What(long bus)
    {
        foreach (var (last, what) in Elsewhere)
        {
            if (bus <= last)
            {
                return what;
            }
        }

        return "beyond the cartridge";
    }
}
