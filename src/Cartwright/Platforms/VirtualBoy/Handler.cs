using System.Collections.Immutable;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>A slot of 16 bytes of code that the processor goes to by itself ("Sacred Tech Scroll", Virtual Boy hardware documentation).</summary>
/// <param name="Name">The field's name.</param>
/// <param name="FromEnd">Its first byte, counted back from the ROM's end.</param>
/// <param name="When">When it runs.</param>
internal sealed record Handler(string Name, int FromEnd, string When)
{
    /// <summary>The slot the processor starts at.</summary>
    public static Handler Reset { get; } = new("reset", 0x10, "after power-on and reset");

    /// <summary>All but the one for reset.</summary>
    public static ImmutableArray<Handler> Others { get; } =
    [
        new("gamePad", 0x200, "when a button is pressed"),
        new("timer", 0x1F0, "when the timer runs out"),
        new("gamePak", 0x1E0, "when the cartridge asks for it"),
        new("communication", 0x1D0, "when the link has news"),
        new("video", 0x1C0, "when the picture processor has news"),
        new("floatingPoint", 0xA0, "after a floating-point exception"),
        new("zeroDivision", 0x80, "after a division by zero"),
        new("illegalOpcode", 0x70, "after an instruction that is none"),
        new("trapLow", 0x60, "at TRAP 0 to 15"),
        new("trapHigh", 0x50, "at TRAP 16 to 31"),
        new("addressTrap", 0x40, "at the address trap"),
        new("duplexedException", 0x30, "after an exception inside another"),
        new("unused20", 0x20, "never"),
    ];
}
