using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The checks of a header that need more than one field.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="console">The id of its platform.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class SegaChecks(CartView cart, string console, FindingLog log)
{
    private const string Mark = "TMR SEGA";
    private const int ChecksumFromMark = 0x0A;

    public void Run()
    {
        if (CheckMark())
        {
            CheckRange(cart.Bytes(SegaHeader.Region).Length);
            CheckRegion();
            CheckNumbers();
            CheckByteOrder();
            TagChecks.Check(cart, log);
        }
    }

    /// <summary>A field of the header as it stands.</summary>
    public static HeaderEntry Entry(CartView cart, string name) => cart.Headers[0].Entries.First(entry => entry.Field.Name == name);

    /// <summary>A field's place in the ROM in words.</summary>
    public static string At(CartView cart, string name) => string.Create(CultureInfo.InvariantCulture, $"0x{Entry(cart, name).Offset:X6}");

    private bool CheckMark()
    {
        var entry = Entry(cart, "mark");
        if (entry.Text != Mark)
        {
            Add(SegaFindings.NoMark, "mark", $"{At(cart, "mark")} holds {Convert.ToHexString(entry.Raw.AsSpan())} instead of the text `{Mark}`.");
        }

        return entry.Text == Mark;
    }

    private void CheckRange(int length)
    {
        var nibble = Entry(cart, "sumRange").Raw[0] & 0x0F;
        if (SumRange.Of(nibble) is not { Faulty: null } range)
        {
            Add(SegaFindings.BadRange, "sumRange", string.Create(CultureInfo.InvariantCulture, $"The size nibble is {nibble:X}: {SumRange.Of(nibble)?.Faulty ?? "it has no meaning"}."));
        }
        else if (range.Bytes > length)
        {
            Add(cart.Headers[0].Checksums[0].Row.Enforced ? SegaFindings.RangeBeyondRom : SegaFindings.RangeUnchecked, "sumRange",
                $"The checksum is to cover {ByteSize.Describe(range.Bytes)}, and the ROM has {ByteSize.Describe(length)}.");
        }
    }

    private void CheckRegion()
    {
        var region = Entry(cart, "region");
        var other = console == SegaFacts.GameGear.Id ? SegaFacts.MasterSystem.Id : SegaFacts.GameGear.Id;
        if (region.Text.StartsWith(other + "-", StringComparison.Ordinal))
        {
            Add(SegaFindings.OtherConsole, "region", $"The region is `{region.Text}` on a cart for {console}.");
        }
        else if (!SegaHeader.Regions.Names.Any(row => row.Name == region.Text))
        {
            Add(SegaFindings.RegionUndefined, "region", string.Create(CultureInfo.InvariantCulture, $"The region nibble is {region.Raw[0] >> 4:X}."));
        }
    }

    private void CheckNumbers()
    {
        var (reserved, product) = (cart["reserved"], cart["productCode"]!);
        if (reserved == "FFFF" && product == "9999")
        {
            Add(SegaFindings.ToolDefault, "productCode", "The product code is 9999 and the reserved bytes are FFFF.");
        }
        else if (reserved is not ("0000" or "FFFF" or "2020"))
        {
            Add(SegaFindings.Reserved, "reserved", $"The reserved bytes are {reserved}.");
        }

        if (product.StartsWith("hex ", StringComparison.Ordinal))
        {
            Add(SegaFindings.ProductCode, "productCode", $"The product code is `{product}`.");
        }
    }

    private void CheckByteOrder()
    {
        var at = Entry(cart, "mark").Offset + ChecksumFromMark;
        var checksum = cart.Headers[0].Checksums[0];
        if (cart.Rom[SegaHeader.Region]!.CoveringSegment(at, 2) is { } segment && segment.Offset <= at && segment.End >= at + 2)
        {
            var held = segment.Bytes.Span.Slice((int)(at - segment.Offset), 2);
            if (BinaryPrimitives.ReadUInt16BigEndian(held) == checksum.Computed && BinaryPrimitives.ReadUInt16LittleEndian(held) != checksum.Computed)
            {
                log.Add(SegaFindings.HighByteFirst, segment.Place, $"The program holds the checksum {checksum.Row.Format(checksum.Computed)} high byte first.");
            }
        }
    }

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place("header:" + field), message);
}
