using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>
/// The header of Master System and Game Gear in the last 16 bytes of the first 32 KiB (16 or 8 KiB in smaller ROMs), and the author's
/// tag in the 16 bytes before it. Where there is no tag, those are the program's own.
/// </summary>
public static class SegaHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>What the header begins with.</summary>
    public const string Mark = "TMR SEGA";

    /// <summary>What the author's tag begins with.</summary>
    public const string TagMark = "SDSC";

    /// <summary>Bytes of the header proper.</summary>
    public const int MarkedLength = 0x10;

    /// <summary>Bytes of the author's tag, and so the header's place in the table.</summary>
    public const int TagLength = 0x10;

    /// <summary>The size code's name.</summary>
    public const string Range = "checksumRange";

    private const string Source = "ROM Header, smspower.org";
    private const string TagSource = "SDSC ROM Tag Specification, smspower.org";
    private const int CodeAt = 0x1F;

    private static readonly HeaderAnchor Anchor = new(0x7FE0) { Shorter = [(0x8000, 0x3FE0), (0x4000, 0x1FE0)] };

    private static readonly NumberCodec TagPointer = new(new BytesPlacement(2, ByteOrder.LittleEndian), new NamedValues(new NamedValue(0xFFFF, "none")));

    private static readonly string[] TagNames = ["sdscMark", "sdscVersion", "sdscDate", "sdscAuthor", "sdscName", "sdscNotes"];

    /// <summary>Names of the region's values.</summary>
    public static NamedValues Regions { get; } = new(
        new NamedValue(3, "sms-japan", "Master System, Japan"),
        new NamedValue(4, "sms-export", "Master System, elsewhere"),
        new NamedValue(5, "gg-japan", "Game Gear, Japan"),
        new NamedValue(6, "gg-export", "Game Gear, elsewhere"),
        new NamedValue(7, "gg-international", "Game Gear, everywhere"));

    /// <summary>The header of the Master System; export models refuse a wrong checksum.</summary>
    public static HeaderTable MasterSystem { get; } = Table("sms-export", enforced: true);

    /// <summary>The header of the Game Gear, which does not verify the checksum.</summary>
    public static HeaderTable GameGear { get; } = Table("gg-international", enforced: false);

    /// <summary>Where the mark lies in a ROM: 0x7FF0, 0x3FF0 or 0x1FF0.</summary>
    /// <param name="length">Length of the ROM in bytes.</param>
    public static int MarkAt(int length) => Anchor.In(length) + TagLength;

    private static HeaderTable Table(string region, bool enforced) => new("header and author's tag", Region, Anchor, TagLength + MarkedLength,
    [
        .. Tag,
        new("mark", 0x10, 8, new TextCodec(0x00), "TMR SEGA; export models of the Master System and all Game Gears look for it.", Source) { Default = Mark },
        new("reserved", 0x18, 2, new BytesCodec(2), "Reserved: 0000; FFFF and 2020 are also seen.", Source) { Default = "0000" },
        new("productCode", 0x1C, 3, new ProductCodeCodec(), "The number of the product.", Source) { Default = "0" },
        Nibble("version", 0x1E, 0, PlainNumber.InDecimal, "Revision of the game, 0 for the first.") with { FromCart = CartKey.Revision, Default = "0" },
        Nibble("region", CodeAt, 4, Regions, "Console and region.") with { Default = region },
        Nibble(Range, CodeAt, 0, ChecksumRange.Words, "The size code: how much of the ROM the checksum covers, no more than the ROM has; less is legal and shortens the start.")
            with { WorkOut = WorkOutRange },
    ])
    {
        Checksums =
        [
            new("checksum", 0x1A, 2, ByteOrder.LittleEndian, static rom => SegaChecksum.Of(rom),
                "sum of bytes modulo 2^16: 0000-1FEF for 8KiB, 0000-3FEF for 16KiB, 0000-7FEF for 32KiB, and for larger ranges 0000-7FEF and from 8000 up to the size", Source)
                { Enforced = enforced },
        ],
    };

    private static ImmutableArray<HeaderField> Tag =>
    [
        TagField("sdscMark", 0x00, 4, new TextCodec(0x00), "SDSC: an author's tag follows.") with { Default = TagMark },
        TagField("sdscVersion", 0x04, 2, new TagVersionCodec(), "Version of the game.") with { Required = true },
        TagField("sdscDate", 0x06, 4, new TagDateCodec(), "Day it was finished.") with { Required = true },
        Pointer("sdscAuthor", 0x0A, "Address of the author's name, text that ends with 00; 0x00 is none too."),
        Pointer("sdscName", 0x0C, "Address of the game's name, text that ends with 00."),
        Pointer("sdscNotes", 0x0E, "Address of notes, text that ends with 00; only notes have line breaks."),
    ];

    private static HeaderField TagField(string name, int offset, int length, FieldCodec codec, string meaning) =>
        new(name, offset, length, codec, meaning, TagSource) { When = HasTag };

    private static HeaderField Pointer(string name, int offset, string meaning) =>
        TagField(name, offset, 2, TagPointer, meaning) with { Default = "none" };

    private static HeaderField Nibble(string name, int offset, int lowBit, ValueText form, string meaning) =>
        new(name, offset, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, lowBit, 4)), form), meaning, Source);

    private static bool HasTag(HeaderContext context) =>
        TagNames.Any(name => context[name] is not null) || context.Held.StartsWith("SDSC"u8);

    // A code stated or held stays when the ROM has as many bytes.
    private static string WorkOutRange(HeaderContext context)
    {
        var length = context.LengthOf(Region);
        foreach (var code in new[] { Stated(context), Held(context.Held) })
        {
            if (code is { } known && ChecksumRange.Of(known) is { } range && range.Size <= length)
            {
                return range.Text;
            }
        }

        return ChecksumRange.For(length).Text;
    }

    private static int? Stated(HeaderContext context) =>
        context[Range] is { } text && ChecksumRange.Words.TryParse(text, out var code) && code <= 0xF ? (int)code : null;

    private static int? Held(ReadOnlySpan<byte> header) =>
        header.Length > CodeAt && header[TagLength..].StartsWith("TMR SEGA"u8) && header[CodeAt] is not (0x00 or 0xFF) ? header[CodeAt] & 0x0F : null;
}
