using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Whatever way the lines run, the bus reads from the chip what the region holds: read line by line, as the copper does.</summary>
public sealed class WiredChipTests
{
    private const int Words = 1 << 10;

    [Property]
    public void The_bus_reads_the_region_through_crossed_lines(int seed, bool wide, bool little, bool programmer)
    {
        var random = new Random(seed);
        var site = Site(wide ? 16 : 8, random) with { AddressLines = Shuffled(random, 10) };
        AssertSeen(site, wide, little, programmer, extra: 0);
    }

    [Property]
    public void Tied_and_open_lines_show_the_region_at_the_level_they_have(int seed, bool wide)
    {
        // Two lines in the midst of the chip are not driven: the bus goes round them.
        var random = new Random(seed);
        var lines = Shuffled(random, 12);
        var site = Site(wide ? 16 : 8, random) with
        {
            AddressLines = lines[..10],
            Ties = lines[10..].ToImmutableSortedDictionary(line => line, _ => (LineTie)random.Next(3)),
            Fill = (ChipFill)random.Next(3),
        };
        AssertSeen(site, wide, little: false, programmer: false, extra: 2);
    }

    [Property]
    public void The_chip_gives_the_region_again(int seed, bool wide, bool programmer)
    {
        var random = new Random(seed);
        var lines = Shuffled(random, 12);
        var tied = random.Next(2) == 0;
        var site = Site(wide ? 16 : 8, random) with
        {
            AddressLines = lines[..10],
            Ties = tied ? lines[10..].ToImmutableSortedDictionary(line => line, _ => (LineTie)random.Next(3)) : ImmutableSortedDictionary<int, LineTie>.Empty,
            Fill = (ChipFill)random.Next(3),
        };
        var region = TestBytes.L(Words * site.Width / 8);
        var (board, chip) = Build(site, region, little: false, programmer, extra: 2);
        var back = new byte[region.Length];
        new ChipMerger(board).PutBack(site, chip.Bytes.Span, chip.WordOrder, back);
        Assert.Equal(region, back);
    }

    [Fact]
    public void Both_lanes_of_a_bus_may_be_wired_in_their_own_way()
    {
        var random = new Random(1);
        var low = Site(8, random) with { Name = "U1", Lane = Lane.Low, AddressLines = Shuffled(random, 9) };
        var high = Site(8, random) with { Name = "U2", Lane = Lane.High, AddressLines = Shuffled(random, 9) };
        var board = new Board("own", null, 16, ByteOrder.BigEndian, 5, [low, high]);
        var region = TestBytes.L(Words);
        var chips = Cut(board, region, WordOrder.Bus, null, out _);
        for (var word = 0; word < Words / 2; word++)
        {
            Assert.Equal(region[(2 * word) + 1], Seen(low, chips[0].Bytes.Span, word, []));
            Assert.Equal(region[2 * word], Seen(high, chips[1].Bytes.Span, word, []));
        }
    }

    [Property]
    public void Four_chips_of_a_wide_bus_give_the_region_again(int seed, bool little)
    {
        var random = new Random(seed);
        var sites = Enumerable.Range(0, 4).Select(lane => Site(8, random) with { Name = $"U{lane}", Lane = Lane.Low + lane, LaneCount = 4, AddressLines = Shuffled(random, 8) }).ToImmutableArray();
        var board = new Board("own", null, 32, little ? ByteOrder.LittleEndian : ByteOrder.BigEndian, 5, sites);
        var region = TestBytes.L(Words);
        var back = new byte[region.Length];
        foreach (var chip in Cut(board, region, WordOrder.Bus, null, out _))
        {
            new ChipMerger(board).PutBack(chip.Site, chip.Bytes.Span, chip.WordOrder, back);
        }

        Assert.Equal(region, back);
    }

    [Fact]
    public void A_tie_on_a_line_the_bus_drives_is_refused()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { Ties = ImmutableSortedDictionary<int, LineTie>.Empty.Add(9, LineTie.Low) };
        Assert.Contains("CW5021", Codes(site, Words, 0));
        Assert.DoesNotContain("CW5021", Codes(site, Words / 2, 0));
    }

    [Fact]
    public void A_line_the_chip_does_not_have_is_refused()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { AddressLines = [11, .. Enumerable.Range(0, 10)] };
        Assert.Contains("CW5020", Codes(site, Words, 0));
        Assert.DoesNotContain("CW5020", Codes(site, Words, 2));
    }

    [Fact]
    public void An_open_line_is_warned_of()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { Ties = ImmutableSortedDictionary<int, LineTie>.Empty.Add(10, LineTie.Open) };
        Assert.Contains("CW5022", Codes(site, Words, 1));
    }

    [Theory]
    [InlineData(true, false, true)]
    [InlineData(true, true, false)]
    [InlineData(false, false, false)]
    [InlineData(false, true, true)]
    public void An_enable_of_the_wrong_level_is_warned_of(bool isHigh, bool inverter, bool warned)
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { Select = new SiteSelect("A15", isHigh, inverter, null, null) };
        Assert.Equal(warned, Codes(site, Words, 0).Contains("CW5023"));
    }

    [Theory]
    [InlineData(40, true)]
    [InlineData(70, false)]
    public void A_chip_slower_than_its_socket_is_warned_of(double window, bool warned)
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { AccessNs = window };
        Cut(new Board("own", null, 8, ByteOrder.BigEndian, 5, [site]), TestBytes.L(Words), WordOrder.Bus, Chip("SST39SF010A", null), out var log);
        Assert.Equal(warned, log.ToSorted().Any(finding => finding.Code == "CW5024"));
    }

    [Theory]
    [InlineData(60, 55, null, null, false)]
    [InlineData(60, 70, null, null, true)]
    [InlineData(null, 70, 30, 25, false)]
    [InlineData(null, 70, 30, 35, true)]
    public void The_times_of_the_chip_fitted_are_held_against_its_socket(int? window, int access, int? enableWindow, int? enable, bool warned)
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { AccessNs = window, OutputEnableNs = enableWindow };
        var chips = Chip("SST39SF010A", null);
        Cut(new Board("own", null, 8, ByteOrder.BigEndian, 5, [site]), TestBytes.L(Words), WordOrder.Bus, chips.SetItem("U1", chips["U1"] with { AccessNs = access, OutputEnableNs = enable }), out var log);
        Assert.Equal(warned, log.ToSorted().Any(finding => finding.Code == "CW5024"));
        Assert.DoesNotContain(log.ToSorted(), finding => finding.Code == "CW5025");
    }

    [Fact]
    public void An_output_enable_time_nobody_stated_is_asked_for()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { OutputEnableNs = 30 };
        Assert.Contains("CW5025", Codes(site, Words, 0));
    }

    private static Site Site(int width, Random random) => new("U1", "rom", width, Lane.Word, 0, null, ChipFill.Repeat) { DataLines = new LineOrder([.. Shuffled(random, width)]) };

    private static ImmutableArray<int> Shuffled(Random random, int count)
    {
        int[] lines = [.. Enumerable.Range(0, count)];
        random.Shuffle(lines);
        return [.. lines];
    }

    private static void AssertSeen(Site site, bool wide, bool little, bool programmer, int extra)
    {
        var region = TestBytes.L(Words * site.Width / 8);
        var (board, chip) = Build(site, region, little, programmer, extra);
        // Open lines are read at one level and at the other.
        foreach (var open in (int[])[0, 1])
        {
            for (var word = 0; word < Words; word++)
            {
                var seen = Seen(site, chip, word, site.Ties.ToDictionary(tie => tie.Key, tie => tie.Value == LineTie.Open ? open : tie.Value == LineTie.High ? 1 : 0));
                var (first, second) = wide ? (region[2 * word], region[(2 * word) + 1]) : ((byte)0, region[word]);
                Assert.Equal(board.ByteOrder == ByteOrder.BigEndian || !wide ? (first << 8) | second : (second << 8) | first, seen);
            }
        }
    }

    private static int Seen(Site site, ChipImage chip, int word, Dictionary<int, int> ties) => Ordered(site, chip.Word(AddressOf(site, word, ties)));

    private static int Seen(Site site, ReadOnlySpan<byte> chip, int word, Dictionary<int, int> ties) => Ordered(site, chip[AddressOf(site, word, ties)]);

    private static int AddressOf(Site site, int word, Dictionary<int, int> ties) =>
        site.AddressLines.Select((chip, bus) => ((word >> bus) & 1) << chip).Sum() + ties.Sum(tie => tie.Value << tie.Key);

    private static int Ordered(Site site, int word) => Enumerable.Range(0, site.Width).Sum(line => ((word >> site.DataLines![line]) & 1) << line);

    private static (Board Board, ChipImage Chip) Build(Site site, byte[] region, bool little, bool programmer, int extra)
    {
        var board = new Board("own", null, site.Width, little ? ByteOrder.LittleEndian : ByteOrder.BigEndian, 5, [site]);
        var chips = Cut(board, region, programmer ? WordOrder.Programmer : WordOrder.Bus, Chip(null, region.Length << extra), out var log);
        Assert.DoesNotContain(log.ToSorted(), finding => finding.Severity == FindingSeverity.Error);
        return (board, Assert.Single(chips));
    }

    private static List<string> Codes(Site site, int length, int extra)
    {
        Cut(new Board("own", null, 8, ByteOrder.BigEndian, 5, [site]), TestBytes.L(length), WordOrder.Bus, Chip(null, length << extra), out var log);
        return [.. log.ToSorted().Select(finding => finding.Code)];
    }

    private static ImmutableSortedDictionary<string, ChipSettings> Chip(string? part, long? capacity) =>
        ImmutableSortedDictionary<string, ChipSettings>.Empty.Add("U1", new ChipSettings("U1", SourcePlace.None, part is null ? null : new ManifestValue(part, SourcePlace.None), capacity, null));

    private static ImmutableArray<ChipImage> Cut(Board board, byte[] region, WordOrder order, ImmutableSortedDictionary<string, ChipSettings>? chips, out FindingLog log)
    {
        log = new FindingLog();
        var settings = new BoardSettings(new ManifestValue("own", SourcePlace.None), default, chips ?? ImmutableSortedDictionary<string, ChipSettings>.Empty);
        return new ChipImageBuilder(board, settings, new ImageSettings("", SourcePlace.None, [ImageFormat.Raw], order), log).Build(new Rom([new RegionImage("rom", region, 0xFF, [])]));
    }
}
