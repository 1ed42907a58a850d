using Cartwright.Headers;

namespace Cartwright.Platforms.Vectrex;

/// <summary>The header the BIOS reads. Its length is not fixed: what lies behind the 00 that ends its texts is the program's.</summary>
public static class VectrexHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of the cartridge's window, and of one half of a larger ROM.</summary>
    public const int Window = 0x8000;

    /// <summary>Offset of the address of the title music.</summary>
    public const int Music = CopyrightCodec.Length;

    /// <summary>Offset of the first text.</summary>
    public const int Titles = Music + 2;

    private const string Source = "Cartridge header in several public program sources";
    private const string UsualTune = "0xFD0D";

    /// <summary>The header at the ROM's start.</summary>
    public static HeaderTable AtStart { get; } = Table(new HeaderAnchor(0));

    /// <summary>The header in the upper half of 64 KiB.</summary>
    public static HeaderTable InUpperHalf { get; } = Table(new HeaderAnchor(Window, FromEnd: true));

    private static HeaderTable Table(HeaderAnchor anchor) => new("cartridge header", Region, anchor, Titles + TitleTextsCodec.Longest,
    [
        new("year", 0, CopyrightCodec.Length, new CopyrightCodec(), "Year of the copyright text `g GCE 1998`, which the BIOS looks for and shows.", Source) { Required = true },
        new("music", Music, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.BigEndian), new PlainNumber(4)), "Address of the music for the title: a tune of the BIOS, or the program's own.", Source)
        {
            Default = UsualTune,
            When = HasUsualCopyright,
        },
        new("titles", Titles, TitleTextsCodec.Longest, new TitleTextsCodec(), "The texts the BIOS shows before it starts the program.", Source)
        {
            FromCart = CartKey.Title,
            When = HasUsualCopyright,
        },
    ]);

    // Behind a copyright of another length everything lies elsewhere.
    private static bool HasUsualCopyright(HeaderContext context) => context["year"] is not { } year || !new CopyrightCodec().IsRaw(year);
}
