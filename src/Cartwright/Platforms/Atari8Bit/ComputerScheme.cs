using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>A way a board shows the ROM at $8000-$BFFF of the computer.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="KiB">Legal sizes in KiB.</param>
/// <param name="Meaning">What the board does, a clause.</param>
/// <param name="Source">Where the row comes from.</param>
internal sealed record ComputerScheme(string Name, ImmutableArray<int> KiB, string Meaning, string Source)
{
    private const string Memory = "from memory";

    /// <summary>The address after the ROM's last one.</summary>
    public int End { get; init; } = 0xC000;

    /// <summary>Bytes of a bank; 0 where nothing is switched.</summary>
    public int Bank { get; init; }

    /// <summary>First address of the window that banks show in.</summary>
    public int Window { get; init; }

    /// <summary>Bytes at the end of the ROM that always show at the top; 0 where everything is switched.</summary>
    public int FixedTop { get; init; }

    /// <summary>What the CART container's names begin with; null where the size does not tell the number.</summary>
    public string? TypePrefix { get; init; }

    /// <summary>True where the trailer's place is certain: the last six bytes of the ROM.</summary>
    public bool HasTrailer => Bank == 0 || FixedTop > 0;

    /// <summary>The sizes as a rule.</summary>
    public SizeRule SizeRule => new([.. KiB.Select(static size => size * 1024L)], 0,
        KiB.Length == 1 ? $"exactly {KiB[0]} KiB" : $"one of {string.Join(", ", KiB.Select(static size => ByteSize.Words(size * 1024L)))}");

    public static ImmutableArray<ComputerScheme> All { get; } =
    [
        new("standard", [8, 16], "8 KiB at $A000-$BFFF or 16 KiB at $8000-$BFFF, nothing is switched", "Memory map extract, cartridge B") { TypePrefix = "standard" },
        new("right-slot", [8], "8 KiB at $8000-$9FFF, in the right slot of the 800", "Memory map extract, cartridge B") { End = 0xA000, TypePrefix = "right-slot" },
        Xegs("xegs", [32, 64, 128, 256, 512, 1024], "writing a bank's number to $D500 shows 8 KiB at $8000; $A000-$BFFF is the last 8 KiB"),
        Xegs("switchable-xegs", [32, 64, 128, 256, 512, 1024], "as xegs, and bit 7 of the number takes the cartridge out of the addresses"),
        new("megacart", [16, 32, 64, 128, 256, 512, 1024], "bits 6-0 of what is written to $D500 show 16 KiB at $8000; bit 7 takes the cartridge out of the addresses", Memory)
            { Bank = 0x4000, Window = 0x8000, TypePrefix = "megacart" },
        new("williams", [32, 64], "access to $D500-$D507 shows 8 KiB at $A000; $D508-$D50F takes the cartridge out of the addresses", Memory)
            { Bank = 0x2000, Window = 0xA000, TypePrefix = "williams" },
        // Which 4 KiB of the file is the fixed one is in no source.
        new("oss", [16], "4 KiB of choice at $A000 and 4 KiB that stay at $B000", Memory) { Bank = 0x1000, Window = 0xA000 },
    ];

    public static ComputerScheme Named(string name) => All.First(row => row.Name == name);

    /// <summary>The name of the container's number for a length; null where there is none.</summary>
    public string? TypeOf(long length) =>
        CartType.All.FirstOrDefault(row => TypePrefix is not null && row.Name == string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{TypePrefix}-{length / 1024}k"))?.Name;

    private static ComputerScheme Xegs(string name, ImmutableArray<int> sizes, string meaning) =>
        new(name, sizes, meaning, Memory) { Bank = 0x2000, Window = 0x8000, FixedTop = 0x2000, TypePrefix = name };
}
