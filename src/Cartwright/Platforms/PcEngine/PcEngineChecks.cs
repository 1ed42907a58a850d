using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.PcEngine;

/// <summary>The checks of a card: it has no header, so the vectors and the length have to say everything.</summary>
internal sealed class PcEngineChecks(CartView cart, FindingLog log)
{
    private const ushort Unused = 0xFFFF;

    // From memory.
    private static readonly ImmutableArray<(int At, string Name)> Interrupts =
        [(0x1FF6, "IRQ2 and BRK"), (0x1FF8, "IRQ1"), (0x1FFA, "timer"), (0x1FFC, "NMI")];

    private readonly RegionImage _rom = cart.Rom[HuCard.Region]!;

    public void Run()
    {
        if (IsReversed())
        {
            log.Add(PcEngineFindings.ReversedProgram, PlaceOf(0), "The program begins as a card's does only with the bits of each byte reversed.");
        }
        else
        {
            CheckReset();
            CheckInterrupts();
        }

        CheckSize();
    }

    private bool IsReversed()
    {
        var rom = _rom.Bytes.Span;
        return HuCardStart.Of(rom, isReversed: true) >= Certainty.Structural && HuCardStart.Of(rom, isReversed: false) is null or Certainty.Candidate;
    }

    private void CheckReset()
    {
        var place = PlaceOf(HuCard.Reset);
        if (!IsCovered(HuCard.Reset) || !IsCovered(HuCard.Reset + 1))
        {
            log.Add(PcEngineFindings.NoResetVector, place, $"No program covers 0x{HuCard.Reset:X6}-0x{HuCard.Reset + 1:X6}, where the reset vector lies.");
            return;
        }

        var reset = Vector(HuCard.Reset);
        const string Expected = "an address from $E000 to $FFFF, where bank 0 is seen";
        if (reset < HuCard.BankZero)
        {
            log.Add(PcEngineFindings.ResetElsewhere, place, string.Create(CultureInfo.InvariantCulture, $"The reset vector is ${reset:X4}."), Expected);
        }
        else if (!IsCovered(reset - HuCard.BankZero))
        {
            log.Add(PcEngineFindings.ResetNowhere, place, string.Create(CultureInfo.InvariantCulture, $"The reset vector is ${reset:X4}, and no program covers 0x{reset - HuCard.BankZero:X6}."), Expected);
        }
    }

    private void CheckInterrupts()
    {
        foreach (var (at, name) in Interrupts)
        {
            var vector = Vector(at);
            if (vector is >= HuCard.BankZero and not Unused && IsCovered(at) && IsCovered(at + 1) && !IsCovered(vector - HuCard.BankZero))
            {
                log.Add(PcEngineFindings.InterruptNowhere, PlaceOf(at), string.Create(CultureInfo.InvariantCulture, $"The vector of {name} is ${vector:X4}, and no program covers 0x{vector - HuCard.BankZero:X6}."));
            }
        }
    }

    private void CheckSize()
    {
        if (_rom.Length < HuCard.ThreeEighthsFirst && !BitOperations.IsPow2(_rom.Length))
        {
            log.Add(PcEngineFindings.Completed, cart.Place("rom:size"), $"The ROM has {ByteSize.Describe(_rom.Length)}.");
        }

        if (_rom.Length > HuCard.ThreeEighths && _rom.Coverage is [{ Offset: 0, Length: HuCard.ThreeEighths } only])
        {
            log.Add(PcEngineFindings.ThreeEighths, only.Place, $"{only.Program} has {ByteSize.Describe(only.Length)}, and the ROM {ByteSize.Describe(_rom.Length)}.");
        }
    }

    private int Vector(int at) => BinaryPrimitives.ReadUInt16LittleEndian(_rom.Bytes.Span[at..]);

    private bool IsCovered(int offset) => _rom.CoveringSegment(offset, 1) is not null;

    private SourcePlace PlaceOf(int offset) => _rom.CoveringSegment(offset, 1)?.Place ?? cart.Place("programs");
}
