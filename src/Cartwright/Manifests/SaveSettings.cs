namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>save</c> says of the save's own structure.</summary>
/// <param name="Whole">What stands at fixed places of the save.</param>
/// <param name="Slots">Its slots; null when it has none.</param>
public sealed record SaveSettings(SaveBlock Whole, SaveSlots? Slots)
{
    /// <summary>Nothing said.</summary>
    public static SaveSettings None { get; } = new(new SaveBlock(null, null, null, null), null);

    /// <summary>True when nothing of the save can be checked.</summary>
    public bool SaysNothing => Whole.SaysNothing && Slots is null;
}
