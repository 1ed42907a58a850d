using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Intellivision;

/// <summary>Checks of a finished ROM.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class IntvChecks(CartView cart, FindingLog log)
{
    private const int NarrowMost = 0x03FF;
    private const int OpenBits = 0xFC00;
    private const int FirstYear = 70;
    private const int LastYear = 199;

    private static readonly ImmutableArray<string> DataPointers = ["movingPictures", "processTable", "backgroundPictures", "gramList"];

    private readonly RegionImage _region = cart.Rom[IntvHeader.Region]!;

    public void Run()
    {
        var end = _region.Coverage[^1].End;
        if (end % IntvHeader.WordLength != 0)
        {
            log.Add(IntvFindings.HalfWord, _region.Coverage[^1].Place, string.Create(CultureInfo.InvariantCulture, $"The programs end at 0x{end:X6}, in the middle of a word."));
        }

        if (!CheckWidth())
        {
            return;
        }

        CheckPointers();
        CheckStart(CheckTitle());
    }

    // False where the words mean nothing as they are.
    private bool CheckWidth()
    {
        var (words, wide, open) = (0, 0, 0);
        foreach (var segment in _region.Coverage)
        {
            // Words that the header wrote count as well: they are the ROM's.
            for (var at = (int)(segment.Offset + 1) & ~1; at + IntvHeader.WordLength <= segment.End; at += IntvHeader.WordLength)
            {
                var word = BinaryPrimitives.ReadUInt16BigEndian(_region.Bytes.Span[at..]);
                words++;
                wide += word > NarrowMost ? 1 : 0;
                open += (word & OpenBits) == OpenBits ? 1 : 0;
            }
        }

        var place = _region.Coverage[0].Place;
        if (words > 0 && open == words)
        {
            log.Add(IntvFindings.OpenLines, place, string.Create(CultureInfo.InvariantCulture, $"All {words} words of the programs are FC00 or more."));
            return false;
        }

        if (wide > 0)
        {
            log.Add(IntvFindings.WideWords, place, string.Create(CultureInfo.InvariantCulture, $"{wide} of the programs' {words} words are more than 03FF."));
        }

        return true;
    }

    private void CheckPointers()
    {
        foreach (var entry in cart.Headers[0].Entries.Where(static entry => entry.Field.Codec is AddressWordsCodec))
        {
            var name = entry.Field.Name;
            if (AddressWordsCodec.Address(entry.Raw.AsSpan()) is not { } address)
            {
                Add(IntvFindings.PointerForm, name, $"The pointer `{name}` holds {Convert.ToHexString(entry.Raw.AsSpan())}.");
            }
            else if (DataPointers.Contains(name) && IntvAddresses.OffsetOf(address, out _) is { } offset && !HoldsWords(offset))
            {
                Add(IntvFindings.PointerNowhere, name, string.Create(CultureInfo.InvariantCulture, $"The pointer `{name}` leads to ${address:X4}, and no program is there."));
            }
        }
    }

    // The address behind the title; that behind the block where there is none.
    private int CheckTitle()
    {
        var behind = IntvHeader.RomStart + (IntvHeader.Length / IntvHeader.WordLength);
        if (Address("titleAddress") is not { } address)
        {
            return behind;
        }

        var rom = _region.Bytes.Span;
        if (IntvAddresses.OffsetOf(address, out _) is not { } offset || offset + IntvHeader.WordLength > rom.Length || WordTextCodec.Text(rom[(offset + IntvHeader.WordLength)..]) is not { Length: > 0 } text)
        {
            Add(IntvFindings.NoTitle, "titleAddress", string.Create(CultureInfo.InvariantCulture, $"At ${address:X4} there is no year with a text and a word of 0 behind it."));
            return behind;
        }

        var year = BinaryPrimitives.ReadUInt16BigEndian(rom[offset..]);
        if (year is < FirstYear or > LastYear)
        {
            Add(IntvFindings.YearOdd, "year", string.Create(CultureInfo.InvariantCulture, $"The title's year is {YearNumber.First + year}."));
        }

        return address == behind ? behind + text.Length + 2 : behind;
    }

    private void CheckStart(int behind)
    {
        if (Address("start") is not { } start)
        {
            return;
        }

        if (start >= IntvHeader.RomStart && start < behind)
        {
            Add(IntvFindings.StartInHeader, "start", string.Create(CultureInfo.InvariantCulture, $"The program starts at ${start:X4}, and the header ends at ${behind - 1:X4}."));
        }
        else if (IntvAddresses.OffsetOf(start, out _) is not { } offset || !HoldsWords(offset))
        {
            var inBytes = start % 2 == 0 && IntvAddresses.OffsetOf(start / 2, out _) is { } half && HoldsWords(half);
            Add(IntvFindings.StartNowhere, "start", string.Create(CultureInfo.InvariantCulture,
                $"The program starts at ${start:X4}, and no program is there{(inBytes ? $"; counted in bytes it would be the word at ${start / 2:X4}" : "")}."));
        }
    }

    private int? Address(string field) => AddressWordsCodec.Address(cart.Headers[0].Entries.First(entry => entry.Field.Name == field).Raw.AsSpan());

    // The header's own words are there too.
    private bool HoldsWords(int offset) => offset < IntvHeader.Length || _region.CoveringSegment(offset, IntvHeader.WordLength) is not null;

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place("header:" + field), message);
}
