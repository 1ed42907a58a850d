using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Checks of the places the processor goes to by itself.</summary>
internal static class StartChecks
{
    private const byte Restart38 = 0xFF;

    public static void Check(CartView cart, bool hasPauseButton, FindingLog log)
    {
        var region = cart.Rom[SegaHeader.Region]!;
        var start = region.CoveringSegment(0, 1);
        if (start is null)
        {
            log.Add(SegaFindings.NoReset, cart.Place("programs"), $"No program covers $0000; the first begins at 0x{region.Coverage[0].Offset:X6}.");
            return;
        }

        if (region.Bytes.Span[0] == Restart38)
        {
            log.Add(SegaFindings.BlankStart, start.Place, "The first byte is 0xFF, which erased memory holds and which as an instruction (rst $38) calls the interrupt handler.");
        }

        if (hasPauseButton && IsMissing(region, SegaMemory.Pause))
        {
            log.Add(SegaFindings.NoPause, start.Place, Missing(SegaMemory.Pause, "when the pause button is pressed"));
        }

        if (IsMissing(region, SegaMemory.Interrupt))
        {
            log.Add(SegaFindings.NoInterrupt, start.Place, Missing(SegaMemory.Interrupt, "for an interrupt in mode 1"));
        }
    }

    private static bool IsMissing(RegionImage region, int address) => region.CoveringSegment(address, 1) is null || region.Bytes.Span[address] == Restart38;

    private static string Missing(int address, string when) =>
        string.Create(CultureInfo.InvariantCulture, $"There is no program at ${address:X4}, where the processor goes {when}.");
}
