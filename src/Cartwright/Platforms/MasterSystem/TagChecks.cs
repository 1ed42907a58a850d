using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Checks of the 16 bytes before the header: the author's tag, or another maker's own header.</summary>
internal static class TagChecks
{
    private const string Mark = "SDSC";
    private const int None = 0xFFFF;

    public static void Check(CartView cart, FindingLog log)
    {
        if (cart["mark"] is null)
        {
            return;
        }

        if (cart["tag"] is not { } mark)
        {
            CheckBankSums(cart, log);
            return;
        }

        if (mark != Mark)
        {
            log.Add(SegaFindings.CodeInTag, cart.Place("header:tag"), $"The program holds `{mark}` at {SegaChecks.At(cart, "tag")}, where the author's tag begins.");
            return;
        }

        if (cart["tagDate"]!.StartsWith("hex ", StringComparison.Ordinal) || cart["tagVersion"]!.StartsWith("hex ", StringComparison.Ordinal))
        {
            log.Add(SegaFindings.TagNumbers, cart.Place("header:tagDate"), $"The author's tag has the version `{cart["tagVersion"]}` and the date `{cart["tagDate"]}`.");
        }

        CheckPointer(cart, "tagAuthor", zeroIsNone: true, log);
        CheckPointer(cart, "tagName", zeroIsNone: false, log);
        CheckPointer(cart, "tagNotes", zeroIsNone: false, log);
    }

    private static void CheckPointer(CartView cart, string field, bool zeroIsNone, FindingLog log)
    {
        var region = cart.Rom[SegaHeader.Region]!;
        var address = BinaryPrimitives.ReadUInt16LittleEndian(SegaChecks.Entry(cart, field).Raw.AsSpan());
        if (address == None || (zeroIsNone && address == 0))
        {
            return;
        }

        var text = address < region.Length ? region.Bytes.Span[address..] : [];
        var problem = address == 0 ? "that is the first instruction"
            : region.CoveringSegment(address, 1) is null ? "no program covers it"
            : text.IndexOf((byte)0) is var length && length < 0 ? "no 00 ends the text there"
            : !System.Text.Unicode.Utf8.IsValid(text[..length]) ? "the bytes there are no UTF-8 text"
            : null;
        if (problem is not null)
        {
            log.Add(SegaFindings.TagPointer, cart.Place("header:" + field), string.Create(CultureInfo.InvariantCulture, $"`{field}` is ${address:X4}: {problem}."));
        }
    }

    private static bool AreDigits(ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            if (!Bcd.TryRead(value, out _))
            {
                return false;
            }
        }

        return true;
    }

    // Banks summed, date and time, checksum, 10000h less the checksum, zeros (Codemasters Header, smspower.org; date digits from memory).
    private static void CheckBankSums(CartView cart, FindingLog log)
    {
        var rom = cart.Bytes(SegaHeader.Region);
        var at = SegaHeader.Anchor.In(rom.Length);
        var area = rom.Slice(at, SegaHeader.MarkAt);
        var sum = BinaryPrimitives.ReadUInt16LittleEndian(area[6..]);
        var rest = BinaryPrimitives.ReadUInt16LittleEndian(area[8..]);
        if (area[0] != 0 && area[0] == rom.Length / 0x4000 && AreDigits(area[1..6]) && area[1] is >= 0x01 and <= 0x31 && area[2] is >= 0x01 and <= 0x12
            && !area[10..].ContainsAnyExcept((byte)0) && (ushort)(sum + rest) != 0)
        {
            log.Add(SegaFindings.BankSums, cart.Place("programs"),
                string.Create(CultureInfo.InvariantCulture, $"The bytes at 0x{at:X4} look like a header of bank sums, and its words 0x{sum:X4} and 0x{rest:X4} do not add up to 0x10000."));
        }
    }
}
