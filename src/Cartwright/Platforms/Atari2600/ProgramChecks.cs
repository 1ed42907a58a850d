using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>What RAM and hot spots do to the bytes of a program.</summary>
internal static class ProgramChecks
{
    private const int Vectors = 0xFFA;

    // STA $02.
    private static ReadOnlySpan<byte> WaitForLine => [0x85, 0x02];

    public static void Run(CartView cart, RegionImage region, BankScheme scheme, FindingLog log)
    {
        CheckHidden(region, scheme, cart.Place("header:scheme"), log);
        CheckHotSpots(region, scheme, cart.Place("programs"), log);
        if (scheme.Name == "4k" && SchemeGuess.HotSpotAccess(region.Bytes.Span) is { } at)
        {
            log.Add(Atari2600Findings.HalfOfASet, cart.Place("programs"),
                $"At offset 0x{at:X6} the program accesses ${region.Bytes.Span[at + 2]:X2}{region.Bytes.Span[at + 1]:X2}, and a ROM of 4 KiB has no banks.");
        }

        // Tests in the fixed part are tests of code that runs; elsewhere two bytes may be alike by chance.
        if (scheme.Name is "3f" or "3e" && region.Bytes.Span[^scheme.FixedTop..].IndexOf(WaitForLine) is >= 0 and var low)
        {
            log.Add(Atari2600Findings.LowWrites, cart.Place("programs"), $"At offset 0x{region.Length - scheme.FixedTop + low:X6} the program writes to $02, to wait for the end of the line.");
        }

        if (SchemeGuess.Of(region.Bytes.Span) is ({ } guess, { } reason) && guess != scheme.Name && !(guess == "3f" && scheme.Name == "3e"))
        {
            log.Add(Atari2600Findings.OtherScheme, cart.Place("header:scheme"), $"The scheme is {scheme.Name}, and the image looks like {guess}: {reason}.");
        }
    }

    private static void CheckHidden(RegionImage region, BankScheme scheme, SourcePlace place, FindingLog log)
    {
        var bytes = region.Bytes.Span;
        var differ = false;
        for (var start = 0; scheme.HiddenInBanks > 0 && start < bytes.Length; start += scheme.Bank)
        {
            var hidden = bytes.Slice(start, scheme.HiddenInBanks);
            if (hidden.ContainsAnyExcept(hidden[0]))
            {
                TellHidden(start, hidden.Length, place, log);
                return;
            }

            differ |= hidden[0] != bytes[0];
        }

        if (differ)
        {
            log.Add(Atari2600Findings.RamAreasDiffer, place, "The bytes under the RAM are filled with one value in each bank, but not with the same in all of them.");
        }

        var top = bytes.Length - scheme.FixedTop;
        if (scheme.HiddenInFixed > 0 && bytes.Slice(top, scheme.HiddenInFixed).ContainsAnyExcept(bytes[top]))
        {
            TellHidden(top, scheme.HiddenInFixed, place, log);
        }
    }

    private static void TellHidden(int start, int length, SourcePlace place, FindingLog log) =>
        log.Add(Atari2600Findings.UnderRam, place, $"The ROM holds different bytes at 0x{start:X6}-0x{start + length - 1:X6}, and the cartridge's RAM is there.");

    private static void CheckHotSpots(RegionImage region, BankScheme scheme, SourcePlace place, FindingLog log)
    {
        // The bytes from $1FFA on are vectors, which the processor reads in any case.
        var last = Math.Min(scheme.LastHotSpot, Vectors - 1);
        for (var start = 0; scheme.FirstHotSpot >= 0 && start < region.Length; start += scheme.Bank)
        {
            var spots = region.Bytes.Span[(start + scheme.FirstHotSpot)..(start + last + 1)];
            if (spots.ContainsAnyExcept((byte)0, (byte)0xFF, region.Fill))
            {
                log.Add(Atari2600Findings.HotSpotBytes, place,
                    string.Create(CultureInfo.InvariantCulture, $"Bank {start / scheme.Bank:X2} holds {Convert.ToHexString(spots[..Math.Min(spots.Length, 8)])} from offset 0x{start + scheme.FirstHotSpot:X6} on, where reading switches banks."));
                return;
            }
        }
    }
}
