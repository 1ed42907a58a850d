using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;

namespace Cartwright;

/// <summary>What came of writing a build.</summary>
/// <param name="Files">The files with their digests, the record last.</param>
/// <param name="Findings">Whatever went wrong.</param>
public sealed record CartOutputResult(ImmutableArray<WrittenFile> Files, ImmutableArray<Finding> Findings)
{
    /// <summary>True when the folder held all of it already, the record among it, so that nothing was written.</summary>
    public bool WasThere { get; init; }

    /// <summary>What changes on chips whose image of the build before was in the folder; empty for a first build.</summary>
    public ImmutableArray<ChipRewrite> Rewrites { get; init; } = [];
}
