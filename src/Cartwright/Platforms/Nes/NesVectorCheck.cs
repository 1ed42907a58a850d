using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nes;

/// <summary>Looks for the vectors where the mapper lets the CPU look at power-on.</summary>
internal static class NesVectorCheck
{
    // PRG chips and CHR come in whole multiples of this, and so do the places where a misplaced bank may end.
    private const int Step = 8 << 10;

    /// <summary>Checks the vectors.</summary>
    /// <param name="prg">PRG.</param>
    /// <param name="mapper">The mapper's row.</param>
    /// <param name="where">Where to point when no program covers the vectors.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static void Check(RegionImage prg, NesMapper mapper, SourcePlace where, FindingLog log)
    {
        var place = prg.CoveringSegment(prg.Length - 4, 2)?.Place ?? where;
        var starts = mapper.Reset.EveryBank ? EveryBank(prg, mapper, place, log) : LastBank(prg, mapper, place, log);
        if (starts)
        {
            Interrupt("NMI", NesBanks.Nmi(prg.Bytes.Span), place, log);
            Interrupt("IRQ", NesBanks.Irq(prg.Bytes.Span), place, log);
        }
    }

    private static bool EveryBank(RegionImage prg, NesMapper mapper, SourcePlace place, FindingLog log)
    {
        var length = Math.Min(mapper.Reset.Span, prg.Length);
        var faults = NesBanks.Faults(prg.Bytes.Span, length, out var faulty);
        var none = faulty == prg.Length / length;
        if (faulty > 0)
        {
            log.Add(none ? NesFindings.NoReset : NesFindings.SomeBanks, place,
                $"The mapper {mapper.Name} may show any bank of {ByteSize.Words(length)} at power-on; {faults}.",
                "a RESET vector from $8000 to $FFF9 at the end of every bank",
                none ? NesFindings.SomeBanks.Remedy : null);
        }

        return NesBanks.Fault(prg.Bytes.Span[^length..]) is null;
    }

    private static bool LastBank(RegionImage prg, NesMapper mapper, SourcePlace place, FindingLog log)
    {
        var bytes = prg.Bytes.Span;
        var length = Math.Min(mapper.Reset.Span, prg.Length);
        var last = bytes[^length..];
        if (NesBanks.Fault(last) is { } fault)
        {
            var below = NesBanks.Reset(last) < 0x8000 && last.ContainsAnyExcept(last[0]);
            log.Add(below ? NesFindings.ResetBelow : NesFindings.NoReset, place,
                $"The CPU looks for its vectors {mapper.Reset.Words}, and the last {ByteSize.Words(length)} (0x{prg.Length - length:X6}-0x{prg.Length - 1:X6}) {fault}.",
                "a RESET vector from $8000 to $FFF9", Hint(bytes));
            return false;
        }

        var reset = NesBanks.Reset(bytes);
        if (prg.Length > length && reset < 0x10000 - length)
        {
            log.Add(NesFindings.ResetUnsure, place,
                string.Create(CultureInfo.InvariantCulture, $"RESET is ${reset:X4}, and with the mapper {mapper.Name} only ${0x10000 - length:X4}-$FFFF is known to be visible at power-on."));
        }

        Advise(prg, mapper, place, log);
        return true;
    }

    private static void Advise(RegionImage prg, NesMapper mapper, SourcePlace place, FindingLog log)
    {
        var length = mapper.Reset.Advised;
        if (length > 0 && prg.Length > length && NesBanks.Faults(prg.Bytes.Span, length, out _) is { Length: > 0 } faults)
        {
            log.Add(NesFindings.StubAdvised, place, $"The mapper {mapper.Name} may show another bank than the last at power-on; {faults}.");
        }
    }

    private static string? Hint(ReadOnlySpan<byte> prg) => prg.Length > Step && NesBanks.FirstThatStarts(prg, Step) is { } bank
        ? $"Vectors seem to stand at the end of the 8 KiB {bank}: put that bank at the end of `prg`; if CHR was appended behind PRG, it is a program of its own for the region `chr`."
        : null;

    private static void Interrupt(string name, int vector, SourcePlace place, FindingLog log)
    {
        if (vector < 0x8000)
        {
            log.Add(NesFindings.HandlerBelow, place, string.Create(CultureInfo.InvariantCulture, $"The {name} vector is ${vector:X4}."));
        }
    }
}
