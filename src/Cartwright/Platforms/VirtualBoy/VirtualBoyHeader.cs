using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>
/// The header and the handlers behind it: the last 0x220 bytes of the ROM. The bytes between handlers belong to nobody: they are the program's own.
/// </summary>
public static class VirtualBoyHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of header and handlers.</summary>
    public const int Length = 0x220;

    /// <summary>Bytes of the handlers.</summary>
    public const int HandlersLength = 0x200;

    /// <summary>Bytes of the title.</summary>
    public const int TitleLength = 20;

    /// <summary>Zero bytes behind the title.</summary>
    public const int ReservedLength = 5;

    private const string Source = "\"Sacred Tech Scroll\", Virtual Boy hardware documentation";

    /// <summary>The header of every cartridge.</summary>
    public static HeaderTable Table { get; } = new("Virtual Boy header", Region, new HeaderAnchor(Length, FromEnd: true), Length,
    [
        Text("title", 0x00, TitleLength, "The title, filled up with 00; Shift-JIS bytes only as `hex` and all 20 bytes.") with { FromCart = CartKey.Title },
        new("reserved", TitleLength, ReservedLength, new BytesCodec(ReservedLength), "Not used.", Source) { Default = "0000000000" },
        Text("makerCode", 0x19, 2, "Two letters for the publisher."),
        Text("gameCode", 0x1B, 4, "Four letters for the game."),
        new("version", 0x1F, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Revision of the game: the n of 1.n.", Source) { FromCart = CartKey.Revision, Default = "0" },
        .. Handlers,
    ]);

    private static ImmutableArray<HeaderField> Handlers =>
    [
        .. Handler.Others.Select(static handler => Row(handler) with { Default = HandlerCodec.None }),
        Row(Handler.Reset),
    ];

    private static HeaderField Row(Handler handler) =>
        new(handler.Name, Length - handler.FromEnd, HandlerCodec.Length, new HandlerCodec(), $"Code that runs {handler.When}; an address stands for a jump to it.", Source);

    private static HeaderField Text(string name, int offset, int length, string meaning) =>
        new(name, offset, length, new TextCodec(0x00, endsInBlanks: true), meaning, Source) { Default = "" };
}
