using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>Whether the console can start, whatever bank shows at power-on.</summary>
internal static class VectorChecks
{
    // So many banks are told of; a list of 64 helps nobody.
    private const int Told = 4;

    public static void Run(CartView cart, RegionImage region, BankScheme scheme, FindingLog log)
    {
        var every = Enumerable.Range(1, region.Length / scheme.Bank).Select(number => new StartVector(region, scheme, number * scheme.Bank)).ToList();
        var place = region.CoveringSegment(region.Length - 4, 2)?.Place ?? cart.Place("programs");
        if (every.TrueForAll(static bank => bank.Problem is not null))
        {
            log.Add(Atari2600Findings.NoResetVector, place, every.Count == 1 ? $"The program cannot start: {every[0].Problem}." : $"No bank can start. The last one, bank {every[^1].Bank:X2}: {every[^1].Problem}.");
            return;
        }

        var needed = every.Where(bank => IsNeeded(bank, scheme, every.Count)).ToList();
        Tell([.. needed.Where(static bank => bank.Problem is not null)], place, log);
        foreach (var bank in needed.Where(bank => bank.Problem is null && bank.Target is { } at && region.Bytes.Span[at] is 0x00 or 0xFF))
        {
            log.Add(Atari2600Findings.DoubtfulStart, place,
                string.Create(CultureInfo.InvariantCulture, $"The first instruction of bank {bank.Bank:X2} at ${bank.Value:X4}, offset 0x{bank.Target:X6} of the ROM, is 0x{region.Bytes.Span[bank.Target!.Value]:X2}."));
        }
    }

    private static bool IsNeeded(StartVector bank, BankScheme scheme, int count) => scheme.PowerOn switch
    {
        PowerOn.Fixed => bank.Bank == count - 1,
        PowerOn.Known => bank.Bank == scheme.FirstBank,
        // Smaller banks than the window end at the top of it in some patterns only.
        PowerOn.Any when scheme.Bank < 0x1000 => (bank.Bank & 3) == 3,
        _ => true,
    };

    private static void Tell(List<StartVector> banks, SourcePlace place, FindingLog log)
    {
        if (banks.Count > 0)
        {
            var told = banks.Take(Told).Select(static bank => $"bank {bank.Bank:X2}: {bank.Problem}");
            var more = banks.Count > Told ? string.Create(CultureInfo.InvariantCulture, $"; and {banks.Count - Told} more") : "";
            log.Add(Atari2600Findings.BankWithoutVectors, place, $"The console may start where it cannot go on: {string.Join("; ", told)}{more}.");
        }
    }
}
