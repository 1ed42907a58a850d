using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The last 25 bytes of a 5200 cartridge, $BFE7-$BFFF: title screen and start.</summary>
internal static class ConsoleTrailer
{
    public const int Length = 25;
    public const int TitleAt = 1;
    public const int TitleLength = 20;
    public const int YearAt = 21;

    public const string Title = "title";
    public const string Year = "year";
    public const string Start = "startAddress";

    private const string Source = "public program sources";

    public static HeaderTable Table { get; } = new("cartridge trailer", "rom", new HeaderAnchor(Length, FromEnd: true), Length,
    [
        new("palMark", 0, 1, new NumberCodec(BytesPlacement.Byte, new PlainNumber(2)) { ZeroIsSaid = true }, "Tested by a later console's own program to see whether the game is for PAL; not verified.", "from memory"),
        new(Title, TitleAt, TitleLength, new DisplayTextCodec(), "The title the console shows at power-on.", Source) { FromCart = CartKey.Title },
        new("titleColours", TitleAt, TitleLength, new LetterColourCodec(), "The title's colours, of the four the screen has.", Source)
            { DefaultFrom = static context => IsTitle(context[Title]) ? "0" : null },
        new(Year, YearAt, 2, new YearCodec(), "The year the console shows; or no title screen at all, which an erased byte means too.", Source),
        new(Start, 23, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), "Where the game starts.", Source) { Required = true },
    ]);

    // Erased bytes read as underscores, zeros as spaces.
    private static bool IsTitle(string? text) => text?.Trim('_').Length > 0;
}
