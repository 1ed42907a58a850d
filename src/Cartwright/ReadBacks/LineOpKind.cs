namespace Cartwright.ReadBacks;

/// <summary>What a fault does to the bits of an address or a word.</summary>
internal enum LineOpKind
{
    StuckLow,
    StuckHigh,
    Inverted,
    ShortedLow,
    ShortedHigh,
    Swapped,
    Permuted,
    Follows,
    FollowsAddress,
    BridgedLow,
    BridgedHigh,
}
