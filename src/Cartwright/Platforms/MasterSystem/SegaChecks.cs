using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The checks of a ROM that need more than one field.</summary>
internal sealed class SegaChecks(CartView cart, string console, FindingLog log)
{
    private const string Mark = "TMR SEGA";

    public void Run()
    {
        var rom = cart.Rom[SegaHeader.Region]!;
        if (rom.CoveringSegment(0, 1) is null)
        {
            log.Add(SegaFindings.NoReset, cart.Place("programs"), "No program covers $0000.");
        }

        if (cart.Headers.Length > 0)
        {
            CheckMark();
            CheckRange(rom.Length);
            CheckRegion();
        }
    }

    private void CheckMark()
    {
        if (Entry("mark") is { } entry && entry.Text != Mark)
        {
            Add(SegaFindings.NoMark, "mark", string.Create(CultureInfo.InvariantCulture, $"0x{entry.Offset:X6} holds {Convert.ToHexString(entry.Raw.AsSpan())} instead of the text `{Mark}`."));
        }
    }

    private void CheckRange(int length)
    {
        var entry = Entry("sumRange");
        var nibble = entry.Raw[0] & 0x0F;
        if (SumRange.Of(nibble) is not { Faulty: null } range)
        {
            Add(SegaFindings.BadRange, "sumRange", string.Create(CultureInfo.InvariantCulture, $"The size nibble is {nibble:X}: {SumRange.Of(nibble)?.Faulty ?? "it has no meaning"}."));
        }
        else if (range.Bytes > length)
        {
            Add(SegaFindings.RangeBeyondRom, "sumRange", $"The checksum is to cover {ByteSize.Describe(range.Bytes)}, and the ROM has {ByteSize.Describe(length)}.");
        }
    }

    private void CheckRegion()
    {
        var region = Entry("region").Text;
        var other = console == SegaFacts.GameGear.Id ? SegaFacts.MasterSystem.Id : SegaFacts.GameGear.Id;
        if (region.StartsWith(other + "-", StringComparison.Ordinal))
        {
            Add(SegaFindings.OtherConsole, "region", $"The region is `{region}` on a cart for {console}.");
        }
    }

    private HeaderEntry Entry(string name) => cart.Headers[0].Entries.First(entry => entry.Field.Name == name);

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place("header:" + field), message);
}
