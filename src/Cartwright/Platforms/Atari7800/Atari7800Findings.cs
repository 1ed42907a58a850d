using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Atari7800;

/// <summary>What the bytes of a 7800 cart can show to be wrong.</summary>
public static class Atari7800Findings
{
    /// <summary>A program still has the container in front.</summary>
    public static readonly FindingRule ContainerInside = new("CW4495", FindingSeverity.Error, "Container left in a program",
        "The container's 128 bytes are on no chip; with them in front everything is in the wrong place.", "Give the program `skip: 128`.");

    /// <summary>The reset vector leads out of the cartridge.</summary>
    public static readonly FindingRule ResetOutside = new("CW4496", FindingSeverity.Error, "Reset vector outside the ROM",
        "The processor starts at the address in $FFFC, and no ROM is there.", "Correct the reset vector, the size, or the scheme.");

    /// <summary>The reset vector leads to fill.</summary>
    public static readonly FindingRule ResetUncovered = new("CW4497", FindingSeverity.Error, "Reset vector outside every program",
        "The console would run fill bytes.", "Correct the reset vector, or the place of the program.");

    /// <summary>The reset vector leads to what is switched.</summary>
    public static readonly FindingRule ResetSwitched = new("CW4498", FindingSeverity.Warning, "Reset vector into a switched bank",
        "Which bank shows there at power-on is not certain.", "Let the game start in the part that is never switched.");

    /// <summary>No signature, for consoles that ask for one.</summary>
    public static readonly FindingRule NoSignature = new("CW4499", FindingSeverity.Warning, "No signature",
        "At power-on an NTSC console computes a digest of the signed area, compares it with the signature, and stays a 2600 when they differ.",
        "Sign the finished program with a tool for that, and give it here with its signature; on PAL consoles nothing is needed (from memory).");

    /// <summary>No signature, for consoles that do not ask.</summary>
    public static readonly FindingRule NoSignaturePal = new("CW4500", FindingSeverity.Note, "No signature, for PAL consoles only",
        "PAL consoles do not check it (from memory); an NTSC console refuses the cart.", "Nothing, if no NTSC console is to run it.");

    /// <summary>A signature, which is kept.</summary>
    public static readonly FindingRule SignatureCarried = new("CW4501", FindingSeverity.Note, "Signature carried as it is",
        "It is neither made nor checked here. An NTSC console refuses the cart if any byte of the signed area differs from what was signed, fill included.",
        "Sign last: after every patch, and after filling up to the size stated here.");

    /// <summary>The region byte's mark is missing.</summary>
    public static readonly FindingRule RegionMark = new("CW4502", FindingSeverity.Warning, "Region byte without its mark",
        "The high half of the byte at $FFF8 must be 0xF, or an NTSC console refuses the cart.", "Let the program hold 0xFF there.");

    /// <summary>The start-up half of the signed-area byte is unknown.</summary>
    public static readonly FindingRule StartUpLogo = new("CW4503", FindingSeverity.Warning, "Start-up mark not known",
        "The low half of the byte at $FFF9 is 3 or 7; with another an NTSC console may refuse the cart.", "State `startUpLogo`, and sign again.");

    /// <summary>The signed area holds what is switched, or no ROM.</summary>
    public static readonly FindingRule SignedArea = new("CW4504", FindingSeverity.Warning, "Signed area is not all fixed ROM",
        "What the console reads there at power-on is not certain, so that it may refuse the cart.", "State a later page as `signedFrom`, and sign again.");

    /// <summary>A vector leads out of the signed area.</summary>
    public static readonly FindingRule VectorUnsigned = new("CW4505", FindingSeverity.Warning, "Vector outside the signed area",
        "The vectors must lead into the signed area.", "State an earlier page as `signedFrom` and sign again, or move the code.");

    /// <summary>Two things at $4000.</summary>
    public static readonly FindingRule SharedWindow = new("CW4506", FindingSeverity.Warning, "Two things at $4000",
        "Only one of them can answer.", "Take all but one out, or choose another scheme.");

    /// <summary>The ninth bank is last.</summary>
    public static readonly FindingRule ExtraBankLast = new("CW4507", FindingSeverity.Warning, "Ninth bank at the end",
        "The 16 KiB for $4000 come first in the ROM; the console finds its vectors at the end of the last of the eight banks.", "Place the 16 KiB for $4000 at offset 0, and the eight banks behind them.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        ContainerInside, ResetOutside, ResetUncovered, ResetSwitched, NoSignature, NoSignaturePal, SignatureCarried, RegionMark, StartUpLogo,
        SignedArea, VectorUnsigned, SharedWindow, ExtraBankLast,
    ];
}
