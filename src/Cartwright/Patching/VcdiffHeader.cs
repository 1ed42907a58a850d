namespace Cartwright.Patching;

/// <summary>The head of a VCDIFF patch. Source: RFC 3284, section 4.1; the application header is an extension in general use.</summary>
/// <param name="Compressor">The compressor its sections may be packed with; null when none is named.</param>
/// <param name="Text">The application header.</param>
/// <param name="WindowsAt">Offset of the first window.</param>
internal sealed record VcdiffHeader(byte? Compressor, string? Text, int WindowsAt)
{
    private const int HasCompressor = 1;
    private const int HasCodeTable = 2;
    private const int HasText = 4;
    private const int KnownBits = HasCompressor | HasCodeTable | HasText;
    private const byte Interleaved = (byte)'S';

    /// <summary>Reads and checks it; null when an error was logged.</summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="log">Where findings go.</param>
    public static VcdiffHeader? Read(ReadOnlySpan<byte> patch, PatchLog log)
    {
        var cursor = new PatchCursor(patch, PatchFormats.Vcdiff.Magic.Length, log);
        var version = cursor.Byte("the version");
        if (cursor.HasFailed || !IsVersion(version, cursor.Position - 1, log)) return null;
        var indicatorAt = cursor.Position;
        var indicator = cursor.Byte("the header indicator");
        if (cursor.HasFailed || !IsIndicator(indicator, indicatorAt, log)) return null;
        byte? compressor = (indicator & HasCompressor) != 0 ? cursor.Byte("the number of the compressor") : null;
        var textAt = cursor.Position;
        if ((indicator & HasText) != 0) textAt = cursor.Skip((ulong)cursor.VcdiffNumber("the size of the application header"), "the application header");
        return cursor.HasFailed ? null : new VcdiffHeader(compressor, PatchStatement.ToText(patch[textAt..cursor.Position]), cursor.Position);
    }

    private static bool IsVersion(byte version, int at, PatchLog log)
    {
        if (version == 0) return true;
        var name = version == Interleaved ? ", the interleaved variant" : "";
        return log.Refuse(PatchFindings.VcdiffVersion, at, $"The version is 0x{version:X2}{name}", "0x00");
    }

    private static bool IsIndicator(byte indicator, int at, PatchLog log)
    {
        if ((indicator & ~KnownBits) != 0) return log.Refuse(PatchFindings.VcdiffIndicator, at, $"The header indicator is 0x{indicator:X2}", "bits 0 to 2 alone");
        return (indicator & HasCodeTable) == 0 || log.Refuse(PatchFindings.VcdiffCodeTable, at, "The patch brings a code table of its own", "the default code table");
    }
}
