namespace Cartwright.Ordering;

/// <summary>Brings images into the console's order and back. Every order is the exact inverse of itself undone.</summary>
public static class ImageOrders
{
    private const int Block = 0x4000;
    private const int HalfBank = 0x8000;

    /// <summary>What the length of an image in an order must be a multiple of.</summary>
    /// <param name="order">The order.</param>
    public static int Unit(ImageOrder order) => order switch
    {
        ImageOrder.ByteSwapped or ImageOrder.OddEvenHalves => 2,
        ImageOrder.WordSwapped or ImageOrder.HalfwordSwapped => 4,
        ImageOrder.OddEvenBlocks or ImageOrder.EvenOddBlocks => Block,
        ImageOrder.UpperLowerHalves => 2 * HalfBank,
        _ => 1,
    };

    /// <summary>Brings an image into the console's order.</summary>
    /// <param name="order">The order it is in.</param>
    /// <param name="image">The image; its length is a multiple of <see cref="Unit"/>.</param>
    /// <param name="console">Receives it; as long as the image and apart from it.</param>
    public static void ToConsole(ImageOrder order, ReadOnlySpan<byte> image, Span<byte> console)
    {
        switch (order)
        {
            case ImageOrder.OddEvenBlocks or ImageOrder.EvenOddBlocks:
                for (var at = 0; at < image.Length; at += Block)
                {
                    Interleave(image.Slice(at, Block), console.Slice(at, Block), order == ImageOrder.OddEvenBlocks);
                }

                break;
            case ImageOrder.OddEvenHalves:
                Interleave(image, console, oddFirst: true);
                break;
            case ImageOrder.UpperLowerHalves:
                MoveHalves(image, console, toConsole: true);
                break;
            default:
                Exchange(order, image, console);
                break;
        }
    }

    /// <summary>Brings an image from the console's order into another.</summary>
    /// <param name="order">The order it is to have.</param>
    /// <param name="console">The image; its length is a multiple of <see cref="Unit"/>.</param>
    /// <param name="image">Receives it; as long as the image and apart from it.</param>
    public static void FromConsole(ImageOrder order, ReadOnlySpan<byte> console, Span<byte> image)
    {
        switch (order)
        {
            case ImageOrder.OddEvenBlocks or ImageOrder.EvenOddBlocks:
                for (var at = 0; at < console.Length; at += Block)
                {
                    Part(console.Slice(at, Block), image.Slice(at, Block), order == ImageOrder.OddEvenBlocks);
                }

                break;
            case ImageOrder.OddEvenHalves:
                Part(console, image, oddFirst: true);
                break;
            case ImageOrder.UpperLowerHalves:
                MoveHalves(console, image, toConsole: false);
                break;
            default:
                Exchange(order, console, image);
                break;
        }
    }

    // These undo themselves.
    private static void Exchange(ImageOrder order, ReadOnlySpan<byte> source, Span<byte> destination)
    {
        switch (order)
        {
            case ImageOrder.ByteSwapped:
                WordSwap.Swap16(source, destination);
                break;
            case ImageOrder.WordSwapped:
                WordSwap.Swap32(source, destination);
                break;
            case ImageOrder.HalfwordSwapped:
                WordSwap.HalfwordSwap(source, destination);
                break;
            case ImageOrder.BitReversed:
                BitReverse.Reverse8(source, destination);
                break;
            default:
                source.CopyTo(destination);
                break;
        }
    }

    private static void Interleave(ReadOnlySpan<byte> parted, Span<byte> whole, bool oddFirst)
    {
        var half = parted.Length / 2;
        Lanes.Merge(oddFirst ? parted[half..] : parted[..half], oddFirst ? parted[..half] : parted[half..], whole);
    }

    private static void Part(ReadOnlySpan<byte> whole, Span<byte> parted, bool oddFirst)
    {
        var half = whole.Length / 2;
        Lanes.Split2(whole, oddFirst ? parted[half..] : parted[..half], oddFirst ? parted[..half] : parted[half..]);
    }

    private static void MoveHalves(ReadOnlySpan<byte> source, Span<byte> destination, bool toConsole)
    {
        var banks = source.Length / (2 * HalfBank);
        for (var bank = 0; bank < banks; bank++)
        {
            CopyHalf(source, destination, (2 * bank) + 1, bank, toConsole);
            CopyHalf(source, destination, 2 * bank, banks + bank, toConsole);
        }
    }

    private static void CopyHalf(ReadOnlySpan<byte> source, Span<byte> destination, int inConsole, int inImage, bool toConsole) =>
        source.Slice((toConsole ? inImage : inConsole) * HalfBank, HalfBank).CopyTo(destination.Slice((toConsole ? inConsole : inImage) * HalfBank, HalfBank));
}
