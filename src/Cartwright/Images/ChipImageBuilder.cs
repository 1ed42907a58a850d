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
    // What a blank cell of flash and EPROM reads.
    private const byte ErasedValue = 0xFF;

    // Far above any chip with address lines of its own; the whole image is made in memory.
    private const long LargestChip = 256 << 20;

    /// <summary>Makes the images.</summary>
    /// <param name="rom">The finished ROM.</param>
    /// <returns>One image a site that holds anything, in the order of the board.</returns>
    public ImmutableArray<ChipImage> Build(Rom rom)
    {
        CheckSites(rom);
        return [.. board.Sites.Select(site => Build(site, rom[site.Region])).OfType<ChipImage>()];
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
        if (sites.Count == 0)
        {
            log.Add(BoardFindings.RegionWithoutSite, Place, $"The board {board.Id} has no site for the region `{region.Name}`, which has {ByteSize.Describe(region.Length)}.");
        }
        else if (sites.Max(static site => site.End) is var room && room < region.Length)
        {
            log.Add(BoardFindings.RomTooLarge, Place,
                $"The region `{region.Name}` has {ByteSize.Describe(region.Length)}, and the board {board.Id} has room for {ByteSize.Describe(room)}: {ByteSize.Words(region.Length - room)} too few.");
        }
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

        var slice = region.Bytes[(int)site.Start..(int)Math.Min(site.End, region.Length)];
        var needed = slice.Length / site.Stride;
        var (part, capacity) = Capacity(site, chip, needed, place);
        if (capacity < needed)
        {
            return null;
        }

        var order = chip?.WordOrder ?? images.WordOrder;
        var swap = site.Width == 16 && order == WordOrder.Programmer && board.ByteOrder == ByteOrder.BigEndian;
        return new ChipImage(site, part, part?.Name ?? chip?.Part?.Text, Arrange(site, slice, capacity, swap), needed, order, board.ByteOrder);
    }

    private (Part? Part, int Capacity) Capacity(Site site, ChipSettings? chip, int needed, SourcePlace place)
    {
        var fitting = (int)BitOperations.RoundUpToPowerOf2((uint)needed);
        if (chip?.Part is not { } name)
        {
            log.Add(BoardFindings.NoPart, place, $"No part is named for {site.Name}; its file has {ByteSize.Describe(chip?.Capacity ?? fitting)}.");
            return (null, Stated(site, chip?.Capacity, needed, fitting, place));
        }

        if (chip.Capacity is { } own && PartCatalog.BuiltIn.Find(name.Text) is null)
        {
            log.Add(BoardFindings.OwnPart, name.Place, $"{site.Name}: `{name.Text}` is not in the catalogue; its capacity is taken as {ByteSize.Describe(own)}.");
            return (null, Stated(site, own, needed, fitting, name.Place));
        }

        if (PartChecks.Find(name.Text, site.Name, log, name.Place) is not { } part)
        {
            return (null, fitting);
        }

        PartChecks.Check(part, new PartUse(board.BusVolts, site.Width, needed, site.Name), log, name.Place);
        if (site.Largest is { } largest && part.CapacityBytes > largest)
        {
            log.Add(BoardFindings.LargerThanSite, name.Place, $"{part.Name} holds {ByteSize.Words(part.CapacityBytes)}, and {site.Name} addresses {ByteSize.Words(largest)}; its file is filled `{BoardReader.Word(site.Fill)}`.");
        }

        if (chip.Capacity is { } stated && stated != part.CapacityBytes)
        {
            if (!part.Evidence.SawCapacity)
            {
                return (part, Stated(site, stated, needed, fitting, name.Place));
            }

            log.Add(ManifestFindings.BadValue, chip.Place, $"{site.Name}: the capacity is stated as {ByteSize.Describe(stated)}, and {part.Name} holds {ByteSize.Describe(part.CapacityBytes)}.",
                remedy: "Take `capacity` out, or name the part that is fitted.");
        }

        // A capacity from memory may be wrong: the finding has said so, and the file is made as long as its contents need.
        return (part, (int)Math.Max(part.CapacityBytes, part.Evidence.SawCapacity ? 0 : fitting));
    }

    private int Stated(Site site, long? capacity, int needed, int fitting, SourcePlace place)
    {
        if (capacity is { } odd && (odd > LargestChip || odd % (site.Width / 8) != 0))
        {
            log.Add(ManifestFindings.BadValue, place, $"{site.Name}: no chip of {site.Width} data lines has {ByteSize.Describe(odd)}.", $"whole words, at most {ByteSize.Describe(LargestChip)}",
                "State the capacity the data sheet gives, in bytes.");
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
        if (site.Lane == Lane.Word && !swap && capacity == slice.Length)
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

        switch (site.Fill)
        {
            case ChipFill.Repeat:
                Mirror.Fill(content, chip);
                break;
            case ChipFill.Top:
                chip.AsSpan(0, capacity - needed).Fill(ErasedValue);
                break;
            default:
                chip.AsSpan(needed).Fill(ErasedValue);
                break;
        }

        return chip;
    }
}
