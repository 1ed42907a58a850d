using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Slots;

namespace Cartwright;

/// <summary>What came of a build. Nothing of it is on the disk until <see cref="CartOutput.Write(CartBuild, bool)"/>.</summary>
/// <param name="Findings">Everything the build had to say, in order of place.</param>
public sealed record CartBuild(ImmutableArray<Finding> Findings)
{
    /// <summary>The manifest; null when it could not be read.</summary>
    public CartManifest? Manifest { get; init; }

    /// <summary>The platform; null when it is not known.</summary>
    public Platform? Platform { get; init; }

    /// <summary>The finished ROM with its headers; null when it could not be made.</summary>
    public CartView? Cart { get; init; }

    /// <summary>Where the games of a multi-game image lie; null for a cart of one.</summary>
    public SlotPlan? Slots { get; init; }

    /// <summary>The board; null when there is none.</summary>
    public Board? Board { get; init; }

    /// <summary>The chip images in the order of the board's sites.</summary>
    public ImmutableArray<ChipImage> Chips { get; init; } = [];

    /// <summary>The manifest and the programs.</summary>
    public ImmutableArray<BuildInput> Inputs { get; init; } = [];

    /// <summary>The files to put out, without the record.</summary>
    public ImmutableArray<OutputFile> Files { get; init; } = [];

    /// <summary>Where the files go.</summary>
    public string OutputFolder { get; init; } = "";

    /// <summary>Where the output folder was named.</summary>
    public SourcePlace OutputPlace { get; init; }

    /// <summary>What was laid over the manifest, by key.</summary>
    public ImmutableSortedDictionary<string, string> Settings { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>True when any finding is an error; then there are no files to write.</summary>
    public bool HasErrors => Findings.Any(static finding => finding.Severity == FindingSeverity.Error);
}
