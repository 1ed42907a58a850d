using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>Checks of a finished ROM.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="isBanked">Whether the board switches banks; all that is known of those is from memory.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class ColecoChecks(CartView cart, bool isBanked, FindingLog log)
{
    private const int RomStart = 0x8000;
    private const int BehindHeader = RomStart + ColecoHeader.Title;
    private const int ShownLetters = 60;
    private const int HotSpots = 0x40;

    private readonly RegionImage _region = cart.Rom[ColecoHeader.Region]!;
    private readonly HeaderImage _header = cart.Headers[0];

    public void Run()
    {
        if (BinaryPrimitives.ReadUInt16BigEndian(Raw("mark")) is not (0xAA55 or 0x55AA))
        {
            Add(isBanked ? ColecoFindings.BankedStart : ColecoFindings.NoMark, "mark", $"The ROM begins with {Convert.ToHexString(Raw("mark"))} at $8000.", "AA55 or 55AA");
            return;
        }

        CheckStart();
        CheckSlots();
        CheckNmi();
        CheckTitle();
        if (isBanked)
        {
            CheckHotSpots();
        }
    }

    private void CheckStart()
    {
        var start = BinaryPrimitives.ReadUInt16LittleEndian(Raw("start"));
        if (!HoldsProgram(start))
        {
            Add(isBanked ? ColecoFindings.BankedStart : ColecoFindings.StartNowhere, "start", string.Create(CultureInfo.InvariantCulture, $"The program starts at ${start:X4}, and no program is there."));
        }
        else if (start < BehindHeader)
        {
            Add(ColecoFindings.StartInHeader, "start", string.Create(CultureInfo.InvariantCulture, $"The program starts at ${start:X4}, and the header ends at ${BehindHeader - 1:X4}."));
        }
    }

    private void CheckSlots()
    {
        foreach (var name in ColecoHeader.Slots)
        {
            if (Blank.Is(Raw(name)))
            {
                Add(ColecoFindings.BlankSlot, name, $"The slot `{name}` holds {Convert.ToHexString(Raw(name))}.");
            }
            else if (LeadsNowhere(Raw(name)) is { } target)
            {
                Add(ColecoFindings.SlotNowhere, name, $"The slot `{name}` jumps to {target}, and no program is there.");
            }
        }
    }

    private void CheckNmi()
    {
        if (Blank.Is(Raw("nmi")))
        {
            Add(ColecoFindings.NoNmi, "nmi", $"The slot `nmi` holds {Convert.ToHexString(Raw("nmi"))}.");
        }
        else if (LeadsNowhere(Raw("nmi")) is { } target)
        {
            Add(ColecoFindings.NmiNowhere, "nmi", $"The slot `nmi` jumps to {target}, and no program is there.");
        }
    }

    private void CheckTitle()
    {
        if (cart["mark"] != ColecoHeader.ShowsTitle)
        {
            return;
        }

        var at = _header.Entries[0].Offset + ColecoHeader.Title;
        if (TitleScreenCodec.LengthOf(_region.Bytes.Span[at..]) is not { } length)
        {
            Add(ColecoFindings.NoTitle, "titleScreen", "At $8024 there are not two texts and a year of four digits with `/` between.");
        }
        else if (length > ShownLetters)
        {
            Add(ColecoFindings.LongTitle, "titleScreen", string.Create(CultureInfo.InvariantCulture, $"The title has {length} letters."));
        }
    }

    private void CheckHotSpots()
    {
        for (var bank = 0; bank < _region.Length - ColecoHeader.BankSize; bank += ColecoHeader.BankSize)
        {
            var at = bank + ColecoHeader.BankSize - HotSpots;
            if (_region.CoveringSegment(at, HotSpots) is not null && _region.Bytes.Span.Slice(at, HotSpots).ContainsAnyExcept((byte)0, _region.Fill))
            {
                Add(ColecoFindings.HotSpots, "mapper", string.Create(CultureInfo.InvariantCulture, $"Bank {bank / ColecoHeader.BankSize} has bytes at $FFC0-$FFFF (0x{at:X6})."));
                return;
            }
        }
    }

    private ReadOnlySpan<byte> Raw(string field) => _header.Entries.First(entry => entry.Field.Name == field).Raw.AsSpan();

    // A jump below the cartridge leads into the BIOS or to RAM, which is the program's affair.
    private string? LeadsNowhere(ReadOnlySpan<byte> slot) => JumpSlotCodec.Target(slot) is { } target && target >= RomStart && !HoldsProgram(target)
        ? string.Create(CultureInfo.InvariantCulture, $"${target:X4}")
        : null;

    private bool HoldsProgram(int address)
    {
        var place = cart.Layout.Addresses.Locate(new ConsoleAddress(null, address), static _ => null);
        return place.Region is not null && _region.CoveringSegment(place.Offset < 0 ? _region.Length + place.Offset : place.Offset, 1) is not null;
    }

    private void Add(FindingRule rule, string field, string message, string? expected = null) => log.Add(rule, cart.Place("header:" + field), message, expected);
}
