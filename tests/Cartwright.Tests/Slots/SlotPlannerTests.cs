using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;
using Cartwright.Slots;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Slots;

/// <summary>Slots are powers of two at multiples of themselves, and never meet.</summary>
public sealed class SlotPlannerTests
{
    [Property]
    public void Slots_are_aligned_to_their_own_size_and_apart(int seed)
    {
        var random = new Random(seed);
        var menu = random.Next(2) == 0 ? ImmutableArray<PlacedSegment>.Empty : [new PlacedSegment("rom", 0, new byte[random.Next(1, 3000)], "menu", SourcePlace.None)];
        var log = new FindingLog();
        var planner = new SlotPlanner(menu, log);
        var slots = Enumerable.Range(0, 8).SelectMany(index => planner.Place(index, Game($"g{index}"), Rom(random.Next(1, 5000))).ToList()).ToList();
        Assert.Empty(log.ToSorted());
        Assert.All(slots, slot => Assert.Equal((true, 0, true), (BitOperations.IsPow2(slot.Size), slot.Start % slot.Size, slot.Unused >= 0 && slot.Unused < Math.Max(1, slot.Size / 2))));
        var ends = slots.OrderBy(slot => slot.Start).Aggregate((long)menu.Sum(segment => segment.Length), (end, slot) =>
        {
            Assert.True(slot.Start >= end);
            return slot.End;
        });
        Assert.Equal(slots.Max(slot => slot.End), ends);
    }

    [Fact]
    public void A_small_game_fills_the_gap_a_large_one_left()
    {
        var planner = new SlotPlanner([], new FindingLog());
        var starts = new[] { 1000, 4096, 1024 }.Select((length, index) => planner.Place(index, Game($"g{index}"), Rom(length)).Single().Start);
        Assert.Equal([0, 4096, 1024], starts.ToArray());
    }

    [Theory]
    [InlineData(100L, null, "CW5903")]
    [InlineData(2048L, 1024L, "CW5903")]
    [InlineData(512L, null, "CW5901")]
    [InlineData(null, 1024L, "CW5902")]
    public void A_slot_that_cannot_be_is_told(long? size, long? at, string code)
    {
        var log = new FindingLog();
        var menu = new PlacedSegment("rom", 0, new byte[1500], "menu", SourcePlace.None);
        Assert.Empty(new SlotPlanner([menu], log).Place(0, Game("g") with { Size = size, At = at }, Rom(1000)).ToList());
        Assert.Equal(code, Assert.Single(log.ToSorted()).Code);
    }

    private static SlotGame Game(string title) => new(new ManifestValue(title + ".bin", SourcePlace.None), title, SourcePlace.None);

    private static Rom Rom(int length) => new([new RegionImage("rom", new byte[length], 0xFF, [])]);
}
