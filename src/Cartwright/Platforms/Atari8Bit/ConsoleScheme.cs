using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>A way a board shows the ROM at $4000-$BFFF of the 5200.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="KiB">Legal sizes in KiB.</param>
/// <param name="Meaning">What the board does, a clause.</param>
/// <param name="Source">Where the row comes from.</param>
internal sealed record ConsoleScheme(string Name, ImmutableArray<int> KiB, string Meaning, string Source)
{
    public const string Plain = "plain";
    public const string TwoChip = "two-chip";
    public const string Banked = "banked-40k";

    /// <summary>The sizes as a rule.</summary>
    public SizeRule SizeRule => new([.. KiB.Select(static size => size * 1024L)], 0,
        KiB.Length == 1 ? $"exactly {KiB[0]} KiB" : $"one of {string.Join(", ", KiB.Select(static size => ByteSize.Words(size * 1024L)))}");

    public static ImmutableArray<ConsoleScheme> All { get; } =
    [
        new(Plain, [4, 8, 16, 32], "one chip, seen again and again up to $BFFF", "from memory"),
        new(TwoChip, [16], "two chips of 8 KiB: the first at $4000 and $6000, the second at $8000 and $A000", "from memory"),
        new(Banked, [40], "4 KiB of choice at $4000, 4 KiB of choice at $5000, and the last 8 KiB at $8000 and $A000", "from memory"),
    ];

    public static ConsoleScheme Named(string name) => All.First(row => row.Name == name);

    /// <summary>The name of the container's number for a length; null where there is none.</summary>
    public string? TypeOf(long length) => (Name, length >> 10) switch
    {
        (Plain, 4) => "5200-4k",
        (Plain, 8) => "5200-8k",
        (Plain, 16) => "5200-16k-one-chip",
        (Plain, 32) => "5200-32k",
        (TwoChip, 16) => "5200-16k-two-chip",
        (Banked, 40) => "5200-40k",
        _ => null,
    };
}
