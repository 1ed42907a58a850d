using System.Buffers.Binary;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>The two ways handlers jump: a stub that loads an address and goes there, or one relative jump (encodings of the V810 family: from memory).</summary>
public static class V810Jump
{
    /// <summary>Bytes of the stub that loads an address and jumps.</summary>
    public const int StubLength = 10;

    // movhi hi, r0, rN; movea lo, rN, rN; jmp [rN]; and jr.
    private const int LoadHigh = 0xBC00;
    private const int AddLow = 0xA000;
    private const int Jump = 0x1800;
    private const int Relative = 0b101010;
    private const int Scratch = 1;

    private const int RelativeBits = 26;

    /// <summary>Writes the stub by register 1.</summary>
    /// <param name="address">Where it goes.</param>
    /// <param name="stub">At least <see cref="StubLength"/> bytes.</param>
    public static void WriteStub(uint address, Span<byte> stub)
    {
        // The low half is added with its sign, so an upper half of it takes one off the high half.
        Halfword(stub, 0, LoadHigh | (Scratch << 5));
        Halfword(stub, 1, (int)((address + 0x8000) >> 16));
        Halfword(stub, 2, AddLow | (Scratch << 5) | Scratch);
        Halfword(stub, 3, (int)(address & 0xFFFF));
        Halfword(stub, 4, Jump | Scratch);
    }

    /// <summary>The address a stub goes to, by whatever register; null when the bytes are no stub.</summary>
    /// <param name="code">The bytes.</param>
    public static uint? StubTarget(ReadOnlySpan<byte> code)
    {
        if (code.Length < StubLength)
        {
            return null;
        }

        var register = (Halfword(code, 0) >> 5) & 31;
        var isStub = register > 0
            && Halfword(code, 0) == (LoadHigh | (register << 5))
            && Halfword(code, 2) == (AddLow | (register << 5) | register)
            && Halfword(code, 4) == (Jump | register);
        return isStub ? (uint)((Halfword(code, 1) << 16) + (short)Halfword(code, 3)) : null;
    }

    /// <summary>How far a relative jump goes from its own first byte; null when the bytes are none.</summary>
    /// <param name="code">The bytes.</param>
    public static int? RelativeDistance(ReadOnlySpan<byte> code)
    {
        if (code.Length < 4 || Halfword(code, 0) >> 10 != Relative)
        {
            return null;
        }

        var bits = ((Halfword(code, 0) & 0x3FF) << 16) | Halfword(code, 1);
        return bits % 2 == 0 ? bits << (32 - RelativeBits) >> (32 - RelativeBits) : null;
    }

    private static int Halfword(ReadOnlySpan<byte> code, int index) => BinaryPrimitives.ReadUInt16LittleEndian(code[(index * 2)..]);

    private static void Halfword(Span<byte> code, int index, int value) => BinaryPrimitives.WriteUInt16LittleEndian(code[(index * 2)..], (ushort)value);
}
