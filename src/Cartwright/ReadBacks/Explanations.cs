using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>What a search has left: explanations of every word, and what comes near.</summary>
/// <param name="Same">Explanations that leave the same read-back whatever the image holds, in the order of naming.</param>
/// <param name="Others">Explanations that leave it only with this image; then nothing is named.</param>
/// <param name="Near">The best of those that do not explain every word, the nearest first.</param>
internal sealed record Explanations(ImmutableArray<Hypothesis> Same, ImmutableArray<Hypothesis> Others, ImmutableArray<Hypothesis> Near)
{
    /// <summary>True when one explanation, with its look-alikes, is the only one.</summary>
    public bool IsOne => !Same.IsEmpty && Others.IsEmpty;
}
