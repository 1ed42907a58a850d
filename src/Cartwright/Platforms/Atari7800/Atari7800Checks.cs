using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari7800;

/// <summary>Checks of a finished cart.</summary>
/// <param name="cart">The cart.</param>
/// <param name="region">Its ROM.</param>
/// <param name="scheme">Its scheme.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class Atari7800Checks(CartView cart, RegionImage region, Atari7800Scheme scheme, FindingLog log)
{
    private const string Truth = "true";
    private static readonly ImmutableArray<(string Field, string Name)> Vectors = [("nmiVector", "NMI"), (Atari7800Footer.ResetVector, "reset"), ("irqVector", "IRQ")];

    private int Footer => scheme.Footer.In(region.Length);

    /// <summary>Runs them all.</summary>
    public void Run()
    {
        CheckReset();
        CheckSignature();
        CheckSignedArea();
        if (A78Container.At4000.Where(field => cart[field] == Truth).ToList() is { Count: > 1 } shared)
        {
            log.Add(Atari7800Findings.SharedWindow, cart.Place("header:" + shared[0]), $"The header has {string.Join(" and ", shared)}.");
        }

        if (scheme.Name == "supergame-9-bank" && !FooterSight.HasMarks(Bytes[^Atari7800Footer.Length..]) && FooterSight.HasMarks(Bytes.Slice(0x20000 - Atari7800Footer.Length, Atari7800Footer.Length)))
        {
            log.Add(Atari7800Findings.ExtraBankLast, cart.Place("programs"), "The ROM's end holds no vectors, and 0x01FF80, the end of the eighth bank of a ROM without the ninth, holds some.");
        }
    }

    private ReadOnlySpan<byte> Bytes => region.Bytes.Span;

    private void CheckReset()
    {
        var reset = Value(Atari7800Footer.ResetVector);
        if (reset is 0 or 0xFFFF)
        {
            return;
        }

        var says = string.Create(CultureInfo.InvariantCulture, $"The reset vector at $FFFC, offset 0x{Footer + 0x7C:X6} of the ROM, is ${reset:X4}");
        var place = cart.Layout.Addresses.Locate(new ConsoleAddress(null, reset), static _ => null);
        var offset = place.Offset < 0 ? place.Offset + region.Length : place.Offset;
        if (reset >= scheme.SwitchedFrom && reset < scheme.SwitchedEnd)
        {
            log.Add(Atari7800Findings.ResetSwitched, cart.Place("programs"), says + ".");
        }
        else if (place.Region is null || offset < 0)
        {
            log.Add(Atari7800Findings.ResetOutside, cart.Place("programs"), $"{says}, and the ROM has {ByteSize.Describe(region.Length)}.");
        }
        else if (region.CoveringSegment(offset, 1) is null)
        {
            log.Add(Atari7800Findings.ResetUncovered, cart.Place("programs"), $"{says}, and no program covers offset 0x{offset:X6} where that is.");
        }
    }

    private void CheckSignature()
    {
        var place = cart.Place("header:" + Atari7800Footer.Signature);
        if (!Blank.Is(Bytes.Slice(Footer, Atari7800Footer.SignatureLength)))
        {
            log.Add(Atari7800Findings.SignatureCarried, place,
                $"The signature at 0x{Footer:X6}-0x{Footer + Atari7800Footer.SignatureLength - 1:X6} of the ROM is the program's; it is for ${SignedPage << 12:X4}-$FF7F.");
            return;
        }

        var pal = cart[A78Container.Television] == "pal";
        log.Add(pal ? Atari7800Findings.NoSignaturePal : Atari7800Findings.NoSignature, place,
            $"The signature at 0x{Footer:X6}-0x{Footer + Atari7800Footer.SignatureLength - 1:X6} of the ROM is all 0x{Bytes[Footer]:X2}.");
    }

    private int SignedPage => Bytes[Footer + 0x79] >> 4;

    private void CheckSignedArea()
    {
        var region = Bytes[Footer + 0x78];
        if (region >> 4 != 0xF)
        {
            log.Add(Atari7800Findings.RegionMark, cart.Place("header:" + Atari7800Footer.RegionMark), $"The byte at $FFF8 is 0x{region:X2}.");
        }

        var signed = Bytes[Footer + 0x79];
        if ((signed & 0x0F) is not (3 or 7))
        {
            log.Add(Atari7800Findings.StartUpLogo, cart.Place("header:" + Atari7800Footer.StartUpLogo), $"The byte at $FFF9 is 0x{signed:X2}.");
        }

        var first = scheme.FirstSignable(Bytes.Length);
        if (SignedPage < first)
        {
            log.Add(Atari7800Findings.SignedArea, cart.Place("header:" + Atari7800Footer.SignedFrom),
                $"The signed area begins at ${SignedPage << 12:X4}, and with the scheme {scheme.Name} the ROM that is never switched begins at ${first << 12:X4}.");
        }

        foreach (var (field, name) in Vectors)
        {
            if (Value(field) is var value and not (0 or 0xFFFF) && value >> 12 < SignedPage)
            {
                log.Add(Atari7800Findings.VectorUnsigned, cart.Place("header:" + field), $"The {name} vector is ${value:X4}, and the signed area begins at ${SignedPage << 12:X4}.");
            }
        }
    }

    private int Value(string field) => cart[field] is { } text && Number.TryParse(text, out long value) ? (int)value : 0;
}
