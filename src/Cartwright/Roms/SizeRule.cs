using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Roms;

/// <summary>The sizes a region can have.</summary>
/// <param name="Customary">Sizes in bytes that <c>fit</c> chooses from, ascending.</param>
/// <param name="Step">Where sizes between the customary ones are legal when stated, what they must be a multiple of; 0 where none are.</param>
/// <param name="Words">The rule in words, for messages and documents.</param>
public sealed record SizeRule(ImmutableArray<long> Customary, long Step, string Words)
{
    /// <summary>Smallest legal size in bytes.</summary>
    public long Smallest { get; init; } = Customary[0];

    /// <summary>Largest legal size in bytes.</summary>
    public long Largest { get; init; } = Customary[^1];

    /// <summary>Where <c>fit</c> takes the next multiple of this and not a customary size; 0 where it does not.</summary>
    public long FitStep { get; init; }

    /// <summary>Sizes in bytes that are legal when stated and that <c>fit</c> does not choose, since they change what the console sees.</summary>
    public ImmutableArray<long> OnlyStated { get; init; } = [];

    /// <summary>Powers of two, and nothing between.</summary>
    /// <param name="smallest">Smallest size in bytes, a power of two.</param>
    /// <param name="largest">Largest size in bytes, a power of two.</param>
    public static SizeRule PowersOfTwo(long smallest, long largest)
    {
        var sizes = ImmutableArray.CreateBuilder<long>();
        for (var size = smallest; size <= largest; size *= 2)
        {
            sizes.Add(size);
        }

        return new SizeRule(sizes.ToImmutable(), 0, smallest == largest
            ? $"exactly {ByteSize.Words(smallest)}"
            : $"a power of two from {ByteSize.Words(smallest)} to {ByteSize.Words(largest)}");
    }

    /// <summary>The size <c>fit</c> takes for so many bytes; null when they are too many.</summary>
    /// <param name="needed">Bytes needed.</param>
    public long? Fit(long needed)
    {
        if (FitStep > 0)
        {
            var multiple = Math.Max(Smallest, (needed + FitStep - 1) / FitStep * FitStep);
            return multiple <= Largest ? multiple : null;
        }

        foreach (var size in Customary)
        {
            if (size >= needed)
            {
                return size;
            }
        }

        return null;
    }

    /// <summary>Whether a stated size is legal.</summary>
    /// <param name="size">The size in bytes.</param>
    public bool Allows(long size) =>
        Customary.Contains(size) || OnlyStated.Contains(size) || (Step > 0 && size % Step == 0 && size >= Smallest && size <= Largest);
}
