using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>The checks of a Game Boy Advance ROM that need more than one field.</summary>
internal sealed class AdvanceChecks(CartView cart, FindingLog log)
{
    private const byte Branch = 0xEA;
    private const int EepromBytes = 0x100;

    private ReadOnlySpan<byte> Rom => cart.Bytes(AdvanceHeader.Region);

    public void Run()
    {
        CheckEntry();
        CheckBitmap();
        CheckFixed();
        CheckReserved();
        CheckSaves();
    }

    /// <summary>Where an entry branches to, as an offset into the ROM; null when it is no branch. The processor counts from 8 bytes ahead.</summary>
    public static long? Target(ReadOnlySpan<byte> entry) =>
        entry[3] == Branch ? 8 + (4L * ((BinaryPrimitives.ReadInt32LittleEndian(entry) << 8) >> 8)) : null;

    private void CheckEntry()
    {
        if (Target(Rom) is not { } target)
        {
            Add(AdvanceFindings.NoBranch, "entry", string.Create(CultureInfo.InvariantCulture, $"The first instruction is {Convert.ToHexString(Rom[..4])}, and a branch ends in EA."));
        }
        else if (target < AdvanceHeader.Length || target >= Rom.Length)
        {
            Add(AdvanceFindings.BadEntry, "entry", string.Create(CultureInfo.InvariantCulture, $"The entry branches to 0x{target:X6}, and code can lie from 0x0000C0 to 0x{Rom.Length - 1:X6}."));
        }
        else if (cart.Rom[AdvanceHeader.Region]!.CoveringSegment(target, 4) is null)
        {
            Add(AdvanceFindings.BadEntry, "entry", string.Create(CultureInfo.InvariantCulture, $"The entry branches to 0x{target:X6}, and no program is there."));
        }
    }

    private void CheckBitmap()
    {
        var entry = Entry("bitmap");
        if (BootBitmap.FirstWrong(entry.Raw.AsSpan()) is { } wrong)
        {
            Add(entry.Origin == EntryOrigin.Manifest ? AdvanceFindings.BitmapKept : AdvanceFindings.BitmapWrong, "bitmap", string.Create(CultureInfo.InvariantCulture,
                $"The boot bitmap first differs at 0x{BootBitmap.Offset + wrong:X2} (byte {wrong + 1} of {entry.Raw.Length}): 0x{entry.Raw[wrong]:X2} instead of 0x{BootBitmap.Bytes[wrong]:X2}."));
        }
        else if (!entry.Raw.AsSpan().SequenceEqual(BootBitmap.Bytes.AsSpan()))
        {
            Add(AdvanceFindings.DebugBits, "bitmap", string.Create(CultureInfo.InvariantCulture,
                $"0x9C holds 0x{Rom[BootBitmap.DebugAt]:X2} and 0x9E holds 0x{Rom[BootBitmap.KeyAt]:X2}; usual are 0x21 and 0xF8."));
        }
    }

    private void CheckFixed()
    {
        if (Rom[AdvanceHeader.FixedAt] != AdvanceHeader.FixedValue)
        {
            Add(AdvanceFindings.FixedWrong, "fixedValue", string.Create(CultureInfo.InvariantCulture, $"0xB2 holds 0x{Rom[AdvanceHeader.FixedAt]:X2}, and it is always 0x96."));
        }
    }

    private void CheckReserved()
    {
        foreach (var name in (string[])["reserved1", "reserved2"])
        {
            var entry = Entry(name);
            if (entry.Raw.AsSpan().ContainsAnyExcept((byte)0))
            {
                Add(AdvanceFindings.ReservedUsed, name, string.Create(CultureInfo.InvariantCulture, $"The reserved bytes at 0x{entry.Offset:X2} hold {entry.Text}."));
            }
        }
    }

    private void CheckSaves()
    {
        var markers = SaveMarkers.Find(Rom);
        var kinds = markers.Select(static marker => SaveMarkers.Kinds[marker.Kind]).Distinct().ToList();
        if (kinds.Count > 1)
        {
            Add(AdvanceFindings.SeveralMarkers, "header", $"The ROM holds the markers {string.Join(" and ", kinds.Select(static kind => kind.Name + "nnn"))}.");
        }
        else if (kinds.Count == 1)
        {
            Add(AdvanceFindings.SaveMarker, "header", string.Create(CultureInfo.InvariantCulture, $"{kinds[0].Name}nnn at 0x{markers[0].Offset:X6} marks {kinds[0].Meaning}."));
        }

        if (Rom.Length == AdvanceAddresses.Window && kinds.Any(static kind => kind.Name.StartsWith("EEPROM", StringComparison.Ordinal))
            && cart.Rom[AdvanceHeader.Region]!.CoveringSegment(Rom.Length - EepromBytes, EepromBytes) is { } segment)
        {
            Add(AdvanceFindings.EepromOverEnd, "header", $"{segment.Program} reaches into the last 256 bytes of 32 MiB, and the ROM is marked for EEPROM.");
        }
    }

    private HeaderEntry Entry(string name) => cart.Headers[0].Entries.First(entry => entry.Field.Name == name);

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place(field == "header" ? field : "header:" + field), message);
}
