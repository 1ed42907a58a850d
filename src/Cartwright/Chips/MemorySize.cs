namespace Cartwright.Chips;

/// <summary>Sizes of memories as people write them.</summary>
internal static class MemorySize
{
    private const long Kibi = 1024;
    private const long Mebi = Kibi * Kibi;

    /// <summary>Bytes: <c>128B</c>, <c>512KiB</c>, <c>2MiB</c>.</summary>
    public static string InBytes(long bytes) => Scaled(bytes, "B", "KiB", "MiB");

    /// <summary>Bits, as data sheets count: <c>4Mbit</c> for 512 KiB.</summary>
    public static string InBits(long bytes) => Scaled(bytes * 8, "bit", "Kbit", "Mbit");

    /// <summary>Fixed-width hexadecimal with the decimal size beside it: <c>0x00080000 (524288) bytes</c>.</summary>
    public static string Exact(long bytes) => FormattableString.Invariant($"0x{bytes:X8} ({bytes}) bytes");

    private static string Scaled(long count, string unit, string kibi, string mebi) => count switch
    {
        _ when count >= Mebi && count % Mebi == 0 => FormattableString.Invariant($"{count / Mebi}{mebi}"),
        _ when count >= Kibi && count % Kibi == 0 => FormattableString.Invariant($"{count / Kibi}{kibi}"),
        _ => FormattableString.Invariant($"{count}{unit}"),
    };
}
