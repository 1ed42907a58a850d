using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.Intellivision;

/// <summary>The usual map of a ROM: three runs of addresses, which count words of 16 bits (from memory).</summary>
public sealed class IntvAddresses : AddressMap
{
    private const string Usual = "$5000-$6FFF, $D000-$DFFF or $F000-$FFFF; addresses count words of 16 bits, those of program files bytes";

    /// <inheritdoc/>
    public override string Forms => Usual;

    /// <inheritdoc/>
    public override int Unit => IntvHeader.WordLength;

    /// <summary>The runs in the order of the ROM: first address and number of words.</summary>
    internal static ImmutableArray<(int Start, int Words)> Runs { get; } = [(0x5000, 0x2000), (0xD000, 0x1000), (0xF000, 0x1000)];

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is not null)
        {
            return AddressPlace.Nowhere("this console's usual map has no banks");
        }

        return OffsetOf(address.Address, out var run) is { } offset
            ? AddressPlace.In(IntvHeader.Region, offset, run)
            : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"${address.Address:X4} is not in the usual map"));
    }

    /// <summary>The byte offset in the ROM of a word's address; null where no ROM is.</summary>
    /// <param name="address">The address, in words.</param>
    /// <param name="run">Bytes from there on that follow each other.</param>
    internal static int? OffsetOf(long address, out int run)
    {
        var before = 0;
        foreach (var (start, words) in Runs)
        {
            var within = address - start;
            if (within >= 0 && within < words)
            {
                run = (int)(words - within) * IntvHeader.WordLength;
                return (before + (int)within) * IntvHeader.WordLength;
            }

            before += words;
        }

        run = 0;
        return null;
    }
}
