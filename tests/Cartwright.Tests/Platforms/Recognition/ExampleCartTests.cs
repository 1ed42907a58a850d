using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>What must hold of a finished cart of every platform, tried on the examples.</summary>
public sealed class ExampleCartTests
{
    public static TheoryData<string> Examples => [.. ExampleCart.All.Keys];

    public static TheoryData<string> WithChips => [.. ExampleCart.All.Values.Where(cart => !cart.Build.Chips.IsEmpty).Select(cart => cart.Name)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_builds_without_errors(string name) =>
        Assert.Empty(ExampleCart.All[name].Build.Findings.Where(finding => finding.Severity == FindingSeverity.Error).Select(FindingText.Line));

    [Theory]
    [MemberData(nameof(WithChips))]
    public void The_chips_back_through_the_board_give_the_ROM(string name)
    {
        var build = ExampleCart.All[name].Build;
        foreach (var region in build.Cart!.Rom.Regions)
        {
            var back = new byte?[region.Length];
            foreach (var chip in build.Chips.Where(chip => chip.Site.Region == region.Name))
                PutBack(build.Board!, chip, back);

            Assert.DoesNotContain(null, back);
            Assert.Equal(region.Bytes.ToArray(), back.Select(value => value!.Value));
        }
    }

    // Every bit that a row or a checksum owns is taken out of the ROM; the texts that were read must put it back.
    [Theory]
    [MemberData(nameof(Examples))]
    public void A_header_read_is_the_header_written(string name)
    {
        var cart = ExampleCart.All[name];
        var read = ReadHeaders(cart.Cart);
        var programs = cart.Cart.Rom.Regions.ToDictionary(region => region.Name, region => region.Bytes.ToArray());
        foreach (var header in read.Where(header => header.Table.Region is not null))
            HeaderEraser.TakeOut(header, programs[header.Table.Region!], ImmutableSortedSet<string>.Empty);

        var texts = read.SelectMany(header => header.Entries).DistinctBy(entry => entry.Field.Name)
            .ToImmutableSortedDictionary(entry => entry.Field.Name, entry => new ManifestValue(entry.Text, SourcePlace.None), StringComparer.OrdinalIgnoreCase);
        AssertSame(cart.Cart, Assemble(cart, programs, HeaderKeep.Unsaid, texts));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Checksums_are_right_and_stay_so_when_the_ROM_is_built_again(string name)
    {
        var cart = ExampleCart.All[name];
        Assert.All(ReadHeaders(cart.Cart).SelectMany(header => header.Checksums), entry => Assert.True(entry.Right, entry.Row.Name));
        var programs = cart.Cart.Rom.Regions.ToDictionary(region => region.Name, region => region.Bytes.ToArray());
        // What stands in no region, a container, is stated again.
        var texts = cart.Cart.Headers.Where(header => header.Table.Region is null).SelectMany(header => header.Entries)
            .ToImmutableSortedDictionary(entry => entry.Field.Name, entry => new ManifestValue(entry.Text, SourcePlace.None), StringComparer.OrdinalIgnoreCase);
        var again = Assemble(cart, programs, new HeaderKeep(true, []), texts);
        AssertSame(cart.Cart, again);
        Assert.All(again.Headers.SelectMany(header => header.Checksums), entry => Assert.True(entry.Right, entry.Row.Name));
    }

    private static void PutBack(Board board, ChipImage chip, byte?[] region)
    {
        var site = chip.Site;
        var bytes = chip.Bytes.ToArray();
        var first = site.Fill == ChipFill.Top ? bytes.Length - (int)chip.ContentLength : 0;
        var content = bytes.AsSpan(first, (int)chip.ContentLength).ToArray();
        AssertFilled(site.Fill, bytes, first, content);
        if (site.DataLines is not null)
        {
            content = [.. content.Select(value => (byte)Enumerable.Range(0, 8).Sum(bit => ((value >> bit) & 1) << (7 - bit)))];
            content = site.Width == 16 ? Swapped(content) : content;
        }

        if (site.Width == 16 && chip.WordOrder == WordOrder.Programmer && board.ByteOrder == ByteOrder.BigEndian)
            content = Swapped(content);

        var lane = site.Lane == Lane.Word ? 0 : board.ByteOf(site.Lane);
        for (var i = 0; i < content.Length; i++)
            region[site.Start + (i * site.Stride) + lane] = content[i];
    }

    private static void AssertFilled(ChipFill fill, byte[] bytes, int first, byte[] content)
    {
        if (fill == ChipFill.Repeat)
        {
            Assert.True(Mirror.IsMirrored(bytes, content.Length));
            return;
        }

        Assert.False(bytes.AsSpan(0, first).ContainsAnyExcept((byte)0xFF));
        Assert.False(bytes.AsSpan(first + content.Length).ContainsAnyExcept((byte)0xFF));
    }

    private static byte[] Swapped(byte[] bytes) => [.. bytes.Select((_, i) => bytes[i ^ 1])];

    private static ImmutableArray<HeaderImage> ReadHeaders(CartView cart)
    {
        var context = new HeaderContext(null, null, cart.Rom.LengthOf) { RegionBytes = name => cart.Rom[name]?.Bytes ?? default };
        return
        [
            .. cart.Headers.Select(header => HeaderReader.Read(
                header.Table, header.Table.Region is { } region ? cart.Bytes(region) : header.Container.AsSpan(), context)!),
        ];
    }

    private static CartView Assemble(ExampleCart cart, Dictionary<string, byte[]> programs, HeaderKeep keep, ImmutableSortedDictionary<string, ManifestValue> texts)
    {
        // Options stay as the manifest has them; fields are as they were read.
        var options = cart.Build.Manifest!.Header.Values.Where(value => cart.Platform.Options.Any(option => string.Equals(option.Name, value.Key, StringComparison.OrdinalIgnoreCase)));
        var request = new RomRequest(
            [.. programs.Select(program => new PlacedSegment(program.Key, 0, program.Value, "rom.bin", SourcePlace.None))],
            new HeaderSettings(texts.SetItems(options), keep))
        {
            Regions = programs.ToImmutableSortedDictionary(program => program.Key, program => new RegionSettings(program.Key, SourcePlace.None, program.Value.Length, SourcePlace.None, null), StringComparer.OrdinalIgnoreCase),
        };
        var log = new FindingLog();
        var again = RomAssembler.Assemble(cart.Platform, cart.Cart.Layout, request, log);
        Assert.Empty(log.ToSorted().Where(finding => finding.Severity == FindingSeverity.Error).Select(FindingText.Line));
        return again!;
    }

    private static void AssertSame(CartView cart, CartView again)
    {
        Assert.Equal(cart.Rom.Regions.Select(region => region.Name), again.Rom.Regions.Select(region => region.Name));
        Assert.All(cart.Rom.Regions, region => Assert.Equal(region.Bytes.ToArray(), again.Bytes(region.Name).ToArray()));
        Assert.Equal(cart.Headers.SelectMany(header => header.Container), again.Headers.SelectMany(header => header.Container));
    }
}
