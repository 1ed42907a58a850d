using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>The header at $8000. What lies behind its last slot, and behind the title where there is one, is the program's own.</summary>
public static class ColecoHeader
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of a bank, on boards that have banks.</summary>
    public const int BankSize = 0x4000;

    /// <summary>The mark's word where the BIOS shows the title first.</summary>
    public const string ShowsTitle = "title-screen";

    /// <summary>Offset of the first slot.</summary>
    public const int FirstSlot = 0x0C;

    /// <summary>Offset of the slot for the video chip's interrupt.</summary>
    public const int NmiSlot = 0x21;

    /// <summary>Offset of the title's text.</summary>
    public const int Title = 0x24;

    /// <summary>Offset of the address where the program starts.</summary>
    public const int Start = 0x0A;

    private const string Source = "ColecoVision specifications; Cartridge header technical information";
    private const int Length = Title + TitleScreenCodec.Longest;

    /// <summary>The header at the ROM's start.</summary>
    public static HeaderTable Plain { get; } = Table(new HeaderAnchor(0));

    /// <summary>The header of a ROM with banks, in its last one.</summary>
    public static HeaderTable Banked { get; } = Table(new HeaderAnchor(BankSize, FromEnd: true));

    /// <summary>Names of the slots before the last: restarts and interrupt.</summary>
    public static ImmutableArray<string> Slots { get; } = ["rst08", "rst10", "rst18", "rst20", "rst28", "rst30", "irq"];

    private static HeaderTable Table(HeaderAnchor anchor) => new("cartridge header", Region, anchor, Length,
    [
        new("mark", 0x00, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.BigEndian), new NamedValues(
                new NamedValue(0xAA55, ShowsTitle, "AA 55: logo and title, then the program"), new NamedValue(0x55AA, "at-once", "55 AA: the program at once"))),
            "What the BIOS does at power-on.", Source) { DefaultFrom = static context => context["titleScreen"] is null ? null : ShowsTitle, Default = "at-once" },
        Pointer("spriteTable", 0x02, "Address of the sprite table in RAM, or 0.") with { Default = "0x0000" },
        Pointer("spriteOrder", 0x04, "Address of the sprites' order in RAM, or 0.") with { Default = "0x0000" },
        Pointer("workBuffer", 0x06, "Address of the BIOS routines' work buffer in RAM, or 0.") with { Default = "0x0000" },
        Pointer("controllerMap", 0x08, "Address of the controllers' map, or 0 where the BIOS is not to poll them.") with { Default = "0x0000" },
        Pointer("start", Start, "Address where the program starts.") with { Required = true },
        .. Restarts(),
        Slot("irq", 0x1E, "The slot for RST 38h and interrupts.") with { DefaultFrom = static context => HasNoSlots(context.Held) ? JumpSlotCodec.ReturnFromInterrupt : null },
        Slot("nmi", NmiSlot, "The slot for the video chip's interrupt; with 55 AA the handler may begin here."),
        new("titleScreen", Title, TitleScreenCodec.Longest, new TitleScreenCodec(), "The text the BIOS shows: second line, first line, year.", Source) { When = HasTitle },
    ]);

    private static IEnumerable<HeaderField> Restarts()
    {
        for (var i = 0; i < 6; i++)
        {
            var offset = FirstSlot + (3 * i);
            var name = (8 * (i + 1)).ToString("X2", CultureInfo.InvariantCulture);
            yield return Slot("rst" + name, offset, $"The slot for RST {name}h.") with
            {
                DefaultFrom = static context => HasNoSlots(context.Held) ? JumpSlotCodec.Return : null,
            };
        }
    }

    // One routine may run through several slots, so a blank one among others stays.
    private static bool HasNoSlots(ReadOnlySpan<byte> held) => Blank.Is(held[FirstSlot..NmiSlot]);

    private static bool HasTitle(HeaderContext context) =>
        context["mark"] == ShowsTitle && (context["titleScreen"] is not null || TitleScreenCodec.LengthOf(context.Held[Title..]) is not null);

    private static HeaderField Pointer(string name, int offset, string meaning) =>
        new(name, offset, 2, new NumberCodec(new BytesPlacement(2, ByteOrder.LittleEndian), new PlainNumber(4)), meaning, Source);

    private static HeaderField Slot(string name, int offset, string meaning) => new(name, offset, 3, new JumpSlotCodec(), meaning, Source);
}
