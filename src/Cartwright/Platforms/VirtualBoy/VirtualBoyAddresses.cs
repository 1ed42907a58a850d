using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>
/// A window of 16 MiB at $07000000 in which the ROM repeats. Linkers place programs from its start on and header and handlers at its end, so
/// while the size is not stated the lower half counts from the ROM's start and the upper half back from its end
/// ("Sacred Tech Scroll", Virtual Boy hardware documentation).
/// </summary>
public sealed class VirtualBoyAddresses : AddressMap
{
    /// <summary>Bytes of the window.</summary>
    public const long Window = 16L << 20;

    private const long Start = 0x07000000;
    private const long End = Start + Window;
    private const long Middle = Start + (Window / 2);
    private const long BusMask = 0x07FFFFFF;

    // All but the cartridge's part: from memory.
    private static readonly (long Last, string What)[] Elsewhere =
    [
        (0x00FFFFFF, "the picture processor"),
        (0x01FFFFFF, "the sound processor"),
        (0x02FFFFFF, "the console's registers"),
        (0x03FFFFFF, "not used"),
        (0x04FFFFFF, "the cartridge's expansion"),
        (0x05FFFFFF, "work RAM; give the segment a load address in ROM, from where start-up code copies it"),
        (0x06FFFFFF, "cartridge RAM"),
    ];

    /// <inheritdoc/>
    public override string Forms => "an address from $07000000 to $07FFFFFF; $FFFFFDE0 and the like are its last bytes";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is not null)
        {
            return AddressPlace.Nowhere("this console has no banks");
        }

        // The upper five of 32 bits do not leave the processor.
        var bus = address.Address & BusMask;
        if (address.Address > uint.MaxValue || bus < Start)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${address.Address:X8} is {What(address.Address)}"));
        }

        if (statedSize(VirtualBoyHeader.Region) is { } size and > 0)
        {
            var offset = (bus - Start) % size;
            return AddressPlace.In(VirtualBoyHeader.Region, offset, size - offset);
        }

        return bus < Middle
            ? AddressPlace.In(VirtualBoyHeader.Region, bus - Start, Middle - bus)
            : AddressPlace.In(VirtualBoyHeader.Region, bus - End, End - bus);
    }

    private static string What(long address)
    {
        foreach (var (last, what) in Elsewhere)
        {
            if (address <= uint.MaxValue && (address & BusMask) <= last)
            {
                return what;
            }
        }

        return "more than the processor's 32 bits";
    }
}
