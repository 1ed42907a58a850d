using Cartwright.Checksums;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The header at 0x7FF0 (0x3FF0 and 0x1FF0 in ROMs of 16 and 8 KiB), with the homebrew author tag in the 16 bytes before it.</summary>
public static class SegaHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of tag and header.</summary>
    public const int Length = 0x20;

    /// <summary>Where the mark of the header lies, counted from the tag's first byte.</summary>
    public const int MarkAt = 0x10;

    private const int TagStart = 0x7FE0;
    private const int ChecksumAt = 0x1A;
    private const int NibbleAt = 0x1F;
    private const int HeaderLength = 0x10;
    private const int UpperHalf = 0x8000;
    private const string Source = "ROM Header (smspower.org)";
    private const string TagSource = "SDSC Header (smspower.org)";
    private static readonly string[] TagFields = ["tagVersion", "tagDate", "tagAuthor", "tagName", "tagNotes"];

    /// <summary>Where the tag begins.</summary>
    public static HeaderAnchor Anchor { get; } = new(TagStart) { Tail = Length };

    /// <summary>Names of the region's values.</summary>
    public static NamedValues Regions { get; } = new(
        new NamedValue(3, "sms-japan"), new NamedValue(4, "sms-export"), new NamedValue(5, "gg-japan"), new NamedValue(6, "gg-export"), new NamedValue(7, "gg-international"));

    /// <summary>The table of a console.</summary>
    /// <param name="region">The word of the region that counts when none is stated.</param>
    /// <param name="enforced">Whether some model of the console refuses a wrong checksum.</param>
    public static HeaderTable Table(string region, bool enforced) => new("Sega header", Region, Anchor, Length,
    [
        Tag("tag", 0x00, 4, new TextCodec(0x00), "The author tag's mark.") with { Default = "SDSC" },
        Tag("tagVersion", 0x04, 2, new BcdCodec(BcdForm.Version), "The game's version: 1.02.") with { Default = "0.00" },
        Tag("tagDate", 0x06, 4, new BcdCodec(BcdForm.Date), "The day of the release: 2026-11-25.") with { Default = "hex 00000000" },
        Tag("tagAuthor", 0x0A, 2, Pointer, "Address of the author's name in the ROM, a text that ends with 00; 0xFFFF for none.") with { Default = "0xFFFF" },
        Tag("tagName", 0x0C, 2, Pointer, "Address of the game's name in the ROM; 0xFFFF for none.") with { Default = "0xFFFF" },
        Tag("tagNotes", 0x0E, 2, Pointer, "Address of the release notes in the ROM; 0xFFFF for none.") with { Default = "0xFFFF" },
        new("mark", MarkAt, 8, new TextCodec(0x20), "The text a boot ROM looks for.", Source) { Default = "TMR SEGA", Repair = Unwritten("TMR SEGA") },
        new("reserved", 0x18, 2, new BytesCodec(2), "Not used.", Source) { Default = "0000", Repair = Unwritten("0000") },
        new("productCode", 0x1C, 3, new ProductCodeCodec(), "Number of the product, 0 to 159999.", Source) { Default = "0", Repair = Unwritten("0") },
        new("version", 0x1E, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 4)), PlainNumber.InDecimal), "Revision of the game, 0 to 15.", Source)
            { FromCart = CartKey.Revision, Default = "0", Repair = Unwritten("0") },
        new("region", NibbleAt, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 4, 4)), Regions), "Console and market.", Source) { Default = region, Repair = Unwritten(region) },
        new("sumRange", NibbleAt, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 4)), SumRange.Words),
            "Up to where the checksum sums; less than the ROM only shortens the wait at power-on.", Source) { WorkOut = WorkOutRange, Mended = true },
    ])
    {
        IsOther = static header => !header[MarkAt..].StartsWith("TMR SEGA"u8) && !Blank.Is(header[MarkAt..]),
        Checksums =
        [
            new("checksum", ChecksumAt, 2, ByteOrder.LittleEndian, static rom => Sum(rom),
                "sum of all bytes up to the size of sumRange, without the header's 16 bytes and, above 32 KiB, without what lies between them and 0x8000, modulo 2^16", Source) { Enforced = enforced },
        ],
    };

    /// <summary>The sum a boot ROM computes, from the nibble the header holds; over what there is of the ROM when that is less.</summary>
    /// <param name="rom">The ROM.</param>
    public static ushort Sum(ReadOnlySpan<byte> rom)
    {
        var tag = Anchor.In(rom.Length);
        var bytes = Math.Min(SumRange.Of(rom[tag + NibbleAt] & 0x0F)?.Bytes ?? 0, rom.Length);
        var low = Math.Min(Math.Min(bytes, UpperHalf) - HeaderLength, tag + MarkAt);
        return (ushort)(ByteSum.Sum16(rom[..Math.Max(0, low)]) + (bytes > UpperHalf ? ByteSum.Sum16(rom[UpperHalf..bytes]) : 0));
    }

    // A header is written into an existing image where nothing at all stands; anything else may be code.
    private static FieldRepair Unwritten(string text) => new("nothing", (_, context) => Blank.Is(context.Held[MarkAt..]) ? text : null, OnlyNamed: false);

    private static NumberCodec Pointer => new(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4));

    private static HeaderField Tag(string name, int offset, int length, FieldCodec codec, string meaning) =>
        new(name, offset, length, codec, meaning, TagSource) { When = HasTag };

    // The tag is there when anything of it is stated, or the program holds one.
    private static bool HasTag(HeaderContext context) =>
        context.Held.StartsWith("SDSC"u8) || TagFields.Any(name => context[name] is not null);

    // A stated range is the manifest's affair, and one that the program holds stays when it is sound and the ROM has as many bytes.
    private static string? WorkOutRange(HeaderContext context)
    {
        if (context["sumRange"] is not null)
        {
            return null;
        }

        var length = context.LengthOf(Region);
        var held = context.Held[MarkAt..].StartsWith("TMR SEGA"u8) && context.Held[NibbleAt] is not (0x00 or 0xFF) ? SumRange.Of(context.Held[NibbleAt] & 0x0F) : null;
        return held is { Faulty: null } && held.Bytes <= length ? ByteSize.Format(held.Bytes) : ByteSize.Format(length switch
        {
            < 16 << 10 => 8 << 10,
            < 32 << 10 => 16 << 10,
            _ => 32 << 10,
        });
    }
}
