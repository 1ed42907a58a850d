using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>A way to show a ROM through the console's window of 4 KiB. Banks count in the order of the file.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Sizes">Customary sizes of the ROM in bytes.</param>
/// <param name="Bank">Bytes of a bank.</param>
/// <param name="PowerOn">Which bank shows when the console is switched on.</param>
/// <param name="Switching">What switches the banks, in words.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record BankScheme(string Name, ImmutableArray<long> Sizes, int Bank, PowerOn PowerOn, string Switching, string Source)
{
    /// <summary>What legal sizes between the customary ones are a multiple of, in bytes; 0 where there are none.</summary>
    public int Step { get; init; }

    /// <summary>Bytes at the top of the window that always show the ROM's last ones; 0 where everything is switched.</summary>
    public int FixedTop { get; init; }

    /// <summary>The bank that shows at power-on, where it is known.</summary>
    public int FirstBank { get; init; }

    /// <summary>RAM on the cartridge, in words; null where there is none.</summary>
    public string? Ram { get; init; }

    /// <summary>Bytes at the start of every bank that RAM hides for good.</summary>
    public int HiddenInBanks { get; init; }

    /// <summary>Bytes at the start of the fixed part that RAM hides for good.</summary>
    public int HiddenInFixed { get; init; }

    /// <summary>Offset in a bank of the first byte whose address switches; below zero where none does.</summary>
    public int FirstHotSpot { get; init; } = -1;

    /// <summary>Offset in a bank of the last byte whose address switches.</summary>
    public int LastHotSpot { get; init; } = -1;

    /// <summary>Bytes of a second ROM on the cartridge that is on no bus of the console's; 0 where there is none.</summary>
    public int Data { get; init; }

    /// <summary>First address of the window's ROM in 13 bits.</summary>
    public int WindowStart { get; init; } = 0x1000;

    /// <summary>The sizes as a rule.</summary>
    public SizeRule SizeRule => new(Sizes, Step, Words);

    /// <summary>The row in one sentence.</summary>
    public string Meaning => $"{Words}; {Switching}{(Ram is null ? "" : "; RAM: " + Ram)}";

    private string Words
    {
        get
        {
            var sizes = string.Join(", ", Sizes.Select(ByteSize.Words));
            return Step > 0 ? $"{ByteSize.Words(Sizes[0])} to {ByteSize.Words(Sizes[^1])} in steps of {ByteSize.Words(Step)}"
                : Sizes.Length == 1 ? $"exactly {sizes}"
                : $"one of {sizes}";
        }
    }
}
