using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Checks of the reset vectors (Genesis vector and header table). The processor has 24 address lines, so only bits 23-0 count.</summary>
internal static class VectorChecks
{
    private const uint AddressLines = 0xFFFFFF;
    private const int EntryAt = 4;
    private const int VectorsEnd = 8;

    // Work RAM is 64 KiB at $FF0000; from memory, it repeats from $E00000 on.
    private const uint FirstRam = 0xE00000;

    /// <summary>Checks stack and entry.</summary>
    public static void Check(MegaDriveCart cart, FindingLog log)
    {
        for (var i = 0; i < VectorsEnd; i++)
        {
            if (cart.Region.CoveringSegment(i, 1) is null)
            {
                log.Add(MegaDriveFindings.NoVectors, cart.PlaceOf(i), $"No program covers byte 0x{i:X6} of the reset vectors.");
                return;
            }
        }

        CheckStack(cart, BinaryPrimitives.ReadUInt32BigEndian(cart.Bytes), log);
        CheckEntry(cart, BinaryPrimitives.ReadUInt32BigEndian(cart.Bytes[EntryAt..]), log);
    }

    private static void CheckStack(MegaDriveCart cart, uint stored, FindingLog log)
    {
        var stack = stored & AddressLines;
        if (stack % 2 != 0 || stack is > 0 and < FirstRam)
        {
            log.Add(MegaDriveFindings.StackOutsideRam, cart.PlaceOf(0), $"The stack begins at ${stored:X8}, which the processor takes as ${stack:X6}.");
        }
    }

    private static void CheckEntry(MegaDriveCart cart, uint stored, FindingLog log)
    {
        var entry = stored & AddressLines;
        var place = cart.PlaceOf(EntryAt);
        if (entry % 2 != 0 || entry >= cart.Length)
        {
            log.Add(MegaDriveFindings.EntryWrong, place, entry % 2 != 0
                ? $"The program starts at ${stored:X8}, an odd address."
                : $"The program starts at ${stored:X8}, and the ROM has {ByteSize.Describe(cart.Length)}.",
                $"an even address from $000200 to ${cart.Length - 2:X6}");
        }
        else if (entry < MegaDriveChecksum.Start)
        {
            log.Add(MegaDriveFindings.EntryInHeader, place, $"The program starts at ${stored:X8}, among the vectors or in the header.");
        }
    }
}
