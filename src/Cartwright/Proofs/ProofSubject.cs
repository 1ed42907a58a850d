using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Chips;
using Cartwright.Manifests;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>The contents of one chip that read-backs are held against.</summary>
/// <param name="Site">The chip's name on the board: <c>U1</c>.</param>
/// <param name="Expected">The bytes it should hold, in the order of the read-backs.</param>
/// <param name="Shape">Width of the chip and order of the bytes of a word.</param>
public sealed record ProofSubject(string Site, byte[] Expected, WordShape Shape)
{
    /// <summary>The part; null when it is not known.</summary>
    public Part? Part { get; init; }

    /// <summary>The part's package, when the user names one; null for all the part comes in.</summary>
    public string? Package { get; init; }

    /// <summary>What its lines are called on the chip and on the bus.</summary>
    public LineNames Lines { get; init; } = LineNames.OfLooseChip;

    /// <summary>True when it is read through the board, false when the chip is read by itself.</summary>
    public bool IsThroughBoard { get; init; }

    /// <summary>Bytes that are right whatever they are: serial numbers and what depends on them.</summary>
    public ImmutableArray<ByteRange> MayDiffer { get; init; } = [];

    /// <summary>Images of the build's other sites.</summary>
    public ImmutableArray<NamedImage> OtherSites { get; init; } = [];

    /// <summary>Bytes of a bank; 0 where not known.</summary>
    public int BankSize { get; init; }

    /// <summary>The erase sectors; empty where they are not known, or the chip is read through the board.</summary>
    public ImmutableArray<SectorGroup> Sectors { get; init; } = [];

    /// <summary>The part, the size, the width: <c>SST39SF040, 512 KiB, 8 bit</c>.</summary>
    public string Description => string.Create(CultureInfo.InvariantCulture, $"{(Part is null ? "" : Part.Name + ", ")}{ByteSize.Words(Expected.Length)}, {Shape.Width} bit");

    /// <summary>The pins that carry a line, one for each package the part comes in; empty where no pin-out is known.</summary>
    /// <param name="line">The line as a verdict names it.</param>
    public ImmutableArray<LinePin> PinsOf(string line)
    {
        var chip = Lines.Of(line).Chip;
        var number = int.Parse(chip.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture);
        var pins = ImmutableArray.CreateBuilder<LinePin>();
        foreach (var pinOut in PinOuts())
        {
            if ((chip[0] == 'D' ? pinOut.PinOfData(number) : pinOut.PinOfAddress(number, Shape.Width)) is { } pin)
            {
                pins.Add(new LinePin(pinOut, chip, pin));
            }
        }

        return pins.ToImmutable();
    }

    private ImmutableArray<PinOut> PinOuts() => Part is null ? []
        : Package is null ? PinOutCatalog.BuiltIn.Of(Part)
        : PinOutCatalog.BuiltIn.Find(Part, Package) is { } one ? [one] : [];
}
