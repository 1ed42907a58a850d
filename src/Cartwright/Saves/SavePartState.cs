namespace Cartwright.Saves;

/// <summary>How a save, or a slot of it, was found.</summary>
public enum SavePartState
{
    /// <summary>Everything described is right.</summary>
    Whole,

    /// <summary>All bytes are 0xFF, or all are 0x00: nothing has been saved yet.</summary>
    New,

    /// <summary>The signature is not there.</summary>
    NoSignature,

    /// <summary>A version this release of the game does not know.</summary>
    UnknownVersion,

    /// <summary>The signature is there and the check value is wrong.</summary>
    HalfWritten,

    /// <summary>The save is too short for it.</summary>
    Outside,
}
