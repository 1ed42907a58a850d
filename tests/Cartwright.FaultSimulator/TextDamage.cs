using System.Globalization;
using System.Text;

namespace Cartwright.FaultSimulator;

/// <summary>What becomes of a binary file that somebody's tool takes for text, or of a text that is taken for binary.</summary>
internal static class TextDamage
{
    private const int RecordLength = 16;
    private const string End = "\r\n";

    public static byte[] Apply(byte[] e, string how) => how switch
    {
        "cr-inserted" => [.. e.SelectMany(static value => value == 0x0A ? new byte[] { 0x0D, 0x0A } : [value])],
        "cr-removed" => [.. e.Where((value, b) => !(value == 0x0D && b + 1 < e.Length && e[b + 1] == 0x0A))],
        "seven-bit" => [.. e.Select(static value => (byte)(value & 0x7F))],
        "cut-at-1a" => [.. e.TakeWhile(static value => value != 0x1A)],
        "intel-hex" => Encoding.ASCII.GetBytes(IntelHex(e)),
        "s-record" => Encoding.ASCII.GetBytes(SRecord(e)),
        _ => throw new ArgumentOutOfRangeException(nameof(how), how, "not a damage"),
    };

    // Intel, Hexadecimal Object File Format Specification, revision A, 1988: data records and extended linear address records.
    private static string IntelHex(byte[] e)
    {
        var text = new StringBuilder();
        for (var b = 0; b < e.Length; b += RecordLength)
        {
            if (b % 0x10000 == 0 && (b > 0 || e.Length > 0x10000))
                Colon(text, [2, 0, 0, 4, (byte)(b >> 24), (byte)(b >> 16)]);

            var data = e.AsSpan(b, Math.Min(RecordLength, e.Length - b));
            Colon(text, [(byte)data.Length, (byte)(b >> 8), (byte)b, 0, .. data]);
        }

        return text.Append(":00000001FF").Append(End).ToString();
    }

    private static void Colon(StringBuilder text, byte[] record) =>
        text.Append(':').Append(Convert.ToHexString(record)).Append(Hex(-record.Sum(static value => value))).Append(End);

    // Motorola, M68000 Family Programmer's Reference Manual, appendix C: records with addresses of three bytes.
    private static string SRecord(byte[] e)
    {
        var text = new StringBuilder("S0030000FC").Append(End);
        for (var b = 0; b < e.Length; b += RecordLength)
        {
            var data = e.AsSpan(b, Math.Min(RecordLength, e.Length - b));
            byte[] record = [(byte)(data.Length + 4), (byte)(b >> 16), (byte)(b >> 8), (byte)b, .. data];
            text.Append("S2").Append(Convert.ToHexString(record)).Append(Hex(~record.Sum(static value => value))).Append(End);
        }

        return text.Append("S804000000FB").Append(End).ToString();
    }

    private static string Hex(int value) => (value & 0xFF).ToString("X2", CultureInfo.InvariantCulture);
}
