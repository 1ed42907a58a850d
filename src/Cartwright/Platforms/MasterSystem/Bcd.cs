namespace Cartwright.Platforms.MasterSystem;

/// <summary>Two decimal digits in the halves of a byte.</summary>
internal static class Bcd
{
    public static byte Of(int number) => (byte)((number / 10 << 4) | (number % 10));

    public static bool TryRead(byte value, out int number)
    {
        number = ((value >> 4) * 10) + (value & 0x0F);
        return value >> 4 <= 9 && (value & 0x0F) <= 9;
    }
}
