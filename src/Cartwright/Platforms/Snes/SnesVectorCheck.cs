using System.Buffers.Binary;
using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

// The vectors at $00:FFE4-$00:FFFF (SNESdev Wiki, ROM header). The processor starts in emulation mode at RESET.
internal static class SnesVectorCheck
{
    private const int Reset = 0xFFFC;
    private const int RomStart = 0x8000;

    private static readonly ImmutableArray<(int Address, string Name)> Handlers =
    [
        (0xFFE4, "COP"), (0xFFE6, "BRK"), (0xFFE8, "ABORT"), (0xFFEA, "NMI"), (0xFFEE, "IRQ"),
        (0xFFF4, "COP (emulation)"), (0xFFF8, "ABORT (emulation)"), (0xFFFA, "NMI (emulation)"), (0xFFFE, "IRQ/BRK (emulation)"),
    ];

    /// <summary>The finding the reset vector deserves, and its words; null when it can work.</summary>
    public static (FindingRule Rule, string Message)? ResetProblem(RegionImage region, SnesMapping mapping)
    {
        var at = mapping.Offset(Reset);
        if (region.CoveringSegment(at, 2) is null)
        {
            return (SnesFindings.NoResetVector, $"No program covers the reset vector at $00:FFFC, offset 0x{at:X6} of the ROM.");
        }

        var reset = Word(region, mapping, Reset);
        var words = $"The reset vector at $00:FFFC, offset 0x{at:X6} of the ROM, is ${reset:X4}";
        return reset < RomStart ? (SnesFindings.ResetBelowRom, words + ".")
            : region.CoveringSegment(mapping.Offset(reset), 1) is null
                ? (SnesFindings.ResetOutsideProgram, $"{words}, and no program covers offset 0x{mapping.Offset(reset):X6} where that is.")
                : null;
    }

    public static void Run(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        var place = region.CoveringSegment(mapping.Offset(Reset), 2)?.Place ?? cart.Place("programs");
        if (ResetProblem(region, mapping) is var (rule, message))
        {
            log.Add(rule, place, message);
            return;
        }

        CheckOpcode(region, mapping, place, log);
        foreach (var (address, name) in Handlers)
        {
            var value = Word(region, mapping, address);
            if (value < RomStart && region.CoveringSegment(mapping.Offset(address), 2) is { } segment)
            {
                log.Add(SnesFindings.HandlerBelowRom, segment.Place, $"The {name} vector at $00:{address:X4} is ${value:X4}.");
            }
        }
    }

    private static void CheckOpcode(RegionImage region, SnesMapping mapping, SourcePlace place, FindingLog log)
    {
        var reset = Word(region, mapping, Reset);
        var opcode = region.Bytes.Span[mapping.Offset(reset)];
        if (Doubtful(opcode) is { } name)
        {
            log.Add(SnesFindings.ResetOpcode, place, $"The first instruction at $00:{reset:X4}, offset 0x{mapping.Offset(reset):X6} of the ROM, is 0x{opcode:X2} ({name}).");
        }
    }

    private static string? Doubtful(byte opcode) => opcode switch
    {
        0x00 => "BRK",
        0x02 => "COP",
        0xDB => "STP",
        0xFF => "an erased byte, or SBC",
        _ => null,
    };

    private static int Word(RegionImage region, SnesMapping mapping, int address) =>
        BinaryPrimitives.ReadUInt16LittleEndian(region.Bytes.Span[mapping.Offset(address)..]);
}
