using Cartwright.Roms;

namespace Cartwright.Tests.Platforms;

/// <summary>
/// Windows of 0x100 bytes: <c>bank:8000</c>-<c>bank:80FF</c> is one, and without a bank the windows follow each other from 0x8000
/// on but lie 0x200 apart in the ROM, so that a run across two windows falls into two places.
/// </summary>
internal sealed class TestAddresses : AddressMap
{
    private const long Start = 0x8000;
    private const long Window = 0x100;
    private const long End = 0x10000;

    public override string Forms => "bank:address such as 03:8000, or $8000-$FFFF";

    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        var within = address.Address - Start;
        if (within < 0)
            return AddressPlace.Nowhere("it lies below the ROM");

        if (address.Bank is { } bank)
            return within < Window ? AddressPlace.In("rom", (bank * Window) + within, Window - within) : AddressPlace.Nowhere("it lies behind the window");

        return address.Address < End
            ? AddressPlace.In("rom", (within / Window * 2 * Window) + (within % Window), Window - (within % Window))
            : AddressPlace.Nowhere("it lies behind the ROM");
    }
}
