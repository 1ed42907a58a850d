using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>What the bytes of a computer's cartridge can show to be wrong.</summary>
public static class Atari8BitFindings
{
    /// <summary>A program still has the container in front.</summary>
    public static readonly FindingRule ContainerInside = new("CW4485", FindingSeverity.Error, "CART container left in a program",
        "The container's 16 bytes are on no chip; with them in front everything is in the wrong place.", "Give the program `skip: 16`.");

    /// <summary>The presence byte is not zero.</summary>
    public static readonly FindingRule NotPresent = new("CW4486", FindingSeverity.Error, "Presence byte is not zero",
        "The computer takes the slot for empty unless the byte at $BFFC ($9FFC in the right slot) is 0x00.", "Let the program hold 0x00 there; if code is there, move it.");

    /// <summary>No run address, though it is to be used.</summary>
    public static readonly FindingRule NoRunAddress = new("CW4487", FindingSeverity.Error, "No run address",
        "The computer is told to go to the run address, and there is none.", "State `runAddress`, or `runCartridge: false`.");

    /// <summary>An address leads out of the cartridge.</summary>
    public static readonly FindingRule AddressOutside = new("CW4488", FindingSeverity.Warning, "Start outside the cartridge",
        "The run and init addresses lie in the cartridge itself by custom.", "Compare them with the program's map; if they are meant, nothing.");

    /// <summary>An address leads to fill.</summary>
    public static readonly FindingRule AddressUncovered = new("CW4489", FindingSeverity.Error, "Start outside every program",
        "The computer would run fill bytes.", "Correct the address, or the place of the program.");

    /// <summary>A trailer at the end of another bank.</summary>
    public static readonly FindingRule TrailerElsewhere = new("CW4490", FindingSeverity.Warning, "Trailer at the end of another bank",
        "The computer looks for it at the end of the ROM; this is how a ROM with its halves exchanged, or with its start in the wrong bank, looks.",
        "Put the part with the start last.");

    /// <summary>A bank without a trailer that may show at power-on.</summary>
    public static readonly FindingRule BankWithoutTrailer = new("CW4491", FindingSeverity.Warning, "Bank without a trailer",
        "Which bank shows at power-on is not certain with this scheme (from memory).", "Give every bank a trailer in its last six bytes.");

    /// <summary>The diagnostic bit.</summary>
    public static readonly FindingRule DiagnosticStart = new("CW4492", FindingSeverity.Note, "Diagnostic start",
        "The computer goes to the init address before it has set anything up (from memory).", "Nothing, if the program does that itself.");

    /// <summary>A run address that is not gone to.</summary>
    public static readonly FindingRule RunNotAsked = new("CW4493", FindingSeverity.Warning, "Run address is not used",
        "With bit 2 of the option byte clear the computer calls the init address only, and the game does not start by itself (bits from memory).",
        "State `runCartridge: true`, and let the program hold no option byte of its own; if only init is meant, nothing.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [ContainerInside, NotPresent, NoRunAddress, AddressOutside, AddressUncovered, TrailerElsewhere, BankWithoutTrailer, DiagnosticStart, RunNotAsked];
}
