using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright;

/// <summary>What is to be proved, and what the user knows around it.</summary>
/// <param name="Expected">A chip file, a build's record, a manifest, or with <see cref="Board"/> a whole ROM.</param>
/// <param name="Reads">The read-backs, in the order they were made.</param>
public sealed record ProofTask(string Expected, ImmutableArray<ProofRead> Reads)
{
    /// <summary>Values laid over a manifest.</summary>
    public ManifestOverrides Overrides { get; init; } = ManifestOverrides.None;

    /// <summary>Id of the board that a whole ROM is for; null where the expected file is no ROM.</summary>
    public string? Board { get; init; }

    /// <summary>Id of the ROM's platform; null to find it out.</summary>
    public string? Platform { get; init; }

    /// <summary>The chip that was read by itself; null to take what fits.</summary>
    public string? Site { get; init; }

    /// <summary>True when the reads are of the whole cartridge, whatever their length.</summary>
    public bool IsCartridge { get; init; }

    /// <summary>The region that was read; null for the one that fits.</summary>
    public string? Region { get; init; }

    /// <summary>Data lines of the chip, 8 or 16; null for what the record or the part says.</summary>
    public int? Width { get; init; }

    /// <summary>Order of the two bytes of a word in files of 16-bit chips; null for what the record says, or the bus's.</summary>
    public WordOrder? WordOrder { get; init; }

    /// <summary>The part; null for what the record says.</summary>
    public string? Part { get; init; }

    /// <summary>The part's package; null for all it comes in.</summary>
    public string? Package { get; init; }

    /// <summary>How the chip was written.</summary>
    public WritingWorld World { get; init; }

    /// <summary>A file with what the chip held before; null when not known.</summary>
    public string? Old { get; init; }

    /// <summary>Files with images of other sites.</summary>
    public ImmutableArray<string> OtherSites { get; init; } = [];

    /// <summary>Files with images of other releases.</summary>
    public ImmutableArray<string> Releases { get; init; } = [];

    /// <summary>Files with images of other chips on the bus.</summary>
    public ImmutableArray<string> OtherChips { get; init; } = [];

    /// <summary>Bytes of the read-back that may differ.</summary>
    public ImmutableArray<ByteRange> MayDiffer { get; init; } = [];

    /// <summary>Bytes of a bank; 0 for what the build says.</summary>
    public int BankSize { get; init; }
}
