namespace Cartwright.ReadBacks;

/// <summary>What one search is about: an image, a read-back of the same size, and what is known around them.</summary>
/// <param name="Expected">The image.</param>
/// <param name="Read">The words that were read.</param>
/// <param name="Tolerance">Words that may be wrong by measured noise; 0 where reads are stable.</param>
/// <param name="Request">What else is known.</param>
/// <param name="Cancel">Ends the search.</param>
internal sealed record ProofCase(WordImage Expected, ushort[] Read, int Tolerance, ProofRequest Request, CancellationToken Cancel)
{
    public WritingWorld World => Request.World;

    /// <summary>Of noisy reads, how many of their bits are not as an explanation has them; null where reads are stable.</summary>
    public Func<ushort[], long>? Misfit { get; init; }

    /// <summary>By how many bits an explanation of noisy reads must fit worse than the best before it is out.</summary>
    public long LeastMargin { get; init; }

    /// <summary>The read-back as bytes of a file.</summary>
    public byte[] ReadBytes { get; } = WordImage.ToBytes(Read, Expected.Shape);
}
