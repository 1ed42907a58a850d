using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.ReadBacks;
using Cartwright.Roms;

namespace Cartwright.TestImages;

/// <summary>Lays test images onto the chips of a board.</summary>
/// <param name="board">The board.</param>
/// <param name="chips">The parts that are fitted.</param>
/// <param name="order">Order of the two bytes of a word in files of 16-bit chips.</param>
/// <param name="log">Receives what is wrong.</param>
public sealed class TestImageBuilder(Board board, BoardSettings chips, WordOrder order, FindingLog log)
{
    /// <summary>Smallest region or chip a test image is made for, in bytes.</summary>
    public const int Smallest = 2 << 10;

    /// <summary>Largest region or chip, in bytes.</summary>
    public const int Largest = 64 << 20;

    // A chip that shares a small region with another.
    private const int SmallestChip = 1 << 10;

    private const int SmallestBank = 256;

    private SourcePlace Place => chips.Use?.Place ?? default;

    /// <summary>Makes a test image.</summary>
    /// <param name="kind">A kind that is made from nothing.</param>
    /// <param name="settings">What was chosen.</param>
    /// <param name="sizes">Length in bytes of each region of the board.</param>
    /// <returns>The images; null when there is a finding that says why not.</returns>
    public TestImageSet? Make(TestImageKind kind, TestImageSettings settings, ImmutableSortedDictionary<string, long> sizes)
    {
        foreach (var (region, size) in sizes)
        {
            CheckSize(kind, settings, region, size);
        }

        if (log.HasErrors)
        {
            return null;
        }

        var regions = sizes.Select(row => Region(row.Key, kind.OfRegion?.Invoke(new RegionTarget(row.Key, (int)row.Value, board.BusWidth, board.ByteOrder, settings.BankSize)) ?? Erased((int)row.Value)));
        return Lay(kind, settings, [.. regions]);
    }

    /// <summary>Lays an existing image that was filled onto the chips.</summary>
    /// <param name="rom">The image.</param>
    /// <param name="settings">What was chosen.</param>
    /// <param name="filled">The stretches that were filled.</param>
    /// <returns>The images; null when there is a finding that says why not.</returns>
    public TestImageSet? Lay(Rom rom, TestImageSettings settings, ImmutableArray<FilledStretch> filled) =>
        Lay(TestImageKinds.Fill, settings, rom.Regions) is { } set ? set with { Filled = filled } : null;

    private TestImageSet? Lay(TestImageKind kind, TestImageSettings settings, ImmutableArray<RegionImage> regions)
    {
        var own = new FindingLog();
        var images = new ChipImageBuilder(board, chips, new ImageSettings("", Place, [ImageFormat.Raw], order), own).Build(new Rom(regions));
        // What is fitted is known at the bench; a part need not be named to test its lines.
        log.AddAll(own.ToSorted().Where(static finding => finding.Code != BoardFindings.NoPart.Code));

        foreach (var chip in images.Where(static chip => chip.Capacity is < SmallestChip or > Largest || !BitOperations.IsPow2(chip.Capacity)))
        {
            log.Add(TestImageFindings.BadSize, Place, $"The chip at {chip.Site.Name} would have {ByteSize.Describe(chip.Capacity)}.", $"a power of two from {ByteSize.Words(SmallestChip)} to {ByteSize.Words(Largest)}");
        }

        return log.HasErrors ? null
            : kind.OfChip is { } make ? PutTogether(kind, settings, [.. images.Select(chip => chip with { Bytes = make(Target(chip, settings)) })], regions)
            : new TestImageSet(kind, settings, board, images, regions);
    }

    private TestImageSet PutTogether(TestImageKind kind, TestImageSettings settings, ImmutableArray<ChipImage> images, ImmutableArray<RegionImage> regions)
    {
        var merger = new ChipMerger(board);
        var whole = regions.Select(static region => region.Bytes.ToArray()).ToImmutableArray();
        foreach (var chip in images)
        {
            var index = regions.Select(static region => region.Name).ToList().FindIndex(name => string.Equals(name, chip.Site.Region, StringComparison.OrdinalIgnoreCase));
            merger.PutBack(chip.Site, chip.Bytes.Span, chip.WordOrder, whole[index]);
        }

        return new TestImageSet(kind, settings, board, images, [.. regions.Zip(whole, static (region, bytes) => Region(region.Name, bytes))]);
    }

    private ChipTarget Target(ChipImage chip, TestImageSettings settings) =>
        new(chip.Site.Name, chip.Capacity, ShapeOf(chip), TestImageSet.SeedOf(board, settings, chip.Site));

    private static WordShape ShapeOf(ChipImage chip) =>
        new(chip.Site.Width, HighFirst: chip.Site.Width == 16 && chip.WordOrder == WordOrder.Bus && chip.BusOrder == ByteOrder.BigEndian);

    private static RegionImage Region(string name, byte[] bytes) => new(name, bytes, Blank.Erased, []);

    private static byte[] Erased(int size)
    {
        var bytes = new byte[size];
        bytes.AsSpan().Fill(Blank.Erased);
        return bytes;
    }

    private void CheckSize(TestImageKind kind, TestImageSettings settings, string region, long size)
    {
        if (size is < Smallest or > Largest || !BitOperations.IsPow2(size))
        {
            log.Add(TestImageFindings.BadSize, Place, $"A size of {ByteSize.Describe(size)} for the region `{region}` is not possible.", "a power of two from 2 KiB to 64 MiB");
        }
        else if (kind.HasBanks && (!BitOperations.IsPow2(settings.BankSize) || settings.BankSize < SmallestBank || settings.BankSize > size || size / settings.BankSize > BankTag.MostBanks))
        {
            log.Add(TestImageFindings.BadBankSize, Place, $"Banks of {ByteSize.Describe(settings.BankSize)} do not fit the region `{region}` of {ByteSize.Describe(size)}.",
                $"a power of two from {ByteSize.Words(Math.Max(SmallestBank, size / BankTag.MostBanks))} to {ByteSize.Words(size)}");
        }
    }
}
