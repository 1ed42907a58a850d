using System.Buffers.Binary;

namespace Cartwright.Programs;

/// <summary>Reads the fields of an ELF file in its own byte order. Callers have checked that a field lies inside the file.</summary>
/// <param name="bytes">The whole file.</param>
/// <param name="isBigEndian">True for high byte first.</param>
internal readonly ref struct ElfFields(ReadOnlySpan<byte> bytes, bool isBigEndian)
{
    private readonly ReadOnlySpan<byte> _bytes = bytes;

    /// <summary>A 16-bit field.</summary>
    public ushort Half(int offset) => isBigEndian
        ? BinaryPrimitives.ReadUInt16BigEndian(_bytes[offset..])
        : BinaryPrimitives.ReadUInt16LittleEndian(_bytes[offset..]);

    /// <summary>A 32-bit field.</summary>
    public uint Word(int offset) => isBigEndian
        ? BinaryPrimitives.ReadUInt32BigEndian(_bytes[offset..])
        : BinaryPrimitives.ReadUInt32LittleEndian(_bytes[offset..]);
}
