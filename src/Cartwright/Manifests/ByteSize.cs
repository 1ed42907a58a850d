using System.Globalization;

namespace Cartwright.Manifests;

/// <summary>Sizes as people write them: <c>512KiB</c>, <c>4Mbit</c>, <c>0x80000</c>, <c>524288</c>.</summary>
public static class ByteSize
{
    /// <summary>Largest memory in bytes that is worked with: beyond every parallel memory chip a cartridge can carry, and no danger to the machine that builds.</summary>
    public const long LargestMemory = 256L << 20;

    // The trade counts a console's memory in bits: 1 Mbit is 128 KiB.
    private static readonly (string Unit, long Bytes)[] Units =
    [
        ("KiB", 1L << 10),
        ("MiB", 1L << 20),
        ("GiB", 1L << 30),
        ("Kbit", 1L << 7),
        ("Mbit", 1L << 17),
        ("bytes", 1),
        ("byte", 1),
        ("KB", 1L << 10),
        ("MB", 1L << 20),
        ("K", 1L << 10),
        ("M", 1L << 20),
    ];

    /// <summary>The units, letter case ignored; where one ends like another, the longer comes first.</summary>
    internal static IEnumerable<string> UnitNames => Units.Select(static row => row.Unit);

    /// <summary>Largest size that is read, in bytes: beyond any memory, and small enough that sums of a few sizes do not overflow.</summary>
    public const long Largest = 1L << 60;

    /// <summary>What a size may look like, for messages.</summary>
    public const string Forms = "a size such as 512KiB, 4Mbit, 0x80000 or 524288";

    /// <summary>Reads a size.</summary>
    /// <param name="text">The text; letter case and blanks between number and unit do not count.</param>
    /// <param name="bytes">The size in bytes, 0 or more.</param>
    /// <returns>False when the text is no size or is larger than <see cref="Largest"/>.</returns>
    public static bool TryParse(string text, out long bytes)
    {
        var trimmed = text.Trim();
        foreach (var (unit, factor) in Units)
        {
            if (trimmed.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            {
                return TryScale(trimmed[..^unit.Length].TrimEnd(), factor, out bytes);
            }
        }

        return Number.TryParse(trimmed, out bytes) && bytes <= Largest;
    }

    /// <summary>Writes a size in the largest binary unit that divides it: 524288 as <c>512KiB</c>.</summary>
    /// <param name="bytes">The size in bytes.</param>
    public static string Format(long bytes) => bytes switch
    {
        0 => "0",
        _ when bytes % (1 << 20) == 0 => string.Create(CultureInfo.InvariantCulture, $"{bytes >> 20}MiB"),
        _ when bytes % (1 << 10) == 0 => string.Create(CultureInfo.InvariantCulture, $"{bytes >> 10}KiB"),
        _ => bytes.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>Writes a size for a message: <c>0x080000 (512 KiB)</c>, or <c>0x000123 (291 bytes)</c>.</summary>
    /// <param name="bytes">The size in bytes.</param>
    public static string Describe(long bytes) => string.Create(CultureInfo.InvariantCulture, $"0x{bytes:X6} ({Words(bytes)})");

    /// <summary>Writes a size in words: <c>512 KiB</c>, <c>291 bytes</c>.</summary>
    /// <param name="bytes">The size in bytes.</param>
    public static string Words(long bytes) => bytes switch
    {
        1 => "1 byte",
        >= 1 << 20 when bytes % (1 << 20) == 0 => string.Create(CultureInfo.InvariantCulture, $"{bytes >> 20} MiB"),
        >= 1 << 10 when bytes % (1 << 10) == 0 => string.Create(CultureInfo.InvariantCulture, $"{bytes >> 10} KiB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes} bytes"),
    };

    private static bool TryScale(string number, long factor, out long bytes)
    {
        bytes = 0;
        if (!decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            || value > Largest / factor)
        {
            return false;
        }

        var scaled = value * factor;
        bytes = (long)scaled;
        return scaled == bytes;
    }
}
