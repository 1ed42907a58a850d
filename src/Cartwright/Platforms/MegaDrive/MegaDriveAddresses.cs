using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The cartridge's addresses: the ROM from 0 on, in one piece; with the page mapper also a page and an address in any slot.</summary>
/// <param name="pages">True with the page mapper.</param>
internal sealed class MegaDriveAddresses(bool pages) : AddressMap
{
    /// <summary>Bytes of one page of the mapper.</summary>
    public const int PageSize = 0x80000;

    /// <summary>The most the console sees at once.</summary>
    public const int WindowEnd = 0x400000;

    /// <summary>The most the page mapper is used for here.</summary>
    public const int PagedEnd = 0x800000;

    private const long LastAddress = 0xFFFFFF;

    // The cartridge's part: Cartridge slot. The rest of the console's map: from memory.
    private static readonly ImmutableArray<(long End, string What)> Elsewhere =
    [
        (0x7FFFFF, "belongs to the expansion side of the console"),
        (0x9FFFFF, "is no cartridge ROM"),
        (0xA0FFFF, "is the Z80's memory"),
        (0xA12FFF, "holds the console's own registers"),
        (0xA130FF, "holds the cartridge's registers"),
        (0xBFFFFF, "holds the console's own registers"),
        (0xDFFFFF, "is the video processor"),
        (LastAddress, "is work RAM; give the segment a load address in the ROM (in a GNU linker script: `AT >rom`), from where the program copies it"),
    ];

    /// <inheritdoc/>
    public override string Forms => pages
        ? "an address such as $000200, or page and slot address such as 09:280000"
        : "an address such as $000200";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is { } page)
        {
            return pages ? InPage(page, address.Address) : AddressPlace.Nowhere($"{address} names a page, and only a cart with `mapper` set to `pages` has any");
        }

        var end = pages ? PagedEnd : WindowEnd;
        return address.Address < end
            ? AddressPlace.In(MegaDriveHeader.Region, address.Address, end - address.Address)
            : AddressPlace.Nowhere(Describe(address.Address));
    }

    private static AddressPlace InPage(long page, long slotAddress)
    {
        if (page >= PagedEnd / PageSize || slotAddress >= WindowEnd)
        {
            return AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"pages go from 00 to {(PagedEnd / PageSize) - 1:X2} and their addresses from $000000 to $3FFFFF"));
        }

        var within = slotAddress % PageSize;
        return AddressPlace.In(MegaDriveHeader.Region, (page * PageSize) + within, PageSize - within);
    }

    private static string Describe(long address)
    {
        // Linkers write RAM as $FFFF0000 or $E0FF0000 too; the processor has 24 address lines.
        var seen = address & LastAddress;
        var name = address > LastAddress
            ? string.Create(CultureInfo.InvariantCulture, $"${address:X8} (${seen:X6} on the bus)")
            : string.Create(CultureInfo.InvariantCulture, $"${address:X6}");
        return seen < WindowEnd
            ? $"{name} has more than the 24 bits of this console's addresses"
            : $"{name} {Elsewhere.First(range => seen <= range.End).What}";
    }
}
