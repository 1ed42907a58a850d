namespace Cartwright.Patching;

/// <summary>Numbers as the findings of this folder write them.</summary>
internal static class PatchWords
{
    /// <summary>An offset: hex with the decimal beside it; one before the beginning in decimal alone.</summary>
    public static string Offset(long offset) => offset < 0 ? $"{offset}" : $"0x{offset:X8} ({offset})";

    /// <summary>A size: decimal with the hex beside it.</summary>
    public static string Size(long bytes) => Size((ulong)bytes);

    /// <summary>A size a patch states, however absurd.</summary>
    public static string Size(ulong bytes) => bytes == 1 ? "1 byte" : $"{bytes} bytes (0x{bytes:X})";

    /// <summary>A CRC-32.</summary>
    public static string Crc(uint crc) => $"CRC-32 0x{crc:X8}";

    /// <summary>The first bytes of a file in hex.</summary>
    public static string FirstBytes(ReadOnlySpan<byte> file) => file.IsEmpty ? "nothing: it is empty" : Convert.ToHexString(file[..Math.Min(8, file.Length)]);
}
