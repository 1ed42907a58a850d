using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.GameBoy;

/// <summary>The header at 0x100-0x14F, and the one an MMM01 cartridge starts from.</summary>
public static class GameBoyHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>First byte of the header in the region.</summary>
    public const int Start = 0x100;

    /// <summary>Bytes of the header.</summary>
    public const int Length = 0x50;

    /// <summary>Bytes the console sees at once.</summary>
    public const int Window = 0x8000;

    /// <summary>The old licensee that sends readers to the new one.</summary>
    public const string SeeNewLicensee = "see-new-licensee";

    /// <summary>Bytes of RAM the unused RAM size code 01 is read as.</summary>
    public const long UnusedRamSize = 0x800;

    private const string Source = "Pan Docs, The Cartridge Header";
    private const string Letters = "capital letters, digits and signs of ASCII (space to tilde)";

    private static readonly SizeCode RamSizes = new((0UL, 0L), (2UL, 8L << 10), (3UL, 32L << 10), (5UL, 64L << 10), (4UL, 128L << 10), (1UL, UnusedRamSize));

    private static readonly SizeCode RomSizes = new([.. Enumerable.Range(0, 9).Select(static code => ((ulong)code, (long)Window << code))]);

    /// <summary>The header of every cartridge.</summary>
    public static HeaderTable Main { get; } = new("Game Boy header", Region, new HeaderAnchor(Start), Length,
    [
        new("entry", 0x00, 4, new BytesCodec(4), "Code that runs first, usually 00 C3 50 01 (nop, jp $0150): the program's own.", Source),
        new("bitmap", BootBitmap.Offset, BootBitmap.Length, new BitmapCodec([.. BootBitmap.Bytes]), "The picture the console shows and compares before it starts the cartridge.", Source)
            { Default = BitmapCodec.WriteWord, Mended = true },
        .. Title,
        new("newLicensee", 0x44, 2, new TextCodec(0x00), "Two letters for the publisher; read when the old licensee is 33.", Source) { Default = "" },
        new("sgbFlag", 0x46, 1, Named(new(0x00, "none"), new(0x03, "sgb", "Super Game Boy functions; the old licensee must be 33")), "Whether the Super Game Boy's functions are used.", Source)
            { Default = "none" },
        new("cartridgeType", 0x47, 1, Byte(CartridgeTypes.Words), "Bank controller, RAM, battery and what else is on the board.", Source) { Default = "rom" },
        new("romSize", 0x48, 1, Byte(RomSizes), "Size of the ROM.", Source) { WorkOut = static context => ByteSize.Format(context.LengthOf(Region)), Mended = true },
        new("saveRam", 0x49, 1, Byte(RamSizes),
            "Size of the RAM chip; 0 for none and for RAM inside the controller.", Source) { Default = "0" },
        new("destination", 0x4A, 1, Named(new(0x00, "japan", "Japan, or Japan and elsewhere"), new(0x01, "overseas", "elsewhere only")), "Where the game is sold.", Source)
            { Default = "japan" },
        new("oldLicensee", 0x4B, 1, Named(new NamedValue(0x33, SeeNewLicensee)), "A number for the publisher; 33 sends readers to the new licensee.", Source)
            { Default = "0x00", WorkOut = OldLicensee },
        new("version", 0x4C, 1, Byte(PlainNumber.InDecimal), "Revision of the game, from 0.", Source) { FromCart = CartKey.Revision, Default = "0" },
    ])
    {
        Checksums =
        [
            new("headerChecksum", 0x4D, 1, ByteOrder.BigEndian, static rom => GameBoyChecksums.Header(rom[Start..]),
                "0, less each byte of 0x134-0x14C and 1 more for each, modulo 2^8", Source) { Enforced = true },
            new("globalChecksum", 0x4E, 2, ByteOrder.BigEndian, static rom => GameBoyChecksums.Global(rom),
                "sum of all bytes of the ROM but these two, modulo 2^16", Source) { Covers = ["headerChecksum"] },
        ],
    };

    /// <summary>The header in the last 32 KiB, from which an MMM01 cartridge starts. All but bitmap and checksum is the menu program's own.</summary>
    public static HeaderTable Menu { get; } = new("menu header of an MMM01 cartridge", Region, new HeaderAnchor(Window - Start, FromEnd: true), Length,
    [
        new("menuBitmap", BootBitmap.Offset, BootBitmap.Length, new BitmapCodec([.. BootBitmap.Bytes]), "The boot bitmap of the menu, which the console compares.", "Pan Docs, MMM01")
            { Default = BitmapCodec.WriteWord, Mended = true },
    ])
    {
        Checksums =
        [
            new("menuHeaderChecksum", 0x4D, 1, ByteOrder.BigEndian, static rom => GameBoyChecksums.Header(rom[^(Window - Start)..]),
                "the header checksum of the menu, as of any header", "Pan Docs, MMM01") { Enforced = true },
        ],
    };

    private static ImmutableArray<HeaderField> Title =>
    [
        new("manufacturerCode", 0x3F, 4, new TextCodec(0x00, letters: Letters), "Four letters of later cartridges, behind a title of at most 11.", Source) { When = TitleForm.HasCode },
        new("cgbFlag", 0x43, 1, Named(new(0x00, "none"), new(0x80, "compatible", "colour functions, and runs on all models"), new(0xC0, "only", "colour models only")),
            "Whether the colour model's functions are used; the last letter of a title of 16 without it.", Source) { When = TitleForm.HasFlag, Default = "none" },
        TitleRow(16, TitleForm.IsWhole, "without a CGB flag"),
        TitleRow(15, TitleForm.EndsAtFlag, "before a CGB flag"),
        TitleRow(11, TitleForm.EndsAtCode, "before a manufacturer code"),
    ];

    private static HeaderField TitleRow(int length, Func<HeaderContext, bool> when, string where) =>
        new("title", 0x34, length, new TextCodec(0x00, letters: Letters, endsInBlanks: true), $"The title in capitals, filled up with 00: {length} letters {where}.", Source)
        {
            FromCart = CartKey.Title,
            Default = "",
            When = when,
        };

    private static string? OldLicensee(HeaderContext context) =>
        context["newLicensee"] is { Length: > 0 } || string.Equals(context["sgbFlag"], "sgb", StringComparison.OrdinalIgnoreCase) ? SeeNewLicensee : null;

    private static NumberCodec Byte(ValueText form) => new(BytesPlacement.Byte, form);

    private static NumberCodec Named(params ImmutableArray<NamedValue> names) => Byte(new NamedValues(names));
}
