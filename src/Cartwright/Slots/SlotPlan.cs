using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Slots;

/// <summary>Where the games of a multi-game image lie, and what its switches show.</summary>
/// <param name="Slots">The slots in the order of the games, those of one game together.</param>
/// <param name="Switches">The lines that switches drive.</param>
/// <param name="Positions">Every position of the switches, all of them open first; empty without switches.</param>
/// <param name="HasMenu">True when programs of the cart's own choose the game; then the image has a header of its own.</param>
public sealed record SlotPlan(ImmutableArray<PlacedSlot> Slots, ImmutableArray<SlotSwitch> Switches, ImmutableArray<SwitchPosition> Positions, bool HasMenu)
{
    /// <summary>Bytes of slots that no game uses.</summary>
    public long Unused => Slots.Sum(static slot => slot.Unused);

    /// <summary>Bytes of all slots.</summary>
    public long Size => Slots.Sum(static slot => slot.Size);
}
