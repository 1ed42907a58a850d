using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>The reset vector of one bank and where it leads.</summary>
/// <param name="region">The ROM.</param>
/// <param name="scheme">Its scheme.</param>
/// <param name="end">Offset of the byte after the bank's last.</param>
internal sealed class StartVector(RegionImage region, BankScheme scheme, int end)
{
    private const int Vectors = 0x1FFA;

    /// <summary>The vector.</summary>
    public int Value => BinaryPrimitives.ReadUInt16LittleEndian(region.Bytes.Span[(end - 4)..]);

    /// <summary>The bank's number.</summary>
    public int Bank => (end / scheme.Bank) - 1;

    /// <summary>Why the processor cannot start here, one clause; null when it can.</summary>
    public string? Problem
    {
        get
        {
            var masked = Value & 0x1FFF;
            return region.CoveringSegment(end - 4, 2) is null ? "no program covers its reset vector"
                : masked is < 0x1000 or >= Vectors || Value == 0xFFFF ? Says($"is ${Value:X4}, which is not in the cartridge's $1000-$1FF9")
                : masked < scheme.WindowStart || IsHidden(masked & 0xFFF) ? Says($"is ${Value:X4}, where the cartridge has RAM")
                : Target is { } target && region.CoveringSegment(target, 1) is null ? Says($"is ${Value:X4}, and no program covers offset 0x{target:X6} where that is")
                : null;
        }
    }

    /// <summary>Where the vector leads, as an offset in the ROM; null where a bank shows of which nobody knows the number.</summary>
    public int? Target
    {
        get
        {
            var within = Value & 0xFFF;
            return within >= 0x1000 - scheme.FixedTop && scheme.FixedTop > 0 ? region.Length - 0x1000 + within
                : scheme.PowerOn == PowerOn.Only || scheme.Bank == 0x1000 ? end - scheme.Bank + (within % scheme.Bank)
                : null;
        }
    }

    private bool IsHidden(int within) =>
        within < scheme.HiddenInBanks || (scheme.FixedTop > 0 && within >= 0x1000 - scheme.FixedTop && within < 0x1000 - scheme.FixedTop + scheme.HiddenInFixed);

    private static string Says(FormattableString text) => "its reset vector " + text.ToString(CultureInfo.InvariantCulture);
}
