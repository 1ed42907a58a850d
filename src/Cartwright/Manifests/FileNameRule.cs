using System.Buffers;

namespace Cartwright.Manifests;

/// <summary>Names that every FAT-formatted card can carry, whatever device reads it.</summary>
/// <remarks>Source: Naming files on FAT, platform documentation; reserved device names partly from memory.</remarks>
public static class FileNameRule
{
    /// <summary>Longest stem, in characters: long enough for any title, short enough that site and ending fit beside it.</summary>
    public const int Longest = 100;

    private static readonly SearchValues<char> Safe =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_");

    private static readonly HashSet<string> Devices = new(StringComparer.OrdinalIgnoreCase)
    {
        "CON", "PRN", "AUX", "NUL",
        "COM0", "COM1", "COM2", "COM3", "COM4", "COM5", "COM6", "COM7", "COM8", "COM9",
        "LPT0", "LPT1", "LPT2", "LPT3", "LPT4", "LPT5", "LPT6", "LPT7", "LPT8", "LPT9",
    };

    /// <summary>What is wrong with a name, or null when it is safe.</summary>
    /// <param name="name">The stem, without ending.</param>
    public static string? Problem(string name)
    {
        if (name.Length is 0 or > Longest)
        {
            return $"it has {name.Length} characters, and 1 to {Longest} are possible";
        }

        var bad = name.AsSpan().IndexOfAnyExcept(Safe);
        return bad >= 0 ? $"`{name[bad]}` is not possible"
            : Devices.Contains(name) ? "it is the name of a device on some systems"
            : null;
    }
}
