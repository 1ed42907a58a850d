using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari7800;

/// <summary>A way a board shows the ROM at $4000-$FFFF.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Sizes">Legal sizes in bytes.</param>
/// <param name="Meaning">What the board does, a clause.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record Atari7800Scheme(string Name, ImmutableArray<long> Sizes, string Meaning, string Source)
{
    private const int K = 1 << 10;
    private const string Guide = "Atari 7800 bankswitching guide";

    /// <summary>First page of 4 KiB from which on nothing is switched; below zero where nothing is switched at all.</summary>
    public int FixedPage { get; init; } = -1;

    /// <summary>First address at which a bank of choice shows; 0 where none does.</summary>
    public int SwitchedFrom { get; init; }

    /// <summary>The address after the last of them.</summary>
    public int SwitchedEnd { get; init; }

    /// <summary>Where $FF80 lies in the ROM.</summary>
    public HeaderAnchor Footer { get; init; } = new(Atari7800Footer.Length, FromEnd: true);

    /// <summary>Bits of the container's cart type that go with the scheme.</summary>
    public ImmutableArray<int> TypeBits { get; init; } = [];

    /// <summary>The sizes as a rule.</summary>
    public SizeRule SizeRule => new(Sizes, 0, Sizes.Length == 1 ? $"exactly {ByteSize.Words(Sizes[0])}" : $"one of {string.Join(", ", Sizes.Select(ByteSize.Words))}");

    /// <summary>The rows.</summary>
    public static ImmutableArray<Atari7800Scheme> All { get; } =
    [
        new("linear", [8 * K, 16 * K, 32 * K, 48 * K], "the ROM lies at the top of the addresses, nothing is switched", Guide),
        new("supergame", [64 * K, 128 * K, 256 * K, 512 * K], "writing a bank's number to $8000-$BFFF shows it there; the last bank is at $C000", "The SuperGame Format")
            { FixedPage = 0xC, SwitchedFrom = 0x8000, SwitchedEnd = 0xC000, TypeBits = [1] },
        new("supergame-bank-6", [64 * K, 128 * K, 256 * K, 512 * K], "as supergame, and the last bank but one is at $4000 too", "The SuperGame Format")
            { FixedPage = 0xC, SwitchedFrom = 0x8000, SwitchedEnd = 0xC000, TypeBits = [1, 4] },
        new("supergame-9-bank", [144 * K], "as supergame, and the file's first 16 KiB, which are none of the eight banks, are at $4000", "The SuperGame Format")
            { FixedPage = 0xC, SwitchedFrom = 0x8000, SwitchedEnd = 0xC000, TypeBits = [1, 3] },
        new("activision", [128 * K], "access to $FF80-$FF87 shows a bank at $A000-$DFFF; banks 6 and 7 are seen in halves at $4000-$9FFF and $E000", Guide + "; the map is from memory")
            { FixedPage = 0xE, SwitchedFrom = 0xA000, SwitchedEnd = 0xE000, TypeBits = [8], Footer = new HeaderAnchor((7 * 16 * K) + (8 * K) - Atari7800Footer.Length) },
        new("absolute", [64 * K], "writing 1 or 2 to $8000 shows bank 0 or 1 at $4000; banks 2 and 3 are at $8000 and $C000", "from memory")
            { FixedPage = 0x8, SwitchedFrom = 0x4000, SwitchedEnd = 0x8000, TypeBits = [9] },
    ];

    /// <summary>A row by name.</summary>
    /// <param name="name">The name.</param>
    public static Atari7800Scheme Named(string name) => All.First(row => row.Name == name);

    /// <summary>First page of 4 KiB the signed area may begin with: what is before it is switched, or no ROM.</summary>
    /// <param name="length">Length of the ROM in bytes.</param>
    public int FirstSignable(int length) => FixedPage >= 0 ? FixedPage : (0x10000 - length) >> 12;
}
