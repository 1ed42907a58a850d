using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>Checks of a finished cartridge.</summary>
/// <param name="cart">The cartridge.</param>
/// <param name="region">Its ROM.</param>
/// <param name="scheme">Its scheme.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class Atari8BitChecks(CartView cart, RegionImage region, ComputerScheme scheme, FindingLog log)
{
    private const string Yes = "true";

    /// <summary>Runs them all.</summary>
    public void Run()
    {
        if (!scheme.HasTrailer)
        {
            CheckBanks();
            return;
        }

        CheckTrailer();
        if (TrailerElsewhere() is { } offset)
        {
            log.Add(Atari8BitFindings.TrailerElsewhere, cart.Place("programs"), $"At offset 0x{offset:X6} there is a trailer, and at 0x{region.Length - ComputerTrailer.Length:X6}, the end of the ROM, there is none.");
        }
    }

    private void CheckTrailer()
    {
        var present = region.Bytes.Span[^4];
        if (present != 0)
        {
            log.Add(Atari8BitFindings.NotPresent, cart.Place("header:" + ComputerTrailer.Present), string.Create(CultureInfo.InvariantCulture, $"The byte at ${scheme.End - 4:X4}, offset 0x{region.Length - 4:X6} of the ROM, is 0x{present:X2}."));
        }

        CheckAddress(ComputerTrailer.Init, "init");
        if (cart[ComputerTrailer.Diagnostic] == Yes)
        {
            log.Add(Atari8BitFindings.DiagnosticStart, cart.Place("header:" + ComputerTrailer.Diagnostic), "Bit 7 of the option byte is set.");
        }
        else
        {
            CheckRun(cart[ComputerTrailer.RunCartridge] == Yes, Value(ComputerTrailer.Run) is not (0 or 0xFFFF));
        }
    }

    private void CheckRun(bool asked, bool given)
    {
        var place = cart.Place("header:" + ComputerTrailer.Run);
        if (asked && given)
        {
            CheckAddress(ComputerTrailer.Run, "run");
        }
        else if (asked)
        {
            log.Add(Atari8BitFindings.NoRunAddress, place, $"Bit 2 of the option byte is set, and the run address is {cart[ComputerTrailer.Run]}.");
        }
        else if (given)
        {
            log.Add(Atari8BitFindings.RunNotAsked, place, $"The run address is {cart[ComputerTrailer.Run]}, and bit 2 of the option byte is clear.");
        }
    }

    private void CheckAddress(string field, string name)
    {
        var value = Value(field);
        if (value is 0 or 0xFFFF)
        {
            return;
        }

        var place = cart.Layout.Addresses.Locate(new ConsoleAddress(null, value), static _ => null);
        if (place.Region is null || place.Offset + region.Length < 0)
        {
            log.Add(Atari8BitFindings.AddressOutside, cart.Place("header:" + field), string.Create(CultureInfo.InvariantCulture, $"The {name} address is ${value:X4}, and the ROM that is always there ends at ${scheme.End - 1:X4}."));
        }
        else if (region.CoveringSegment(place.Offset + region.Length, 1) is null)
        {
            log.Add(Atari8BitFindings.AddressUncovered, cart.Place("header:" + field), string.Create(CultureInfo.InvariantCulture, $"The {name} address is ${value:X4}, and no program covers offset 0x{place.Offset + region.Length:X6} where that is."));
        }
    }

    // Offset of a trailer at the end of 8 KiB that are not the last; null when the last have one, or none has.
    private int? TrailerElsewhere()
    {
        const int Block = 0x2000;
        if (TrailerSight.Agrees(region.Bytes.Span))
        {
            return null;
        }

        for (var end = Block; end < region.Length; end += Block)
        {
            if (region.CoveringSegment(end - ComputerTrailer.Length, ComputerTrailer.Length) is not null && TrailerSight.Agrees(region.Bytes.Span[..end]))
            {
                return end - ComputerTrailer.Length;
            }
        }

        return null;
    }

    private void CheckBanks()
    {
        var without = Enumerable.Range(0, region.Length / scheme.Bank).Where(bank => !TrailerSight.Agrees(region.Bytes.Span[..((bank + 1) * scheme.Bank)])).ToList();
        // One part of this scheme never leaves, and one trailer there is enough.
        if (without.Count > 0 && (scheme.Name != "oss" || without.Count == region.Length / scheme.Bank))
        {
            var told = string.Join(", ", without.Take(8).Select(static bank => bank.ToString("X2", CultureInfo.InvariantCulture)));
            log.Add(Atari8BitFindings.BankWithoutTrailer, cart.Place("programs"), $"The last six bytes of bank {told}{(without.Count > 8 ? " and more" : "")} are no trailer.");
        }
    }

    private int Value(string field) => cart[field] is { } text && Number.TryParse(text, out long value) ? (int)value : 0;
}
