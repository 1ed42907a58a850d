namespace Cartwright.Programs;

/// <summary>Recognises program formats, and names them in words.</summary>
internal static class ProgramFormats
{
    private static readonly (string Extension, ProgramFormat Format)[] Extensions =
    [
        (".hex", ProgramFormat.IntelHex),
        (".ihx", ProgramFormat.IntelHex),
        (".ihex", ProgramFormat.IntelHex),
        (".srec", ProgramFormat.SRecord),
        (".s19", ProgramFormat.SRecord),
        (".s28", ProgramFormat.SRecord),
        (".s37", ProgramFormat.SRecord),
        (".mot", ProgramFormat.SRecord),
        (".elf", ProgramFormat.Elf),
    ];

    /// <summary>The format's name in words.</summary>
    public static string Words(ProgramFormat format) => format switch
    {
        ProgramFormat.IntelHex => "Intel HEX",
        ProgramFormat.SRecord => "Motorola S-record",
        ProgramFormat.Elf => "ELF",
        _ => "raw binary",
    };

    /// <summary>The format the file's extension claims; null when it claims none.</summary>
    public static ProgramFormat? ByName(string file)
    {
        foreach (var (extension, format) in Extensions)
        {
            if (file.EndsWith(extension, StringComparison.OrdinalIgnoreCase)) return format;
        }

        return null;
    }

    /// <summary>The format the bytes themselves show; null when they could be anything.</summary>
    public static ProgramFormat? ByContent(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith(ElfReader.Magic)) return ProgramFormat.Elf;
        var lines = new RecordLines(bytes);
        if (!lines.Next()) return null;
        var line = lines.Current;
        return line switch
        {
            [(byte)':', ..] when LooksLikeRecord(line, RecordShape.IntelHex) => ProgramFormat.IntelHex,
            [(byte)'S', >= (byte)'0' and <= (byte)'9', ..] when LooksLikeRecord(line, RecordShape.SRecord) => ProgramFormat.SRecord,
            _ => null,
        };
    }

    // Counts and checksums are left to the reader, so that a damaged first line is reported and not taken for a raw binary.
    private static bool LooksLikeRecord(ReadOnlySpan<byte> line, RecordShape shape)
    {
        var digits = line[shape.MarkLength..];
        return digits.Length >= shape.LeastDigits && !digits.ContainsAnyExcept(RecordDecoder.HexDigits);
    }
}
