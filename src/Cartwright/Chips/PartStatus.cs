namespace Cartwright.Chips;

/// <summary>How well a catalogue entry is supported by a source.</summary>
public enum PartStatus
{
    /// <summary>Capacity, layout, ids and times were seen in the source.</summary>
    Verified,

    /// <summary>The listed fields were seen in the source, the others are from memory.</summary>
    PartlyVerified,

    /// <summary>Everything is from memory: check the data sheet.</summary>
    FromMemory,

    /// <summary>No entry of the catalogue: somebody described the part, or the chip itself did.</summary>
    Described,
}
