using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>32 MiB of ROM at $08000000, seen again at $0A000000 and $0C000000 (GBATEK, GBA Memory Map).</summary>
public sealed class AdvanceAddresses : AddressMap
{
    /// <summary>Bytes of ROM the console can see.</summary>
    public const long Window = 32L << 20;

    private const long Start = 0x08000000;
    private const long End = 0x0E000000;

    private static readonly (long Last, string What)[] Elsewhere =
    [
        (0x00003FFF, "the BIOS"),
        (0x02FFFFFF, "work RAM on the board; give the segment a load address in ROM, from where start-up code copies it"),
        (0x03FFFFFF, "work RAM in the chip; give the segment a load address in ROM, from where start-up code copies it"),
        (0x04FFFFFF, "registers"),
        (0x07FFFFFF, "video memory"),
        (0x0EFFFFFF, "save memory"),
    ];

    /// <inheritdoc/>
    public override string Forms => "an address from $08000000 to $09FFFFFF";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is not null)
        {
            return AddressPlace.Nowhere("this console has no banks");
        }

        if (address.Address is < Start or >= End)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${address.Address:X8} is {What(address.Address)}"));
        }

        var offset = (address.Address - Start) % Window;
        return AddressPlace.In(AdvanceHeader.Region, offset, Window - offset);
    }

    private static string What(long address)
    {
        foreach (var (last, what) in Elsewhere)
        {
            if (address <= last)
            {
                return what;
            }
        }

        return "beyond the cartridge";
    }
}
