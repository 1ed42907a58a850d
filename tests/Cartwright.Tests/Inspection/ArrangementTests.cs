using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>Chips of a board nobody knows give their image again.</summary>
public sealed class ArrangementTests
{
    private static readonly byte[] Image = TestBytes.L(0x10000);

    public static TheoryData<int, ChipJoin, ImageOrder> Ways =>
    [
        .. from count in (int[])[1, 2, 4]
           from joining in ChipJoins.For(count, Image.Length / count)
           from order in Enum.GetValues<ImageOrder>()
           select (count, joining, order),
    ];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Joining_undoes_parting(int count, ChipJoin join, ImageOrder order)
    {
        var ordered = new byte[Image.Length];
        ImageOrders.FromConsole(order, Image, ordered);
        Assert.Equal(ordered, ChipJoins.Join(join, ChipJoins.Part(join, ordered, count)));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_way_to_an_image_at_hand_is_found(int count, ChipJoin join, ImageOrder order)
    {
        foreach (var exchanged in (bool[])[false, true])
        {
            var chips = Chips(Image, count, join, order, exchanged);
            var found = Find(chips, Image, out var codes);
            Assert.Empty(codes);
            var way = Assert.Single(found).Way;
            Assert.Equal(Image, way.Apply(chips));
        }
    }

    [Theory]
    [InlineData(ChipJoin.BytesInTurn, 2)]
    [InlineData(ChipJoin.WordsInTurn, 2)]
    [InlineData(ChipJoin.InSequence, 1)]
    [InlineData(ChipJoin.BytesInTurn, 4)]
    public void A_way_to_an_image_nobody_has_is_found_by_its_marks_and_sums(ChipJoin join, int count)
    {
        foreach (var name in (string[])["gb", "md", "snes"])
        {
            var file = ExampleCart.All["lantern-tide-" + name].File;
            var chips = Chips(file, count, join, ImageOrder.BitReversed, exchanged: false);
            var found = Find(chips, null, out var codes);
            Assert.Empty(codes);
            Assert.Equal(file, Assert.Single(found).Image.ToArray());
        }
    }

    [Fact]
    public void A_region_is_found_without_its_container()
    {
        var cart = ExampleCart.All["lantern-tide-nes"];
        var prg = cart.Cart.Bytes("prg").ToArray();
        Assert.Equal(prg, Assert.Single(Find(Chips(prg, 2, ChipJoin.BytesInTurn, ImageOrder.Console, exchanged: false), cart.File, out _)).Image.ToArray());
    }

    [Fact]
    public void Half_of_the_chips_give_nothing()
    {
        Assert.Empty(Find([.. Chips(Image, 2, ChipJoin.BytesInTurn, ImageOrder.Console, exchanged: false).Take(1)], Image, out var codes));
        Assert.Equal(["CW8024"], codes);
    }

    [Fact]
    public void What_lies_behind_a_header_in_two_ways_is_not_guessed()
    {
        var file = ExampleCart.All["lantern-tide-md"].File.ToArray();
        file.AsSpan(0x18E, 2).Clear();
        TestBytes.L(file.Length / 2).CopyTo(file, file.Length / 2);
        var chips = ChipJoins.Part(ChipJoin.InSequence, file, 4);
        Assert.Equal(6, Find(chips, null, out var codes).Length);
        Assert.Equal(["CW8025"], codes);
    }

    [Fact]
    public void Five_chips_or_an_empty_one_are_refused()
    {
        Find([[1], [2], [3], [4], [5]], null, out var five);
        Find([[]], null, out var empty);
        Assert.Equal(["CW8024"], five);
        Assert.Equal(["CW8024"], empty);
    }

    // The last chip first, as nobody knows their order.
    private static ImmutableArray<byte[]> Chips(byte[] image, int count, ChipJoin join, ImageOrder order, bool exchanged)
    {
        var ordered = new byte[image.Length];
        ImageOrders.FromConsole(order, image, ordered);
        return [.. ChipJoins.Part(join, ordered, count).Reverse().Select(chip => exchanged ? [.. chip[(chip.Length / 2)..], .. chip[..(chip.Length / 2)]] : chip)];
    }

    private static ImmutableArray<FoundArrangement> Find(ImmutableArray<byte[]> chips, byte[]? known, out IReadOnlyList<string> codes)
    {
        var log = new FindingLog();
        var found = new ArrangementFinder(new ImageOpener(PlatformCatalog.BuiltIn), null).Find([.. chips.Select((_, chip) => $"chip{chip}")], chips, known is null ? null : ("known.bin", known), log);
        codes = [.. log.ToSorted().Select(finding => finding.Code)];
        return found;
    }
}
