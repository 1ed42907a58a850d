using System.Collections.Immutable;

namespace Cartwright.Platforms.GameBoy;

/// <summary>The chip of a cartridge that shows its banks.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Notes">What to mind when laying out a ROM for it.</param>
/// <param name="Limits">What it can show, the usual combination first; empty when the board or no source says.</param>
public sealed record BankController(string Name, string Notes, ImmutableArray<ControllerLimit> Limits)
{
    /// <summary>True when the limits are from memory only, so that no error may rest on them.</summary>
    public bool FromMemory { get; init; }

    /// <summary>True for the controllers to name to somebody who needs one.</summary>
    public bool Suggested { get; init; }

    /// <summary>True when the speed of the colour model's double-speed mode is not guaranteed.</summary>
    public bool SingleSpeed { get; init; }
}
