using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Checks of sizes, ranges and the checksum.</summary>
internal static class RangeChecks
{
    private const int LinearLimit = 0x400000;
    private const uint AddressLines = 0xFFFFFF;
    private const uint FirstRam = 0xFF0000;

    /// <summary>Checks them all.</summary>
    public static void Check(MegaDriveCart cart, FindingLog log)
    {
        CheckEnd(cart, log);
        CheckRam(cart, log);
        CheckSize(cart, log);
        if (!cart.Checksum.Right)
        {
            CheckChecksum(cart, log);
        }
    }

    private static void CheckEnd(MegaDriveCart cart, FindingLog log)
    {
        var end = cart.Number("romEnd");
        if (end >= cart.Length)
        {
            log.Add(end == cart.Length ? MegaDriveFindings.EndIsSize : MegaDriveFindings.EndOutside, cart.Place("romEnd"),
                $"The header says the ROM ends at ${end:X8}, and its last byte is at ${cart.Length - 1:X8}; the checksum was cut there.");
        }
    }

    // The high byte is seen as 00, E0 and FF; it never leaves the processor.
    private static void CheckRam(MegaDriveCart cart, FindingLog log)
    {
        var (start, end) = (cart.Number("ramStart"), cart.Number("ramEnd"));
        if ((start & AddressLines) != FirstRam || (end & AddressLines) != AddressLines)
        {
            log.Add(MegaDriveFindings.RamRange, cart.Place("ramStart"), $"The header says that work RAM is ${start:X8}-${end:X8}.");
        }
    }

    private static void CheckSize(MegaDriveCart cart, FindingLog log)
    {
        if (cart.Length > LinearLimit)
        {
            log.Add(MegaDriveFindings.BeyondLinear, cart.Place("romEnd"),
                $"The ROM has {ByteSize.Describe(cart.Length)}; the checksum covers it up to ${cart.Number("romEnd"):X8}.");
            if (cart.Text("systemType").Trim() != MegaDriveHeader.BankSystem)
            {
                log.Add(MegaDriveFindings.NeedsPages, cart.Place("systemType"),
                    $"The ROM has {ByteSize.Describe(cart.Length)}, and the system type is `{cart.Text("systemType")}`.");
            }
        }

        var end = cart.Region.Coverage[^1].End;
        if (end % 2 != 0)
        {
            log.Add(MegaDriveFindings.OddProgram, cart.PlaceOf((int)end - 1), $"The programs end at 0x{end:X6}, in the middle of a word.");
        }
    }

    private static void CheckChecksum(MegaDriveCart cart, FindingLog log)
    {
        var stored = (ushort)cart.Checksum.Stored;
        var both = $"The header holds 0x{stored:X4}, and the documented sum is 0x{cart.Checksum.Computed:X4}";
        var place = cart.Place("checksum");
        if (stored == 0)
        {
            log.Add(MegaDriveFindings.EmptyChecksum, place, both + ".");
        }
        else if (cart.Checksum.Row.Explain(cart.Bytes, stored) is { } rule)
        {
            log.Add(MegaDriveFindings.OtherChecksum, place, $"{both}; what it holds is {rule}.");
        }
        else if (stored == BinaryPrimitives.ReverseEndianness((ushort)cart.Checksum.Computed))
        {
            log.Add(MegaDriveFindings.LittleEndianChecksum, place, both + ".");
        }
    }
}
