using System.Buffers.Binary;

namespace Cartwright.Platforms.Commodore;

/// <summary>What stands in front of each run of bytes in a container: 16 bytes, numbers with the most significant byte first.</summary>
/// <param name="Kind">0 ROM, 1 RAM, 2 flash.</param>
/// <param name="Bank">The bank.</param>
/// <param name="Address">The address the bank is seen at.</param>
/// <param name="Size">Bytes of the run.</param>
public readonly record struct CrtPacket(int Kind, int Bank, int Address, int Size)
{
    /// <summary>Bytes of the packet's own header.</summary>
    public const int HeaderLength = 0x10;

    /// <summary>The kind of a chip that the console can write to.</summary>
    public const int Flash = 2;

    private const int TotalAt = 0x04;
    private const int KindAt = 0x08;
    private const int BankAt = 0x0A;
    private const int AddressAt = 0x0C;
    private const int SizeAt = 0x0E;

    /// <summary>The packet's header as bytes.</summary>
    public byte[] ToBytes()
    {
        var bytes = new byte[HeaderLength];
        Mark.CopyTo(bytes);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(TotalAt), HeaderLength + Size);
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(KindAt), (ushort)Kind);
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(BankAt), (ushort)Bank);
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(AddressAt), (ushort)Address);
        BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(SizeAt), (ushort)Size);
        return bytes;
    }

    /// <summary>Reads a packet's header.</summary>
    /// <param name="bytes">The bytes from the packet's start on, as many as there are.</param>
    /// <param name="total">Bytes to the next packet, as the packet says.</param>
    /// <returns>Null where no packet begins.</returns>
    public static CrtPacket? Read(ReadOnlySpan<byte> bytes, out long total)
    {
        total = 0;
        if (bytes.Length < HeaderLength || !bytes.StartsWith(Mark))
        {
            return null;
        }

        total = BinaryPrimitives.ReadUInt32BigEndian(bytes[TotalAt..]);
        return new CrtPacket(Word(bytes, KindAt), Word(bytes, BankAt), Word(bytes, AddressAt), Word(bytes, SizeAt));
    }

    private static ReadOnlySpan<byte> Mark => "CHIP"u8;

    private static int Word(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
}
