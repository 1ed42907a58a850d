using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Atari2600;

/// <summary>What the bytes of a 2600 cart can show to be wrong.</summary>
public static class Atari2600Findings
{
    /// <summary>No bank has a start.</summary>
    public static readonly FindingRule NoResetVector = new("CW4455", FindingSeverity.Error, "No bank can start",
        "The processor starts at the address in $1FFC of the bank that shows at power-on, and no bank holds one that leads into the cartridge.",
        "Let the program hold the reset vector in the last four bytes of its banks, with bit 12 set ($1000-$1FFF, or $F000-$FFFF).");

    /// <summary>A bank that may show at power-on has no start.</summary>
    public static readonly FindingRule BankWithoutVectors = new("CW4456", FindingSeverity.Warning, "Bank without a start",
        "This bank may show at power-on, and the cart then starts on some consoles or some days only.",
        "Give the bank a reset vector and a few bytes that switch to the bank where the game starts.");

    /// <summary>The start is no code.</summary>
    public static readonly FindingRule DoubtfulStart = new("CW4457", FindingSeverity.Warning, "Doubtful first instruction",
        "0x00 (BRK) or an erased byte at the start mostly means that the code is not where the vector points.",
        "Compare the reset vector with the program's map; if the byte is meant, nothing.");

    /// <summary>ROM under RAM.</summary>
    public static readonly FindingRule UnderRam = new("CW4458", FindingSeverity.Warning, "Bytes hidden by the cartridge's RAM",
        "The RAM answers at these addresses, so that the ROM's bytes there are never read.",
        "Move code and data out of the RAM's addresses, and fill them with one value.");

    /// <summary>The filler under RAM differs from bank to bank.</summary>
    public static readonly FindingRule RamAreasDiffer = new("CW4459", FindingSeverity.Note, "Filler under the RAM differs between banks",
        "Many programs that read images take a cart to have RAM only where the first bytes of all banks are alike.",
        "Fill the bytes under the RAM with one value in every bank.");

    /// <summary>A hot spot holds bytes of the program.</summary>
    public static readonly FindingRule HotSpotBytes = new("CW4460", FindingSeverity.Note, "Program bytes at hot spots",
        "Reading them switches the bank, whatever they hold.", "Keep the hot spots free of data and code.");

    /// <summary>A 4 KiB program that switches banks.</summary>
    public static readonly FindingRule HalfOfASet = new("CW4461", FindingSeverity.Warning, "One bank of a larger ROM",
        "The program touches addresses that switch banks on other boards, so that it is probably one file of a set.",
        "Give the other banks too, bank 0 first, with the scheme they are for.");

    /// <summary>The bytes look like another scheme.</summary>
    public static readonly FindingRule OtherScheme = new("CW4462", FindingSeverity.Warning, "Looks like another scheme",
        "Programs that go by the bytes take the image for the other scheme, and on a board of the wrong scheme the game does not run.",
        "Compare `scheme` with the board; if it is right, nothing.");

    /// <summary>Ordinary writes that switch banks.</summary>
    public static readonly FindingRule LowWrites = new("CW4463", FindingSeverity.Warning, "Writes below $40 switch banks",
        "With this scheme every write to $00-$3F switches the bank, the picture chip's registers among them.",
        "Write to the picture chip through its second addresses from $40 on, and to $3F only to switch.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoResetVector, BankWithoutVectors, DoubtfulStart, UnderRam, RamAreasDiffer, HotSpotBytes, HalfOfASet, OtherScheme, LowWrites];
}
