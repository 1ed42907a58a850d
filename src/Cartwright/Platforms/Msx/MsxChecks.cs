using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Msx;

/// <summary>Checks of a finished ROM.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="mapping">Where the board shows it.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class MsxChecks(CartView cart, MsxMapping mapping, FindingLog log)
{
    private const ushort Cartridge = 0x4142;
    private const ushort SubRom = 0x4344;
    private const int PointersAt = 0x04;
    private const int PointersLength = 6;
    private const int SoundChipBank = 0x3F;

    private readonly RegionImage _region = cart.Rom[MsxHeader.Region]!;

    public void Run()
    {
        var mark = BinaryPrimitives.ReadUInt16BigEndian(Header);
        if (mark != Cartridge)
        {
            CheckMark(mark);
            return;
        }

        CheckInit();
        CheckPointers();
        if (cart["reserved"] != "000000000000")
        {
            Add(MsxFindings.Reserved, "reserved", $"The reserved bytes are {cart["reserved"]}.");
        }

        MapperChecks.Check(cart, _region, mapping, log);
        if (mapping.Name == "konami-scc" && _region.Length > SoundChipBank * mapping.BankSize)
        {
            Add(MsxFindings.SoundChip, "mapping", $"The ROM has a bank $3F ({SoundChipBank}), and 3F in $9000 shows the sound chip instead of it.");
        }
    }

    private ReadOnlySpan<byte> Header => _region.Bytes.Span.Slice(mapping.Header, MsxHeader.Length);

    private void CheckMark(ushort mark)
    {
        if (mark == SubRom)
        {
            Add(MsxFindings.SubRomMark, "mark", "The mark is CD, which the BIOS looks for at $0000 of the computer's own ROMs.");
            return;
        }

        for (var at = 0; at < _region.Length; at += MsxMapping.PageSize)
        {
            if (_region.Bytes.Span[at..].StartsWith("AB"u8))
            {
                Add(MsxFindings.NoMark, "mark", string.Create(CultureInfo.InvariantCulture, $"The mark AB belongs at 0x{mapping.Header:X4}, and it lies at 0x{at:X4}."));
                return;
            }
        }

        Add(MsxFindings.NoMark, "mark", string.Create(CultureInfo.InvariantCulture, $"At 0x{mapping.Header:X4}, where the mark AB belongs, there is {Convert.ToHexString(Header[..2])}."));
    }

    private void CheckInit()
    {
        var init = Pointer("init");
        if (init == 0)
        {
            if (!Header.Slice(PointersAt, PointersLength).ContainsAnyExcept((byte)0))
            {
                Add(MsxFindings.NothingStarts, "init", "INIT, STATEMENT, DEVICE and TEXT are all 0.");
            }

            return;
        }

        if (!HoldsProgram(init))
        {
            var remedy = init >= 0x8000 && mapping.Name == "page-1" && _region.Length <= MsxMapping.PageSize ? "State `header.mapping` as `page-2`, or move the program." : null;
            Add(MsxFindings.InitNowhere, "init", $"INIT is {Hex(init)}, and no program is there.", remedy);
        }
        else if (mapping.BankSize > 0 && init >= MsxMapping.PageOne + mapping.BankSize)
        {
            Add(MsxFindings.InitUnsure, "init", $"INIT is {Hex(init)}, outside the first window, which ends at {Hex(MsxMapping.PageOne + mapping.BankSize - 1)}.");
        }
    }

    private void CheckPointers()
    {
        if (Header.Slice(PointersAt, PointersLength).IndexOfAnyExceptInRange((byte)0x20, (byte)0x7E) < 0)
        {
            Add(MsxFindings.Rubbish, "statement", $"STATEMENT, DEVICE and TEXT hold the letters `{System.Text.Encoding.ASCII.GetString(Header.Slice(PointersAt, PointersLength))}`.");
            return;
        }

        foreach (var field in new[] { "statement", "device" })
        {
            if (Pointer(field) is > 0 and var address && !HoldsProgram(address))
            {
                Add(MsxFindings.Rubbish, field, $"`{field}` is {Hex(address)}, and no program is there.");
            }
        }

        if (Pointer("text") is > 0 and var text && (text is < 0x8000 or >= 0xC000 || !HoldsProgram(text)))
        {
            Add(MsxFindings.TextPlace, "text", $"`text` is {Hex(text)}.", null, "an address at $8000-$BFFF where a program lies");
        }
    }

    private int Pointer(string field) => BinaryPrimitives.ReadUInt16LittleEndian(cart.Headers[0].Entries.First(entry => entry.Field.Name == field).Raw.AsSpan());

    private bool HoldsProgram(int address)
    {
        var place = mapping.Addresses.Locate(new ConsoleAddress(null, address), static _ => null);
        return place.Region is not null && _region.CoveringSegment(place.Offset, 1) is not null;
    }

    private static string Hex(int address) => string.Create(CultureInfo.InvariantCulture, $"${address:X4}");

    private void Add(FindingRule rule, string field, string message, string? remedy = null, string? expected = null) =>
        log.Add(rule, cart.Place("header:" + field), message, expected, remedy);
}
