using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

// The trade counts in Mbit of 128 KiB; the sums stand for two chips, the larger one first (fullsnes, cartridge chapters).
internal static class SnesSizes
{
    private const long Mbit = 128 << 10;

    public const long Half = 32 * Mbit;

    private static readonly long[] Single = [256 << 10, 512 << 10, 1 << 20, 10 * Mbit, 12 * Mbit, 2 << 20, 20 * Mbit, 24 * Mbit, 4 << 20];

    public static SizeRule For(SnesMapping mapping) => mapping.Extended ? Extended(mapping) : Plain(mapping);

    private static SizeRule Plain(SnesMapping mapping)
    {
        long[] small = mapping.High ? [64 << 10, 128 << 10] : [32 << 10, 64 << 10, 128 << 10];
        return new SizeRule([.. small, .. Single], mapping.BankSize,
            $"a power of two from {ByteSize.Words(small[0])} to 4 MiB, or 10, 12, 20 or 24 Mbit (1.25, 1.5, 2.5 or 3 MiB); when stated, any multiple of {ByteSize.Words(mapping.BankSize)} up to 4 MiB");
    }

    private static SizeRule Extended(SnesMapping mapping) =>
        new([40 * Mbit, 48 * Mbit, 64 * Mbit], mapping.BankSize,
            $"40, 48 or 64 Mbit (5, 6 or 8 MiB); when stated, any multiple of {ByteSize.Words(mapping.BankSize)} above 4 MiB up to 8 MiB")
        {
            Smallest = Half + mapping.BankSize,
        };
}
