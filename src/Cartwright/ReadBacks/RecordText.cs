using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>The text of a record file in the place of what it stands for.</summary>
/// <remarks>Intel, Hexadecimal Object File Format Specification, revision A, 1988; Motorola, M68000 Family Programmer's Reference Manual, appendix C.</remarks>
internal static class RecordText
{
    private const int FewestRecords = 4;

    private sealed record Data(int Record, int At, int Address, int Length);

    /// <summary>The explanation that the text of a record file was burnt; none where the read-back is no such text.</summary>
    public static IEnumerable<Hypothesis> Propose(ProofCase proof)
    {
        var text = proof.ReadBytes;
        var isIntel = text is [(byte)':', ..];
        if ((!isIntel && text is not [(byte)'S', ..]) || Records(text, isIntel) is not { Length: >= FewestRecords } records)
        {
            return [];
        }

        var fault = Fault.Of(FaultKinds.FileDamagedAsText, Of("how", isIntel ? "intel-hex" : "s-record"));
        return [Hypothesis.Making(fault, image => image.Bytes.Length == text.Length ? Rewrite(text, records, image.Bytes, isIntel) : null)];
    }

    private static ImmutableArray<Data> Records(byte[] text, bool isIntel)
    {
        var records = ImmutableArray.CreateBuilder<Data>();
        var upper = 0;
        var at = 0;
        while (at < text.Length && text[at] != WordImage.Erased)
        {
            if (text[at] is (byte)'\r' or (byte)'\n')
            {
                at++;
                continue;
            }

            var (record, next) = isIntel ? Intel(text, at, ref upper) : Motorola(text, at);
            if (next < 0)
            {
                return [];
            }

            if (record is not null)
            {
                records.Add(record);
            }

            at = next;
        }

        return text.AsSpan(Math.Min(at, text.Length)).ContainsAnyExcept(WordImage.Erased) ? [] : records.ToImmutable();
    }

    // Where the chip ends within the head of a record, what is left of it tells nothing.
    private static (Data? Record, int Next) Intel(byte[] text, int at, ref int upper)
    {
        if (at + 9 > text.Length)
        {
            return (null, text.Length);
        }

        if (text[at] != ':' || !Number(text, at + 1, 8, out var head))
        {
            return (null, -1);
        }

        var (length, address, type) = ((int)(head >> 24), (int)(head >> 8 & 0xFFFF), (int)(head & 0xFF));
        var next = at + 9 + (2 * length) + 2;
        if (type is 2 or 4 && Number(text, at + 9, 4, out var segment))
        {
            upper = (int)segment << (type == 4 ? 16 : 4);
        }

        return (type == 0 ? new Data(at + 1, at + 9, upper + address, length) : null, next);
    }

    private static (Data? Record, int Next) Motorola(byte[] text, int at)
    {
        if (at + 4 > text.Length)
        {
            return (null, text.Length);
        }

        var digits = text[at + 1] switch { (byte)'2' or (byte)'8' => 6, (byte)'3' or (byte)'7' => 8, _ => 4 };
        if (text[at] != 'S' || text[at + 1] is < (byte)'0' or > (byte)'9' || !Number(text, at + 2, 2, out var count))
        {
            return (null, -1);
        }

        var next = at + 4 + (2 * (int)count);
        if (text[at + 1] is < (byte)'1' or > (byte)'3' || at + 4 + digits > text.Length)
        {
            return (null, next);
        }

        return Number(text, at + 4, digits, out var address)
            ? (new Data(at + 2, at + 4 + digits, (int)address, (int)count - (digits / 2) - 1), next)
            : (null, -1);
    }

    private static bool Number(byte[] text, int at, int digits, out uint number)
    {
        number = 0;
        return at + digits <= text.Length
            && uint.TryParse(Encoding.Latin1.GetString(text, at, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out number);
    }

    private static byte[]? Rewrite(byte[] text, ImmutableArray<Data> records, byte[] image, bool isIntel)
    {
        var burnt = (byte[])text.Clone();
        foreach (var record in records)
        {
            if (record.Length < 0 || record.Address < 0 || record.Address > image.Length - record.Length)
            {
                return null;
            }

            var sum = Sum(text, record.Record, record.At);
            for (var b = 0; b < record.Length; b++)
            {
                sum += image[record.Address + b];
                Write(burnt, record.At + (2 * b), image[record.Address + b]);
            }

            Write(burnt, record.At + (2 * record.Length), (byte)(isIntel ? -sum : ~sum));
        }

        return burnt;
    }

    private static int Sum(byte[] text, int from, int to)
    {
        var sum = 0;
        for (var at = from; at < to; at += 2)
        {
            sum += Number(text, at, 2, out var value) ? (int)value : 0;
        }

        return sum;
    }

    private static void Write(byte[] text, int at, byte value)
    {
        if (at < text.Length)
        {
            text[at] = Digit(value >> 4);
        }

        if (at + 1 < text.Length)
        {
            text[at + 1] = Digit(value & 0xF);
        }
    }

    private static byte Digit(int value) => (byte)(value < 10 ? '0' + value : 'A' - 10 + value);
}
