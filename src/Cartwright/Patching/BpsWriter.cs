using System.Buffers;
using System.Buffers.Binary;

namespace Cartwright.Patching;

/// <summary>Writes the parts of a BPS patch.</summary>
internal sealed class BpsWriter
{
    private readonly ArrayBufferWriter<byte> _patch = new();

    /// <summary>The patch so far.</summary>
    public ReadOnlySpan<byte> Written => _patch.WrittenSpan;

    /// <summary>Bytes as they are.</summary>
    public void Bytes(ReadOnlySpan<byte> bytes) => _patch.Write(bytes);

    /// <summary>Four bytes, the lowest first.</summary>
    public void LittleEndian32(uint value)
    {
        BinaryPrimitives.WriteUInt32LittleEndian(_patch.GetSpan(sizeof(uint)), value);
        _patch.Advance(sizeof(uint));
    }

    /// <summary>A number.</summary>
    public void Number(ulong value)
    {
        for (; value >= 0x80; value = (value >> 7) - 1) Byte((byte)(value & 0x7F));
        Byte((byte)(value | 0x80));
    }

    /// <summary>The head of an action.</summary>
    public void Action(BpsCommand command, int length) => Number(Head(command, length));

    /// <summary>How far a copy begins from where the one before it ended.</summary>
    public void Distance(int distance) => Number(Step(distance));

    /// <summary>Bytes that a head takes up.</summary>
    public static int HeadSize(BpsCommand command, int length) => NumberSize(Head(command, length));

    /// <summary>Bytes that a distance takes up.</summary>
    public static int DistanceSize(int distance) => NumberSize(Step(distance));

    private static ulong Head(BpsCommand command, int length) => ((ulong)(length - 1) << 2) | (uint)command;

    private static ulong Step(int distance) => ((ulong)Math.Abs((long)distance) << 1) | (distance < 0 ? 1UL : 0);

    private static int NumberSize(ulong value)
    {
        var size = 1;
        for (; value >= 0x80; value = (value >> 7) - 1) size++;
        return size;
    }

    private void Byte(byte value)
    {
        _patch.GetSpan(1)[0] = value;
        _patch.Advance(1);
    }
}
