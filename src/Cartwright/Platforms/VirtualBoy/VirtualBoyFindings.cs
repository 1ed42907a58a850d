using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>What can be wrong with a Virtual Boy ROM besides the fields themselves.</summary>
public static class VirtualBoyFindings
{
    /// <summary>The processor's first code is blank.</summary>
    public static readonly FindingRule NoReset = new("CW4320", FindingSeverity.Error, "No reset code",
        "The processor starts at the last 16 bytes of the ROM, and nothing is there.", "State `reset` as the program's address, such as $07000000, or place the handlers at the end.");

    /// <summary>An address where code must be.</summary>
    public static readonly FindingRule AddressForCode = new("CW4321", FindingSeverity.Error, "Address instead of code",
        "The slots at the end hold 16 bytes of code each, not addresses.", "State the field as the address: the code that jumps there is written for you.");

    /// <summary>The reset code jumps where no program is.</summary>
    public static readonly FindingRule ResetNowhere = new("CW4322", FindingSeverity.Error, "Reset code jumps nowhere",
        "The console starts with whatever is there. An address whose lower half is above $7FFF needs one more in its upper half, or the jump misses by 64 KiB.",
        "State `reset` as the program's address.");

    /// <summary>Reset code of another form.</summary>
    public static readonly FindingRule OtherReset = new("CW4323", FindingSeverity.Note, "Reset code of another form",
        "It is no plain jump, so where it goes cannot be checked.", "Nothing, if it is meant.");

    /// <summary>A handler jumps where no program is.</summary>
    public static readonly FindingRule HandlerNowhere = new("CW4324", FindingSeverity.Warning, "Handler jumps nowhere",
        "When it is needed, the processor runs whatever is there.", "State the field as the address of its code, or as `none`.");

    /// <summary>A return with its bytes exchanged.</summary>
    public static readonly FindingRule SwappedReturn = new("CW4325", FindingSeverity.Warning, "Return from interrupt with its bytes exchanged",
        "64 00 is a harmless move, so the processor runs on through the next slots; the return is 00 64 (from memory).", "State the field as `return` or `none`.");

    /// <summary>A program that ends with header and handlers, not at the end of the ROM.</summary>
    public static readonly FindingRule TailBeforeEnd = new("CW4326", FindingSeverity.Error, "Header and handlers are not at the end",
        "The ROM has a power of two of bytes, and its last 544 are header and handlers; what fills it up belongs in front of them.",
        "Name the program twice: with `length` for all but its last 544 bytes, and with `skip` for these and `\"as\": \"tail\"`.");

    /// <summary>A header at the start.</summary>
    public static readonly FindingRule HeaderAtStart = new("CW4327", FindingSeverity.Warning, "Looks like a header at the start",
        "This console's header lies before the end of the ROM; nothing reads one at the start.", "Leave it out, and state its fields in the manifest.");

    /// <summary>Reserved bytes in use.</summary>
    public static readonly FindingRule ReservedUsed = new("CW4328", FindingSeverity.Warning, "Reserved bytes in use",
        "A title longer than 20 bytes runs into them, and on into the publisher's letters.", "State a shorter `title`, and `reserved` as 0000000000.");

    /// <summary>Nothing tells the game.</summary>
    public static readonly FindingRule Unnamed = new("CW4329", FindingSeverity.Note, "Header not filled in",
        "No console reads it; readers of images show it.", "State `makerCode` and `gameCode`, and give the cart a `title`.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoReset, AddressForCode, ResetNowhere, OtherReset, HandlerNowhere, SwappedReturn, TailBeforeEnd, HeaderAtStart, ReservedUsed, Unnamed];
}
