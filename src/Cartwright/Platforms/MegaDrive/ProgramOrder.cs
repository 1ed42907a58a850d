using Cartwright.Findings;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Recognises programs whose bytes are not in the order of the bus, as images of that order are recognised.</summary>
internal static class ProgramOrder
{
    /// <summary>Checks the program at offset 0.</summary>
    /// <returns>False when its bytes are in another order, so that its vectors mean nothing.</returns>
    public static bool Check(MegaDriveCart cart, FindingLog log)
    {
        if (Recognise(cart) is not { } rule)
        {
            return true;
        }

        var first = First(cart)!;
        log.Add(rule, first.Place, $"{first.Program} does not show SEGA at 0x{MegaDriveHeader.Start:X6}, where the header begins, but has the letters where another order of bytes puts them.");
        return false;
    }

    /// <summary>The order of the program at offset 0; null when it is the bus's own, or none that is known.</summary>
    public static FindingRule? Recognise(MegaDriveCart cart) => First(cart) is { } program ? Rule(MegaDriveRecognition.Recognise(program.Bytes.Span)) : null;

    private static PlacedSegment? First(MegaDriveCart cart) => cart.Region.Coverage[0] is { Offset: 0 } first ? first : null;

    private static FindingRule? Rule(RecognitionClaim? claim) => claim switch
    {
        null => null,
        { Certainty: Certainty.Candidate } or { Order: ImageOrder.OddEvenHalves } => MegaDriveFindings.HalvedProgram,
        { Order: ImageOrder.OddEvenBlocks or ImageOrder.EvenOddBlocks } => MegaDriveFindings.InterleavedProgram,
        { PrefixLength: > 0 } => MegaDriveFindings.PrefixedProgram,
        { Order: ImageOrder.ByteSwapped } => MegaDriveFindings.SwappedProgram,
        _ => null,
    };
}
