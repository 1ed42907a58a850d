using Cake.Core.IO;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cake;

/// <summary>What is known of read-backs that are to be proved.</summary>
public sealed record ProveSettings
{
    /// <summary>Id of the board, where the expected file is a whole ROM.</summary>
    public string? Board { get; init; }

    /// <summary>The chip that was read by itself; null to take what fits.</summary>
    public string? Site { get; init; }

    /// <summary>True when the reads are of the whole cartridge, whatever their length.</summary>
    public bool IsCartridge { get; init; }

    /// <summary>The region that was read, where the cartridge has several.</summary>
    public string? Region { get; init; }

    /// <summary>The part; null for what the record says.</summary>
    public string? Part { get; init; }

    /// <summary>Data lines of the chip, 8 or 16; null for what the record or the part says.</summary>
    public int? Width { get; init; }

    /// <summary>Order of the two bytes of a word in files of 16-bit chips; null for what the record says, or the bus's.</summary>
    public WordOrder? WordOrder { get; init; }

    /// <summary>How the chip was written.</summary>
    public WritingWorld World { get; init; }

    /// <summary>The insertion each read was made in, in their order; empty for one.</summary>
    public IReadOnlyList<int> Insertions { get; init; } = [];

    /// <summary>What the chip held before; null when not known.</summary>
    public FilePath? Old { get; init; }

    /// <summary>Chip images of other releases.</summary>
    public IReadOnlyCollection<FilePath> Releases { get; init; } = [];

    /// <summary>Bytes of the read-back that may differ.</summary>
    public IReadOnlyCollection<ByteRange> MayDiffer { get; init; } = [];

    /// <summary>False to give a report of reads that differ too, in place of failing the task.</summary>
    public bool FailOnDifference { get; init; } = true;
}
