namespace Cartwright.Tests.Programs;

/// <summary>Makes records for tests, so that a test states fields and not checksums.</summary>
internal static class Records
{
    public const string HexEnd = ":00000001FF";

    /// <summary>An Intel HEX record: the two's complement of the sum ends it.</summary>
    public static string Hex(int type, int offset, params byte[] data)
    {
        byte[] record = [(byte)data.Length, (byte)(offset >> 8), (byte)offset, (byte)type, .. data];
        return $":{Convert.ToHexString(record)}{(byte)-record.Sum(b => b):X2}";
    }

    /// <summary>An S-record: the one's complement of the sum ends it.</summary>
    public static string S(int type, long address, params byte[] data)
    {
        var width = type switch { 2 or 6 or 8 => 3, 3 or 7 => 4, _ => 2 };
        var field = Enumerable.Range(0, width).Select(i => (byte)(address >> (8 * (width - 1 - i))));
        byte[] record = [(byte)(width + data.Length + 1), .. field, .. data];
        return $"S{type}{Convert.ToHexString(record)}{(byte)~record.Sum(b => b):X2}";
    }

    public static string Lines(params IEnumerable<string> lines) => string.Concat(lines.Select(line => line + "\n"));

    public static byte[] Count(int length, int first = 0) => [.. Enumerable.Range(first, length).Select(i => (byte)i)];
}
