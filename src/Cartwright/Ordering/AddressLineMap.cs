namespace Cartwright.Ordering;

/// <summary>
/// Moves the words of an image to where a chip must hold them when the bus's address lines meet the chip's in another order:
/// <c>chip[order(a)] = image[a]</c>. With it the bus reads at <c>a</c> what the image has at <c>a</c>.
/// </summary>
/// <param name="order">For each address line of the bus, from the lowest, the chip's line; a line counts words.</param>
/// <remarks>The lowest lines that run straight are copied as runs: an exchange of high lines is a few large copies.</remarks>
public sealed class AddressLineMap(LineOrder order)
{
    // Small enough to stay near the processor, large enough to make the outer table short.
    private const int MostTableLines = 11;

    // Blocks and offsets are counted in an int.
    private const int MostLines = 30;

    /// <summary>The order of the lines.</summary>
    public LineOrder Order { get; } = order.Count <= MostLines ? order : throw new ArgumentOutOfRangeException(nameof(order), order.Count, "More address lines than a span can hold words.");

    /// <summary>Words of a chip with these lines.</summary>
    public int Words => 1 << Order.Count;

    /// <summary>The chip's address for one of the bus.</summary>
    /// <param name="address">The word's address on the bus.</param>
    public int Map(int address) => (int)Order.Map((uint)address);

    /// <summary>The way back.</summary>
    public AddressLineMap Inverse() => new(Order.Inverse());

    /// <summary>This map and then another.</summary>
    /// <param name="next">The other, of as many lines.</param>
    public AddressLineMap Then(AddressLineMap next) => new(Order.Then(next.Order));

    /// <summary>Moves the words.</summary>
    /// <param name="image">The image: as many words as the lines address.</param>
    /// <param name="bytesAWord">Bytes of one word: 1, 2 or 4.</param>
    /// <param name="chip">Receives them; as many bytes, apart from the image.</param>
    /// <exception cref="ArgumentException">A length is wrong, or the spans overlap.</exception>
    public void Apply(ReadOnlySpan<byte> image, int bytesAWord, Span<byte> chip)
    {
        if (image.Length != (long)Words * bytesAWord)
            throw new ArgumentException($"{image.Length} bytes are not {Words} words of {bytesAWord}.", nameof(image));

        chip = SpanGuard.RequireRoom(chip, image.Length);
        SpanGuard.RequireApart(image, chip);
        var run = bytesAWord << Order.StraightBelow;
        var inner = Offsets(Order.StraightBelow, Math.Min(Order.Count, Order.StraightBelow + MostTableLines), bytesAWord);
        var from = 0;
        foreach (var block in Offsets(Order.StraightBelow + MostTableLines, Order.Count, bytesAWord))
        {
            if (run == 1)
                MoveBytes(image, chip[block..], inner, from);
            else
                MoveRuns(image, chip[block..], inner, from, run);

            from += inner.Length * run;
        }
    }

    private static void MoveBytes(ReadOnlySpan<byte> image, Span<byte> chip, ReadOnlySpan<int> offsets, int from)
    {
        for (var i = 0; i < offsets.Length; i++)
            chip[offsets[i]] = image[from + i];
    }

    private static void MoveRuns(ReadOnlySpan<byte> image, Span<byte> chip, ReadOnlySpan<int> offsets, int from, int run)
    {
        for (var i = 0; i < offsets.Length; i++)
            image.Slice(from + (i * run), run).CopyTo(chip[offsets[i]..]);
    }

    // Where each combination of some of the lines lies on the chip, in bytes.
    private int[] Offsets(int first, int end, int bytesAWord)
    {
        var offsets = new int[1 << Math.Max(0, end - first)];
        for (var i = 0; i < offsets.Length; i++)
            offsets[i] = (int)Order.Map((uint)(first < Order.Count ? i << first : 0)) * bytesAWord;

        return offsets;
    }
}
