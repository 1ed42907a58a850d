using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Intellivision;

/// <summary>
/// The block at $5000 that the console's EXEC reads, and the title behind it. Offsets are in bytes, two a word. Where a program holds any of the
/// block, zeros are its own, so that what is usual is written into a wholly blank one only.
/// </summary>
public static class IntvHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of a word.</summary>
    public const int WordLength = 2;

    /// <summary>The address of the ROM's first word.</summary>
    public const int RomStart = 0x5000;

    /// <summary>Bytes of the block.</summary>
    public const int Length = 0x14 * WordLength;

    /// <summary>Where a title right behind the block lies.</summary>
    public const string TitleBehind = "$5014";

    /// <summary>Bytes of the pointers at the block's start.</summary>
    public const int Pointers = 6 * AddressWordsCodec.Length;

    private const string Source = "ROM header information thread (forums.atariage.com)";
    private const string Names = Source + "; the name from memory";

    /// <summary>The table.</summary>
    public static HeaderTable Table { get; } = new("universal data block", Region, new HeaderAnchor(0), Length + WordLength + ((WordTextCodec.MostLetters + 1) * WordLength),
    [
        Pointer("movingPictures", 0x0, "Address of the pictures of moving objects.", "$500D"),
        Pointer("processTable", 0x2, "Address of the table of processes.", "$500D"),
        Pointer("start", 0x4, "Address where the program starts.", null) with { Required = true },
        Pointer("backgroundPictures", 0x6, "Address of the background's pictures.", "$500D"),
        Pointer("gramList", 0x8, "Address of the list of pictures for the console's picture RAM.", "$500F"),
        Pointer("titleAddress", 0xA, "Address of the year and the title; $5014 is right behind this block.", TitleBehind),
        Word("flags", 0xC, "Key click and other settings of the EXEC.", "0x03C0", Source),
        Word("borderExtension", 0xD, "How the border hides the picture's edges.", "0x0000", Names),
        Word("colorMode", 0xE, "0 for a stack of colors, 1 for foreground and background.", "0x0000", Names),
        Word("color0", 0xF, "First color of the stack.", "0x0001", Names),
        Word("color1", 0x10, "Second color of the stack.", "0x0001", Names),
        Word("color2", 0x11, "Third color of the stack.", "0x0001", Names),
        Word("color3", 0x12, "Fourth color of the stack.", "0x0001", Names),
        Word("borderColor", 0x13, "Color of the border.", "0x0001", Names),
        new("year", Length, WordLength, new NumberCodec(TwoBytes, new YearNumber()), "The year the EXEC shows; stored less 1900.", Source) { Required = true, When = HasTitleBehind },
        new("title", Length + WordLength, (WordTextCodec.MostLetters + 1) * WordLength, new WordTextCodec(), "The title the EXEC shows.", Source)
        {
            FromCart = CartKey.Title,
            Required = true,
            When = HasTitleBehind,
        },
    ]);

    private static BytesPlacement TwoBytes => new(WordLength, ByteOrder.BigEndian);

    private static bool HasTitleBehind(HeaderContext context) => context["titleAddress"] == TitleBehind;

    private static HeaderField Pointer(string name, int word, string meaning, string? usual) =>
        new(name, word * WordLength, AddressWordsCodec.Length, new AddressWordsCodec(), Usually(meaning, usual), Source) { DefaultFrom = context => IsBlank(context) ? usual : null };

    private static HeaderField Word(string name, int word, string meaning, string usual, string source) =>
        new(name, word * WordLength, WordLength, new NumberCodec(TwoBytes, new PlainNumber(4)), Usually(meaning, usual), source) { DefaultFrom = context => IsBlank(context) ? usual : null };

    private static string Usually(string meaning, string? usual) =>
        usual is null ? meaning : string.Create(CultureInfo.InvariantCulture, $"{meaning[..^1]}; {usual} in a block the program leaves blank.");

    private static bool IsBlank(HeaderContext context)
    {
        var block = context.Held[..Length];
        return !block.ContainsAnyExcept((byte)0) || !block.ContainsAnyExcept((byte)0xFF);
    }
}
