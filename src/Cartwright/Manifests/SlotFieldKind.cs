namespace Cartwright.Manifests;

/// <summary>What a field of a slot's directory record holds.</summary>
public enum SlotFieldKind
{
    /// <summary>The number of the slot, from 0.</summary>
    Index,

    /// <summary>Where the slot begins in a region.</summary>
    Start,

    /// <summary>Bytes of the slot.</summary>
    Size,

    /// <summary>Bytes of the game.</summary>
    Length,

    /// <summary>The title.</summary>
    Title,

    /// <summary>A number the manifest states for each game.</summary>
    Value,
}
