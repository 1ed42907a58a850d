using System.Buffers.Binary;

namespace Cartwright.Patching;

/// <summary>One record of an IPS patch. Source: IPS patch format.</summary>
internal readonly ref struct IpsRecord
{
    private const int HeadSize = 5;
    private const int RunSize = 8;

    /// <summary>Reads a record that is known to be whole.</summary>
    /// <param name="patch">The patch from the record's first byte.</param>
    public IpsRecord(ReadOnlySpan<byte> patch)
    {
        Offset = Number24(patch);
        IsRun = Count(patch) == 0;
        Length = IsRun ? BinaryPrimitives.ReadUInt16BigEndian(patch[HeadSize..]) : Count(patch);
        Data = IsRun ? patch.Slice(RunSize - 1, 1) : patch.Slice(HeadSize, Length);
    }

    /// <summary>The first byte it writes.</summary>
    public int Offset { get; }

    /// <summary>Bytes it writes.</summary>
    public int Length { get; }

    /// <summary>True when it repeats one byte.</summary>
    public bool IsRun { get; }

    /// <summary>The bytes it writes, or the one it repeats.</summary>
    public ReadOnlySpan<byte> Data { get; }

    /// <summary>The byte after the last it writes.</summary>
    public int End => Offset + Length;

    /// <summary>Bytes the record takes up in the patch; 0 when it is not whole, or a run of nothing.</summary>
    /// <param name="patch">The patch from the record's first byte.</param>
    public static int SizeOf(ReadOnlySpan<byte> patch)
    {
        if (patch.Length < HeadSize || IsEmptyRun(patch)) return 0;
        var size = Count(patch) == 0 ? RunSize : HeadSize + Count(patch);
        return size <= patch.Length ? size : 0;
    }

    /// <summary>True when the record says to repeat a byte no times.</summary>
    public static bool IsEmptyRun(ReadOnlySpan<byte> patch) => patch.Length >= RunSize && BinaryPrimitives.ReadUInt32BigEndian(patch[3..]) == 0;

    /// <summary>Three bytes, the highest first.</summary>
    public static int Number24(ReadOnlySpan<byte> bytes) => (bytes[0] << 16) | (bytes[1] << 8) | bytes[2];

    /// <summary>Carries the record out, as far as the image reaches.</summary>
    public void WriteTo(Span<byte> image)
    {
        if (Offset >= image.Length) return;
        var target = image.Slice(Offset, Math.Min(Length, image.Length - Offset));
        if (IsRun) target.Fill(Data[0]);
        else Data[..target.Length].CopyTo(target);
    }

    private static int Count(ReadOnlySpan<byte> patch) => BinaryPrimitives.ReadUInt16BigEndian(patch[3..]);
}
