using System.Buffers.Binary;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>The far jump a footer begins with.</summary>
internal static class SwanJump
{
    private const byte FarJump = 0xEA;

    /// <summary>The linear address a footer jumps to; null when it does not begin with a far jump.</summary>
    public static int? Target(ReadOnlySpan<byte> footer) => footer[0] == FarJump
        ? BinaryPrimitives.ReadUInt16LittleEndian(footer[1..]) + (BinaryPrimitives.ReadUInt16LittleEndian(footer[3..]) * 0x10)
        : null;

    /// <summary>The lowest address of a ROM that is seen after power-on.</summary>
    public static int Lowest(long length) => SwanAddresses.WindowEnd - (int)Math.Min(length, SwanAddresses.WindowEnd - SwanAddresses.WindowStart);

    /// <summary>Whether an address is one of the ROM and before the footer.</summary>
    public static bool IsInside(int target, long length) => target >= Lowest(length) && target < SwanAddresses.WindowEnd - SwanHeader.Length;
}
