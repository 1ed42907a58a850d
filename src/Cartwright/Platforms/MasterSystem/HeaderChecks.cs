using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Checks of the header proper.</summary>
internal static class HeaderChecks
{
    private const int ChecksumFromMark = 0x0A;

    public static void Check(CartView cart, SegaPlatform platform, FindingLog log)
    {
        if (cart["mark"] is not { } mark)
        {
            log.Add(SegaFindings.NoHeader, cart.Place("header:internalHeader"), "The ROM is built without a header.");
            return;
        }

        if (mark != SegaHeader.Mark)
        {
            var isProgram = Entry(cart, "mark").Origin == EntryOrigin.Image;
            log.Add(isProgram ? SegaFindings.CodeInHeader : SegaFindings.NoHeader, cart.Place("header:mark"), isProgram
                ? $"The program holds `{mark}` at {At(cart, "mark")}, where the header begins."
                : $"The header begins with `{mark}` instead of `{SegaHeader.Mark}`.");
            return;
        }

        CheckRange(cart, platform, log);
        CheckRegion(cart, platform, log);
        CheckNumbers(cart, log);
        CheckByteOrder(cart, log);
    }

    /// <summary>A field of the header as it stands.</summary>
    public static HeaderEntry Entry(CartView cart, string field) => cart.Headers[0].Entries.First(entry => entry.Field.Name == field);

    /// <summary>A field's place in the ROM in words.</summary>
    public static string At(CartView cart, string field) => string.Create(CultureInfo.InvariantCulture, $"0x{Entry(cart, field).Offset:X4}");

    private static void CheckRange(CartView cart, SegaPlatform platform, FindingLog log)
    {
        var length = cart.Bytes(SegaHeader.Region).Length;
        var code = Entry(cart, SegaHeader.Range).Raw[0] & 0x0F;
        var place = cart.Place("header:" + SegaHeader.Range);
        if (ChecksumRange.Of(code) is not { } range)
        {
            var why = code == 0xD ? "with 48 KiB the header and its checksum fall inside what the console sums"
                : code == ChecksumRange.Megabyte.Code ? "the console is reported to sum 1 MiB wrongly"
                : "it is not defined";
            log.Add(SegaFindings.FaultySize, place, string.Create(CultureInfo.InvariantCulture, $"The size code is 0x{code:X} ({code}): {why}."), ChecksumRange.Words.Expected);
        }
        else if (range.Size > length)
        {
            log.Add(platform.ChecksSum ? SegaFindings.RangeBeyondRom : SegaFindings.RangeUnchecked, place,
                $"The size code says {ByteSize.Describe(range.Size)}, and the ROM has {ByteSize.Describe(length)}.");
        }
    }

    private static void CheckRegion(CartView cart, SegaPlatform platform, FindingLog log)
    {
        var region = Entry(cart, "region").Raw[0] >> 4;
        if (!SegaHeader.Regions.Names.Any(row => row.Value == (ulong)region))
        {
            log.Add(SegaFindings.RegionUndefined, cart.Place("header:region"), string.Create(CultureInfo.InvariantCulture, $"The region is 0x{region:X} ({region})."), SegaHeader.Regions.Expected);
        }
        else if (!platform.Owns(region))
        {
            log.Add(SegaFindings.RegionOfOther, cart.Place("header:region"), $"The region is `{cart["region"]}`, and the cart is for {platform.Facts.Name}.");
        }
    }

    private static void CheckNumbers(CartView cart, FindingLog log)
    {
        var (reserved, product) = (cart["reserved"], cart["productCode"]!);
        if (reserved == "FFFF" && product == "9999")
        {
            log.Add(SegaFindings.ToolDefault, cart.Place("header:productCode"), "The product code is 9999 and the reserved bytes are FFFF.");
        }
        else if (reserved is not ("0000" or "FFFF" or "2020"))
        {
            log.Add(SegaFindings.Reserved, cart.Place("header:reserved"), $"The reserved bytes are {reserved}.", "0000, FFFF or 2020");
        }

        if (product.StartsWith("hex ", StringComparison.Ordinal))
        {
            log.Add(SegaFindings.ProductCode, cart.Place("header:productCode"), $"The product code is `{product}`.");
        }
    }

    private static void CheckByteOrder(CartView cart, FindingLog log)
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
}
