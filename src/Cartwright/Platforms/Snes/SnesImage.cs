using System.Numerics;
using Cartwright.Ordering;

namespace Cartwright.Platforms.Snes;

// An image as the console sees it, without copying one whose banks were taken apart.
internal readonly ref struct SnesImage(ReadOnlySpan<byte> bytes, ImageOrder order)
{
    private const int HalfBank = 0x8000;

    private readonly ReadOnlySpan<byte> _bytes = bytes;

    public ImageOrder Order { get; } = order;

    public int Length => _bytes.Length;

    public byte this[int offset] => _bytes[At(offset)];

    /// <summary>Bytes that lie within one half of a bank.</summary>
    public ReadOnlySpan<byte> Slice(int offset, int length) => _bytes.Slice(At(offset), length);

    /// <summary>The checksum the bytes give.</summary>
    /// <param name="pair">Offset of the complement.</param>
    public ushort Sum(int pair)
    {
        // A power of two counts each byte once, wherever it stands.
        if (Order == ImageOrder.Console || BitOperations.IsPow2(_bytes.Length))
        {
            return SnesChecksum.Sum(_bytes, At(pair));
        }

        var console = new byte[_bytes.Length];
        ImageOrders.ToConsole(Order, _bytes, console);
        return SnesChecksum.Sum(console, pair);
    }

    // All upper halves of banks stand before all lower ones.
    private int At(int offset)
    {
        var half = offset / HalfBank;
        return Order == ImageOrder.Console ? offset
            : (((half & 1) != 0 ? half / 2 : (_bytes.Length / (2 * HalfBank)) + (half / 2)) * HalfBank) + (offset % HalfBank);
    }
}
