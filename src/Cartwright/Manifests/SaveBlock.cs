namespace Cartwright.Manifests;

/// <summary>What a save, or each of its slots, holds at fixed places.</summary>
/// <param name="Signature">The bytes by which the game knows it; null when not said.</param>
/// <param name="Version">The version of its form; null when not said.</param>
/// <param name="HighestVersion">The highest version this release of the game reads; null when not said.</param>
/// <param name="Check">Its check value; null when not said.</param>
public sealed record SaveBlock(SaveSignature? Signature, SaveNumber? Version, long? HighestVersion, SaveCheckValue? Check)
{
    /// <summary>True when nothing of it can be checked.</summary>
    public bool SaysNothing => Signature is null && Version is null && Check is null;
}
