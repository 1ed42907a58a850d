namespace Cartwright.Programs;

/// <summary>Numbers and characters as the findings of this folder write them.</summary>
internal static class ProgramWords
{
    /// <summary>An address: hex, at least eight digits.</summary>
    public static string Address(long address) => $"0x{address:X8}";

    /// <summary>A range of addresses, last one included.</summary>
    public static string Range(long first, long end) => $"{Address(first)} to {Address(end - 1)}";

    /// <summary>A size: decimal with the hex beside it.</summary>
    public static string Size(long bytes) => bytes == 1 ? "1 byte" : $"{bytes} bytes (0x{bytes:X})";

    /// <summary>A place by its line or its offset, whichever it has.</summary>
    public static string Where(Findings.SourcePlace place) => place.Line > 0 ? $"line {place.Line}" : $"offset 0x{place.Offset ?? 0:X8}";

    /// <summary>What begins a line that should begin otherwise; says what the line looks like when that shows.</summary>
    public static string Opening(ReadOnlySpan<byte> line) => line switch
    {
        [(byte)':', ..] => "':' begins the line, as in Intel HEX",
        [(byte)'S', >= (byte)'0' and <= (byte)'9', ..] => "'S' and a digit begin the line, as in an S-record file",
        [0xEF, 0xBB, 0xBF, ..] or [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "A Unicode byte-order mark begins the line",
        [0x1B, ..] => "An escape sequence begins the line, as in a coloured listing",
        _ => $"{Character(line[0])} begins the line",
    };

    /// <summary>A byte of a text file: itself when it prints, its value otherwise.</summary>
    public static string Character(byte value) => value switch
    {
        (byte)' ' => "A space",
        (byte)'\t' => "A tab",
        > 0x20 and < 0x7F => $"'{(char)value}'",
        _ => $"Byte 0x{value:X2}",
    };
}
