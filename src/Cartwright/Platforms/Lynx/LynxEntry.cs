using System.Buffers.Binary;

namespace Cartwright.Platforms.Lynx;

/// <summary>One entry of a cartridge's directory (Cartridge information, The Atari Lynx Book).</summary>
/// <param name="Block">The block its file begins in.</param>
/// <param name="Offset">Where in the block.</param>
/// <param name="Flag">0x00 in older cartridges, 0x88 in newer ones.</param>
/// <param name="Load">Where in RAM the file is loaded.</param>
/// <param name="FileLength">Its length in bytes.</param>
public readonly record struct LynxEntry(byte Block, ushort Offset, byte Flag, ushort Load, ushort FileLength)
{
    /// <summary>Bytes of an entry.</summary>
    public const int Length = 8;

    /// <summary>Reads an entry.</summary>
    /// <param name="bytes">Its bytes.</param>
    public static LynxEntry Read(ReadOnlySpan<byte> bytes) => new(
        bytes[0], BinaryPrimitives.ReadUInt16LittleEndian(bytes[1..]), bytes[3],
        BinaryPrimitives.ReadUInt16LittleEndian(bytes[4..]), BinaryPrimitives.ReadUInt16LittleEndian(bytes[6..]));

    /// <summary>The file's first byte in the ROM.</summary>
    /// <param name="blockSize">Bytes of a block.</param>
    public int Position(int blockSize) => (Block * blockSize) + Offset;
}
