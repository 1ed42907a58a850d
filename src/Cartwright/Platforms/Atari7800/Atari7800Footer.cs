using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari7800;

/// <summary>The last 128 bytes the processor sees, $FF80-$FFFF: signature, what it covers, vectors.</summary>
public static class Atari7800Footer
{
    /// <summary>Bytes of the footer.</summary>
    public const int Length = 0x80;

    /// <summary>Bytes of the signature.</summary>
    public const int SignatureLength = 120;

    internal const string Signature = "signature";
    internal const string RegionMark = "regionMark";
    internal const string SignedFrom = "signedFrom";
    internal const string StartUpLogo = "startUpLogo";
    internal const string ResetVector = "resetVector";

    private const string Source = "Atari 7800 wiki, ROM footer";

    private static readonly NamedValues Logo = new(new NamedValue(7, "shown"), new NamedValue(3, "left-out"));

    private static readonly NamedValues Page = new(Pages());

    /// <summary>The table of a scheme.</summary>
    /// <param name="scheme">The scheme.</param>
    public static HeaderTable Table(Atari7800Scheme scheme) => new("ROM footer", "rom", scheme.Footer, Length,
    [
        new(Signature, 0, SignatureLength, new BytesCodec(SignatureLength),
            "The digital signature that NTSC consoles check. It is carried as the program has it and never made here.", Source),
        Nibble(RegionMark, 0x78, 4, new PlainNumber(1), "Must be 0xF.") with { Default = "0xF" },
        Nibble("regionLow", 0x78, 0, new PlainNumber(1), "Bit 0 is expected to be 1; usually 0xF.") with { Default = "0xF" },
        Nibble(SignedFrom, 0x79, 4, Page, "First page of the signed area, which ends at $FF7F. What is switched must not be in it; fewer pages start faster.") with
            { DefaultFrom = context => Page.Format((ulong)scheme.FirstSignable((int)context.LengthOf("rom"))) },
        Nibble(StartUpLogo, 0x79, 0, Logo, "Whether the console shows its start-up logo.") with { Default = "shown" },
        Vector("nmiVector", 0x7A, "Where display-list interrupts go."),
        Vector(ResetVector, 0x7C, "Where the game starts.") with { Required = true },
        Vector("irqVector", 0x7E, "Where IRQ and BRK go."),
    ]);

    /// <summary>A page of 4 KiB by the field's text.</summary>
    /// <param name="text">The text.</param>
    internal static int PageOf(string? text) => text is not null && Page.TryParse(text, out var page) ? (int)page : 0;

    private static HeaderField Nibble(string name, int at, int low, ValueText form, string meaning) =>
        new(name, at, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, low, 4)), form), meaning, Source);

    private static HeaderField Vector(string name, int at, string meaning) =>
        new(name, at, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning + " It must lie inside the signed area.", Source);

    private static ImmutableArray<NamedValue> Pages() =>
        [.. Enumerable.Range(4, 12).Select(static page => new NamedValue((ulong)page, string.Create(CultureInfo.InvariantCulture, $"at-{page:X}000")))];
}
