using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Cartwright.TestImages;

/// <summary>Fills the long unused stretches of an image so that a read-back of the release itself can show faults of address lines.</summary>
public static class DiagnosableFill
{
    /// <summary>Stretches begin and end at multiples of this; a few bytes of the fill value stay at either end of what is used.</summary>
    public const int Step = 16;

    /// <summary>The stretches that hold nothing but one value.</summary>
    /// <param name="image">The image.</param>
    /// <param name="fill">The value of unused bytes.</param>
    /// <param name="shortest">Shorter ones are left alone, in bytes.</param>
    public static ImmutableArray<FilledStretch> Unused(ReadOnlySpan<byte> image, byte fill, int shortest)
    {
        var stretches = ImmutableArray.CreateBuilder<FilledStretch>();
        var at = 0;
        while (at < image.Length)
        {
            var start = image[at..].IndexOf(fill);
            if (start < 0)
            {
                break;
            }

            start += at;
            var length = image[start..].IndexOfAnyExcept(fill);
            at = length < 0 ? image.Length : start + length;
            var (first, end) = ((start + Step - 1) / Step * Step, at / Step * Step);
            if (end - first >= Math.Max(shortest, Step))
            {
                stretches.Add(new FilledStretch(first, end - first));
            }
        }

        return stretches.ToImmutable();
    }

    /// <summary>Fills stretches: a text with the address first, then chance bytes.</summary>
    /// <param name="image">The image.</param>
    /// <param name="stretches">The stretches.</param>
    /// <param name="seed">Other bytes for another number.</param>
    /// <returns>The filled image; the given one stays as it is.</returns>
    public static byte[] Fill(ReadOnlySpan<byte> image, ImmutableArray<FilledStretch> stretches, uint seed)
    {
        var filled = image.ToArray();
        foreach (var stretch in stretches)
        {
            var own = filled.AsSpan(stretch.Offset, stretch.Length);
            ChanceBytes.Write(own, stretch.Offset, seed);
            _ = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"UNUSED {stretch.Offset:X8} "), own);
        }

        return filled;
    }
}
