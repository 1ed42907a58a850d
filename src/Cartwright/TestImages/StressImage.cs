using Cartwright.ReadBacks;

namespace Cartwright.TestImages;

/// <summary>
/// Stretches of 256 words in which every data line switches with every word, and quiet ones between them. Each pair of stretches has the other
/// phase than the one before, so that both levels are met where many address lines switch.
/// </summary>
public static class StressImage
{
    private const int StretchBits = 8;

    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes.</param>
    /// <param name="shape">Width of the chip.</param>
    public static byte[] Make(int size, WordShape shape)
    {
        var image = new byte[size];
        for (var at = 0; at < size; at++)
        {
            image[at] = IsHigh(at / shape.Bytes) ? byte.MaxValue : byte.MinValue;
        }

        return image;
    }

    /// <summary>Whether a word is one of a restless stretch.</summary>
    /// <param name="word">The word's address.</param>
    public static bool IsRestless(int word) => ((word >> StretchBits) & 1) == 0;

    // A quiet stretch has the level that its successor does not begin with.
    private static bool IsHigh(int word)
    {
        var phase = (word >> (StretchBits + 1)) & 1;
        return IsRestless(word) ? ((word ^ phase) & 1) == 1 : phase == 1;
    }
}
