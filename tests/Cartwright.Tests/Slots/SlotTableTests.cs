using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Slots;
using Xunit;

namespace Cartwright.Tests.Slots;

/// <summary>What switches show, and what a directory holds.</summary>
public sealed class SlotTableTests
{
    private static readonly ImmutableArray<string> Regions = ["rom"];

    private readonly FindingLog _log = new();

    [Fact]
    public void All_switches_open_show_the_last_slot()
    {
        // An open switch reads high through its pull-up (common practice).
        var positions = Table(Slot(0, "A", 0, 0x4000), Slot(1, "B", 0x4000, 0x4000)).Positions([new SlotSwitch(null, [14], SourcePlace.None)]);
        Assert.Equal([("B", true), ("A", false)], positions.Select(position => (position.Title!, position.IsHigh[0])));
        Assert.Empty(_log.ToSorted());
    }

    [Fact]
    public void A_position_inside_a_game_or_behind_all_starts_nothing()
    {
        var positions = Table(Slot(0, "A", 0, 0x8000)).Positions([new SlotSwitch(null, [14], SourcePlace.None)]);
        Assert.Equal([(null, "the inside of A"), ("A", "A")], positions.Select(position => (position.Title, position.Shown)));
    }

    [Theory]
    [InlineData(15, "CW5905")]
    [InlineData(31, "CW5905")]
    public void A_line_the_image_does_not_need_is_told(int line, string code)
    {
        Assert.Empty(Table(Slot(0, "A", 0, 0x8000)).Positions([new SlotSwitch(null, [line], SourcePlace.None)]));
        Assert.Equal(code, Assert.Single(_log.ToSorted()).Code);
    }

    [Fact]
    public void A_game_no_position_starts_is_told()
    {
        var table = Table(Slot(0, "A", 0, 0x4000), Slot(1, "B", 0x4000, 0x4000), Slot(2, "C", 0x8000, 0x8000));
        table.CheckReach(table.Positions([new SlotSwitch(null, [15], SourcePlace.None)]), [Game("A"), Game("B"), Game("C")]);
        Assert.Equal(SlotFindings.NoPosition, Assert.Single(_log.ToSorted()).Rule);
    }

    [Fact]
    public void A_directory_holds_count_records_and_end()
    {
        var directory = Directory(new SlotField(SlotFieldKind.Start, 0, 2, SourcePlace.None) { Unit = 0x4000, LowByteFirst = true }, new SlotField(SlotFieldKind.Title, 2, 3, SourcePlace.None) { Pad = 0 }) with { CountAt = 0, RecordsAt = 1, End = 0xEE };
        var block = new DirectoryWriter(directory, Regions, _log).Write([Game("A"), Game("BCD")], [Slot(0, "A", 0, 0x4000), Slot(1, "BCD", 0x4000, 0x4000)]);
        Assert.Equal("02" + "0000410000" + "0100424344" + "EEEEEEEEEE", Convert.ToHexString(block));
        Assert.Empty(_log.ToSorted());
    }

    [Theory]
    [InlineData(SlotFieldKind.Start, 1, 1)]
    [InlineData(SlotFieldKind.Start, 2, 0x3000)]
    [InlineData(SlotFieldKind.Title, 2, 1)]
    public void A_value_without_room_is_told(SlotFieldKind kind, int width, long unit)
    {
        new DirectoryWriter(Directory(new SlotField(kind, 0, width, SourcePlace.None) { Unit = unit }), Regions, _log).Write([Game("BCD")], [Slot(0, "BCD", 0x4000, 0x4000)]);
        Assert.Equal(SlotFindings.DoesNotFit, Assert.Single(_log.ToSorted()).Rule);
    }

    private SwitchTable Table(params ImmutableArray<PlacedSlot> slots) => new(slots, Regions, _log);

    private static SlotDirectory Directory(params ImmutableArray<SlotField> fields) =>
        new(new ProgramEntry(new ManifestValue("directory", SourcePlace.None), SourcePlace.None), 5, fields);

    private static PlacedSlot Slot(int index, string title, long start, long size) => new(index, title, title + ".bin", "rom", start, size, new byte[size]);

    private static SlotGame Game(string title) => new(new ManifestValue(title + ".bin", SourcePlace.None), title, SourcePlace.None);
}
