using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Images;

/// <summary>Cuts a ROM into chip images for the sites of a board.</summary>
/// <param name="board">The board.</param>
/// <param name="settings">The chips the manifest names.</param>
/// <param name="images">Common settings of the chip files.</param>
/// <param name="log">Receives what is wrong.</param>
public sealed class ChipImageBuilder(Board board, BoardSettings settings, ImageSettings images, FindingLog log)
{
    /// <summary>Makes the images.</summary>
    /// <param name="rom">The finished ROM.</param>
    /// <returns>One image a site that holds anything, in the order of the board.</returns>
    public ImmutableArray<ChipImage> Build(Rom rom)
    {
        CheckSites(rom);
        var whole = new JoinedRegions(board, log, Place).Add(rom);
        return [.. board.Sites.Select(site => Build(site, whole[site.Region])).OfType<ChipImage>()];
    }

    private void CheckSites(Rom rom)
    {
        var sites = board.Sites.Select(static site => site.Name).ToList();
        foreach (var chip in settings.Chips.Values.Where(chip => !sites.Contains(chip.Site, StringComparer.OrdinalIgnoreCase)))
        {
            log.Add(BoardFindings.UnknownSite, chip.Place, $"The board {board.Id} has no site `{chip.Site}`.", $"one of {string.Join(", ", sites)}", NearestName.Question(chip.Site, sites));
        }

        foreach (var region in rom.Regions)
        {
            CheckRoom(region);
        }
    }

    private void CheckRoom(RegionImage region)
    {
        var sites = board.Sites.Where(site => string.Equals(site.Region, region.Name, StringComparison.OrdinalIgnoreCase)).ToList();
        var joined = JoinedRegions.Reach(board, region.Name);
        if (sites.Count == 0 && !JoinedRegions.Holds(board, region.Name))
        {
            log.Add(BoardFindings.RegionWithoutSite, Place, $"The board {board.Id} has no site for the region `{region.Name}`, which has {ByteSize.Describe(region.Length)}.");
        }
        else if (Math.Max(joined, LanesOf(board).Min(lane => Reach(sites, lane))) is var room && room < region.Length)
        {
            log.Add(BoardFindings.RomTooLarge, Place,
                $"The region `{region.Name}` has {ByteSize.Describe(region.Length)}, and the board {board.Id} has room for the first {ByteSize.Describe(room)}: {ByteSize.Words(region.Length - room)} too few.");
        }

        if (IsHalfWord(region))
        {
            log.Add(BoardFindings.HalfWord, Place, $"The region `{region.Name}` has {ByteSize.Describe(region.Length)}, and the board {board.Id} has a {board.BusWidth}-bit bus.");
        }
    }

    private bool IsHalfWord(RegionImage region) => region.Length % (board.BusWidth / 8) != 0;

    private static Lane[] LanesOf(Board board) => board.BusWidth == 32 ? [Lane.Low, Lane.High, Lane.Third, Lane.Fourth] : [Lane.Low, Lane.High];

    // Up to where each byte of one lane has a chip: a gap between two slices ends it. Blocks without a gap have no end.
    private static long Reach(List<Site> sites, Lane lane) =>
        sites.Where(site => site.Lane == lane || site.Lane == Lane.Word)
            .GroupBy(static site => site.Every)
            .Select(static alike => Reach(alike) is var reach && reach >= alike.Key ? long.MaxValue : reach)
            .DefaultIfEmpty()
            .Max();

    private static long Reach(IEnumerable<Site> sites)
    {
        var reach = 0L;
        foreach (var site in sites.OrderBy(static site => site.Start))
        {
            reach = site.Start <= reach ? Math.Max(reach, site.End) : reach;
        }

        return reach;
    }

    private SourcePlace Place => settings.Use?.Place ?? settings.Section.Place;

    private ChipImage? Build(Site site, RegionImage? region)
    {
        var chip = settings.Chips.GetValueOrDefault(site.Name);
        var place = chip?.Part?.Place ?? chip?.Place ?? Place;
        if (region is null || site.Start >= region.Length)
        {
            log.Add(BoardFindings.Unused, place, region is null
                ? $"{site.Name} is not used: the cart has no region `{site.Region}`."
                : $"{site.Name} is not used: the region `{site.Region}` ends at {ByteSize.Describe(region.Length)}, and the site begins at {ByteSize.Describe(site.Start)}.");
            return null;
        }

        if (IsHalfWord(region))
        {
            return null;
        }

        var own = site.Slice(region.Bytes);
        if (!SiteSpread.Divides(site, own.Length))
        {
            log.Add(BoardFindings.UnevenBlocks, place, $"{site.Name} has {site.Blocks} blocks, and {ByteSize.Describe(own.Length)} of the region `{site.Region}` do not divide into them.");
            return null;
        }

        var slice = SiteSpread.Of(site, own);
        var needed = slice.Length / site.Stride;
        var (part, capacity) = Capacity(site, chip, needed, place);
        var name = part?.Name ?? chip?.Part?.Text ?? "its chip";
        CheckLines(site, name, needed, capacity, place);
        if (capacity < needed || !new WiringChecks(site, name, chip, log, place).Check(needed, capacity, part))
        {
            return null;
        }

        var order = chip?.WordOrder ?? images.WordOrder;
        var swap = IsSwapped(board, site, order);
        return new ChipImage(site, part, part?.Name ?? chip?.Part?.Text, Arrange(site, slice, capacity, swap), needed, order, board.ByteOrder);
    }

    private void CheckLines(Site site, string chip, int needed, int capacity, SourcePlace place)
    {
        if (site.Largest is not { } largest)
        {
            return;
        }

        if (needed > largest)
        {
            log.Add(BoardFindings.RomTooLarge, place, $"{site.Name} is to hold {ByteSize.Describe(needed)}, and its lines address {ByteSize.Describe(largest)}.");
        }
        else if (capacity > largest)
        {
            log.Add(BoardFindings.LargerThanSite, place, $"{chip} holds {ByteSize.Words(capacity)}, and {site.Name} addresses {ByteSize.Words(largest)}; its file is filled `{BoardReader.Word(site.Fill)}`.");
        }
    }

    private (Part? Part, int Capacity) Capacity(Site site, ChipSettings? chip, int needed, SourcePlace place)
    {
        var fitting = (int)BitOperations.RoundUpToPowerOf2((uint)needed);
        if (chip?.Part is not { } name)
        {
            log.Add(BoardFindings.NoPart, place, $"No part is named for {site.Name}; its file has {ByteSize.Describe(chip?.Capacity ?? fitting)}.");
            return (null, Stated(site, chip?.Capacity, needed, fitting, place));
        }

        if (OwnPart.CapacityOf(chip) is { } own && PartCatalog.BuiltIn.Find(name.Text) is null)
        {
            log.Add(BoardFindings.OwnPart, name.Place, $"{site.Name}: `{name.Text}` is not in the catalogue; its capacity is taken as {ByteSize.Describe(own)}.");
            return (OwnPart.Read(chip, new PartUse(board.BusVolts, site.Width, needed, site.Name), log), Stated(site, own, needed, fitting, name.Place));
        }

        if (PartChecks.Find(name.Text, site.Name, log, name.Place) is not { } part)
        {
            return (null, fitting);
        }

        OwnPart.TellNeedless(chip, part, log);
        PartChecks.Check(part, new PartUse(board.BusVolts, site.Width, needed, site.Name), log, name.Place);
        if (chip.Capacity is { } said && said != part.CapacityBytes)
        {
            log.Add(BoardFindings.BadCapacity, chip.Place, $"{site.Name}: the stated capacity is {ByteSize.Describe(said)}, and the {part.Name} of the catalogue holds {ByteSize.Describe(part.CapacityBytes)}.");
        }

        // A capacity from memory may be wrong: the finding has said so, and the file is made as long as its contents need.
        return (part, (int)Math.Max(part.CapacityBytes, part.Evidence.SawCapacity ? 0 : fitting));
    }

    private int Stated(Site site, long? capacity, int needed, int fitting, SourcePlace place)
    {
        if (capacity is > ByteSize.LargestMemory || (capacity ?? 0) % (site.Width / 8) != 0)
        {
            log.Add(BoardFindings.BadCapacity, place, $"{site.Name}: the stated capacity of {ByteSize.Describe(capacity!.Value)} is not possible.",
                $"at most {ByteSize.Words(ByteSize.LargestMemory)}, and a whole number of {site.Width}-bit words");
            return fitting;
        }

        if (capacity is { } stated && stated < needed)
        {
            log.Add(PartFindings.TooSmall, place, $"{site.Name}: the stated capacity of {ByteSize.Describe(stated)} does not hold {ByteSize.Describe(needed)}.");
            return fitting;
        }

        return (int)(capacity ?? fitting);
    }

    private ReadOnlyMemory<byte> Arrange(Site site, ReadOnlyMemory<byte> slice, int capacity, bool swap)
    {
        // Straight through: the region's own bytes are the chip's.
        if (site.Lane == Lane.Word && !swap && site.DataLines is null && site.AddressLines.IsEmpty && capacity == slice.Length)
        {
            return slice;
        }

        var needed = slice.Length / site.Stride;
        var chip = GC.AllocateUninitializedArray<byte>(capacity);
        var content = site.Fill == ChipFill.Top ? chip.AsSpan(capacity - needed) : chip.AsSpan(0, needed);
        if (site.Lane != Lane.Word)
        {
            Lanes.Split(slice.Span, board.ByteOf(site.Lane), site.Stride, content);
        }
        else if (swap)
        {
            WordSwap.Swap16(slice.Span, content);
        }
        else
        {
            slice.Span.CopyTo(content);
        }

        if (site.DataLines is { } data)
        {
            new DataLineMap(data).Apply(content, HasLowByteFirst(board, swap));
        }

        return Lay(site, chip, content.Length, site.Fill == ChipFill.Top ? capacity - needed : 0);
    }

    private static byte[] Lay(Site site, byte[] chip, int needed, int start)
    {
        if (!site.Ties.IsEmpty)
        {
            LayByTies(site, chip, chip.AsSpan(start, needed).ToArray());
        }
        else
        {
            FillUp(site.Fill, chip, needed);
        }

        if (site.AddressLines.IsEmpty)
        {
            return chip;
        }

        var wired = GC.AllocateUninitializedArray<byte>(chip.Length);
        new AddressLineMap(new SiteLines(site, chip.Length).Order).Apply(chip, site.Width / 8, wired);
        return wired;
    }

    private static void LayByTies(Site site, byte[] chip, byte[] content)
    {
        chip.AsSpan().Fill(Blank.Erased);
        foreach (var place in new SiteLines(site, chip.Length).Starts(content.Length))
        {
            content.CopyTo(chip, place);
        }
    }

    private static void FillUp(ChipFill fill, byte[] chip, int needed)
    {
        switch (fill)
        {
            case ChipFill.Repeat:
                Mirror.Fill(chip.AsSpan(0, needed), chip);
                break;
            case ChipFill.Top:
                chip.AsSpan(0, chip.Length - needed).Fill(Blank.Erased);
                break;
            default:
                chip.AsSpan(needed).Fill(Blank.Erased);
                break;
        }
    }

    /// <summary>Whether the two bytes of each word change places on their way into a chip file.</summary>
    internal static bool IsSwapped(Board board, Site site, WordOrder order) =>
        site.Width == 16 && order == WordOrder.Programmer && board.ByteOrder == ByteOrder.BigEndian;

    /// <summary>Whether the byte of D0-D7 stands first in a chip file of 16-bit words.</summary>
    internal static bool HasLowByteFirst(Board board, bool isSwapped) => isSwapped || board.ByteOrder == ByteOrder.LittleEndian;
}
