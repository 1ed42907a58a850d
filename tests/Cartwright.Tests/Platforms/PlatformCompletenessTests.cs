using Cartwright.Boards;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What every platform must bring with it.</summary>
public sealed class PlatformCompletenessTests
{
    public static TheoryData<string> Ids => [.. PlatformCatalog.BuiltIn.All.Select(platform => platform.Facts.Id)];

    [Fact]
    public void Its_id_in_the_catalogue_is_its_own() =>
        Assert.All(PlatformCatalog.BuiltIn.All, platform => Assert.Same(platform, PlatformCatalog.BuiltIn.Find(platform.Facts.Id)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_has_an_example(string id) => Assert.Contains(ExampleCart.All.Values, cart => cart.Platform.Facts.Id == id);

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_has_a_board(string id) => Assert.Contains(BoardCatalog.All, board => board.Platform == id);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_boards_have_its_supply_and_no_wider_bus(string id)
    {
        var facts = PlatformCatalog.BuiltIn.Find(id)!.Facts;
        Assert.All(BoardCatalog.All.Where(board => board.Platform == id), board =>
        {
            Assert.Equal(facts.BusVolts, board.BusVolts);
            Assert.InRange(board.BusWidth, 8, facts.BusWidth);
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_page_says_what_it_must(string id)
    {
        var facts = PlatformCatalog.BuiltIn.Find(id)!.Facts;
        Assert.NotEmpty(facts.MemoryMap);
        Assert.NotEmpty(facts.Recognition);
        Assert.NotEmpty(facts.Traps);
        Assert.NotEmpty(facts.Sources);
    }
}
