using System.Collections.Immutable;

namespace Cartwright.Proofs;

/// <summary>What a read of the whole cartridge must give of one region.</summary>
/// <param name="Name">The region.</param>
/// <param name="Bytes">Its bytes in the order of the bus.</param>
public sealed record ExpectedRegion(string Name, byte[] Bytes)
{
    /// <summary>Bytes that differ from unit to unit.</summary>
    public ImmutableArray<ByteRange> MayDiffer { get; init; } = [];

    /// <summary>Bytes of a bank; 0 where not known.</summary>
    public int BankSize { get; init; }
}
