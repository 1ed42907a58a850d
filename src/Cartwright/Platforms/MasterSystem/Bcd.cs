namespace Cartwright.Platforms.MasterSystem;

/// <summary>Two decimal digits in a byte, the first in its upper half.</summary>
internal static class Bcd
{
    /// <summary>Whether all digits are decimal.</summary>
    public static bool Is(params ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            if (value >> 4 > 9 || (value & 0x0F) > 9)
            {
                return false;
            }
        }

        return true;
    }

    public static int Read(byte value) => ((value >> 4) * 10) + (value & 0x0F);

    public static byte Write(int number) => (byte)(((number / 10) << 4) | (number % 10));
}
