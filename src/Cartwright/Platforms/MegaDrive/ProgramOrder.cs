using System.Text;
using Cartwright.Findings;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Recognises programs whose bytes are not in the order of the bus: each order is undone for the start of the header, which must then show SEGA.</summary>
internal static class ProgramOrder
{
    private const int Prefix = 0x200;
    private const int HalfBlock = 0x2000;
    private const int HalfHeader = MegaDriveHeader.Start / 2;

    /// <summary>Letters enough to see SEGA at the first or second byte.</summary>
    private const int Letters = 6;

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
    public static FindingRule? Recognise(MegaDriveCart cart) =>
        First(cart) is { } program ? Recognise(program.Bytes.Span) : null;

    private static PlacedSegment? First(MegaDriveCart cart) => cart.Region.Coverage[0] is { Offset: 0 } first ? first : null;

    private static FindingRule? Recognise(ReadOnlySpan<byte> program)
    {
        if (SystemTypes.OpensLock(At(program, MegaDriveHeader.Start)))
        {
            return null;
        }

        var swapped = At(program, MegaDriveHeader.Start).ToArray();
        WordSwap.Swap16(swapped);
        return SystemTypes.OpensLock(swapped) ? MegaDriveFindings.SwappedProgram
            : HasPrefix(program) && SystemTypes.OpensLock(At(program, Prefix + MegaDriveHeader.Start)) ? MegaDriveFindings.PrefixedProgram
            : IsWoven(program[Math.Min(Prefix, program.Length)..], HalfBlock) || IsWoven(program, HalfBlock) ? MegaDriveFindings.InterleavedProgram
            : IsWoven(program, program.Length / 2) || IsOneChip(program) ? MegaDriveFindings.HalvedProgram
            : null;
    }

    // 0xAA 0xBB at 8 is a copier's own mark; many prefixes have none, and show by the length alone.
    private static bool HasPrefix(ReadOnlySpan<byte> program) =>
        program.Length % 0x400 == Prefix || program[Math.Min(8, program.Length)..].StartsWith((ReadOnlySpan<byte>)[0xAA, 0xBB]);

    // Odd bytes first, even bytes a distance behind them.
    private static bool IsWoven(ReadOnlySpan<byte> program, int distance)
    {
        var odd = At(program, HalfHeader)[..(Letters / 2)];
        var even = At(program, HalfHeader + distance)[..(Letters / 2)];
        var woven = new byte[Letters];
        Lanes.Merge(even, odd, woven);
        return SystemTypes.OpensLock(woven);
    }

    public static bool IsOneChip(ReadOnlySpan<byte> program)
    {
        foreach (var type in SystemTypes.Known)
        {
            var text = Encoding.ASCII.GetBytes(type.PadRight(SystemTypes.Length));
            var even = new byte[SystemTypes.Length / 2];
            var odd = new byte[SystemTypes.Length / 2];
            Lanes.Split2(text, even, odd);
            var here = program[Math.Min(HalfHeader, program.Length)..];
            if (here.StartsWith(even) || here.StartsWith(odd))
            {
                return true;
            }
        }

        return false;
    }

    // As many letters as asked for; zeros where the program ends before.
    private static ReadOnlySpan<byte> At(ReadOnlySpan<byte> program, int offset) =>
        offset + Letters <= program.Length ? program.Slice(offset, Letters) : new byte[Letters];
}
