using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Production;

/// <summary>A production run that is asked for.</summary>
/// <param name="Folder">The folder for the units' files and the ledger.</param>
/// <param name="Place">Where the folder was named.</param>
/// <param name="Units">The units, in the order they are made.</param>
public sealed record RunRequest(string Folder, SourcePlace Place, ImmutableArray<RunUnit> Units)
{
    /// <summary>True to write the common chip files once, and of each unit only the sectors that differ from them.</summary>
    public bool OnlySectors { get; init; }
}
