using System.Runtime.InteropServices;

namespace Cartwright.Ordering;

/// <summary>
/// Moves the bits of each word to where a chip must hold them when the bus's data lines meet the chip's in another order: bit
/// <c>i</c> of the image becomes bit <c>order[i]</c> on the chip. With it the bus reads what the image has.
/// </summary>
public sealed class DataLineMap
{
    private const int Byte = 8;
    private const int Word = 16;

    // The contribution of a word's low byte, then of its high byte.
    private readonly ushort[] _low;
    private readonly ushort[] _high;

    /// <summary>A map.</summary>
    /// <param name="order">For each data line of the bus, from the lowest, the chip's line: 8 or 16 lines.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another number of lines.</exception>
    public DataLineMap(LineOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        if (order.Count is not (Byte or Word))
            throw new ArgumentOutOfRangeException(nameof(order), order.Count, "8 or 16 lines.");

        Order = order;
        _low = Table(order, 0);
        _high = order.Count == Word ? Table(order, Byte) : [];
    }

    /// <summary>The order of the lines.</summary>
    public LineOrder Order { get; }

    /// <summary>The word on the chip for one of the image.</summary>
    /// <param name="word">The word; bits beyond the lines are dropped.</param>
    public ushort Map(ushort word) => _high.Length == 0 ? _low[(byte)word] : (ushort)(_low[(byte)word] | _high[word >> Byte]);

    /// <summary>The way back.</summary>
    public DataLineMap Inverse() => new(Order.Inverse());

    /// <summary>This map and then another.</summary>
    /// <param name="next">The other, of as many lines.</param>
    public DataLineMap Then(DataLineMap next) => new(Order.Then(next.Order));

    /// <summary>Moves the bits of each word in place.</summary>
    /// <param name="bytes">Whole words.</param>
    /// <param name="lowByteFirst">True when the byte of D0-D7 stands before that of D8-D15; of no meaning for 8 lines.</param>
    /// <exception cref="ArgumentException">Half a word at the end.</exception>
    public void Apply(Span<byte> bytes, bool lowByteFirst)
    {
        SpanGuard.RequireMultiple(bytes, Order.Count / Byte);
        if (Order.IsStraight)
            return;

        if (Order.Equals(LineOrder.Reversed(Order.Count)))
        {
            Reverse(bytes);
        }
        else if (Order.Count == Byte)
        {
            foreach (ref var value in bytes)
                value = (byte)_low[value];
        }
        else
        {
            MoveWords(bytes, lowByteFirst == BitConverter.IsLittleEndian);
        }
    }

    // On 16 lines D0 meets D15, so the two bytes change places as well.
    private void Reverse(Span<byte> bytes)
    {
        BitReverse.Reverse8(bytes);
        if (Order.Count == Word)
            WordSwap.Swap16(bytes);
    }

    private void MoveWords(Span<byte> bytes, bool isOwnOrder)
    {
        if (!isOwnOrder)
            WordSwap.Swap16(bytes);

        foreach (ref var word in MemoryMarshal.Cast<byte, ushort>(bytes))
            word = (ushort)(_low[(byte)word] | _high[word >> Byte]);

        if (!isOwnOrder)
            WordSwap.Swap16(bytes);
    }

    private static ushort[] Table(LineOrder order, int shift) =>
        [.. Enumerable.Range(0, 1 << Byte).Select(value => (ushort)order.Map((uint)value << shift))];
}
