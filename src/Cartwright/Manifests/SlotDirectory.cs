using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>The block by which a menu program finds the games.</summary>
/// <param name="At">Where it lies, as a program would be placed.</param>
/// <param name="RecordLength">Bytes of a game's record.</param>
/// <param name="Fields">The fields of a record; bytes of no field are zero.</param>
public sealed record SlotDirectory(ProgramEntry At, int RecordLength, ImmutableArray<SlotField> Fields)
{
    /// <summary>Where in the block the first record begins.</summary>
    public int RecordsAt { get; init; }

    /// <summary>Where in the block a byte tells the number of games; null for no such byte.</summary>
    public int? CountAt { get; init; }

    /// <summary>Value that fills a record behind the last; null for no such record.</summary>
    public byte? End { get; init; }
}
