using Cartwright.Boards;
using Cartwright.Documents;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Roms;
using Cartwright.TestImages;
using Xunit;

namespace Cartwright.Tests.TestImages;

public sealed class TestImageKindsTests
{
    public static TheoryData<string> Kinds => [.. TestImageKinds.All.Where(kind => kind != TestImageKinds.Fill).Select(kind => kind.Name)];

    [Fact]
    public void The_page_is_up_to_date() => Approved.Equal("docs/test-images.md", TestImagePage.Markdown());

    [Fact]
    public void Each_kind_is_made_for_a_chip_or_for_a_region() =>
        Assert.All(TestImageKinds.All, kind => Assert.Equal(kind == TestImageKinds.Fill ? 0 : 1, (kind.OfChip is null ? 0 : 1) + (kind.OfRegion is null ? 0 : 1)));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_size_width_and_order(string name)
    {
        var kind = TestImageKinds.Find(name)!;
        for (var size = 2 << 10; size <= 256 << 10; size <<= 1)
        {
            foreach (var (width, order) in new[] { (8, WordOrder.Bus), (16, WordOrder.Bus), (16, WordOrder.Programmer) })
            {
                var set = TestBench.Single(kind, size, width, order);
                Assert.Equal(size, Assert.Single(set.Chips).Capacity);
                Assert.Equal(set.Chips[0].Bytes.ToArray(), TestBench.Single(kind, size, width, order).Chips[0].Bytes.ToArray());
            }
        }
    }

    [Fact]
    public void The_largest_size() =>
        Assert.All([TestImageKinds.Banks, TestImageKinds.Size, TestImageKinds.Solid], kind => Assert.Equal(64 << 20, TestBench.Single(kind, 64 << 20).Chips[0].Capacity));

    [Theory]
    [InlineData(1)]
    [InlineData(1024)]
    [InlineData(3000)]
    [InlineData(128 << 20)]
    public void A_size_no_chip_has_is_refused(int size)
    {
        var log = new FindingLog();
        Assert.Null(TestBench.Make(SingleChip.Of(8), TestImageKinds.Ruler, log, size));
        Assert.Equal([TestImageFindings.BadSize.Code], log.ToSorted().Select(finding => finding.Code));
    }

    [Theory]
    [InlineData(32)]
    [InlineData(3000)]
    [InlineData(64 << 10)]
    public void A_bank_size_that_does_not_fit_is_refused(int bankSize)
    {
        var log = new FindingLog();
        Assert.Null(TestBench.Make(SingleChip.Of(8), TestImageKinds.Banks, log, 32 << 10, new TestImageSettings { BankSize = bankSize }));
        Assert.Equal([TestImageFindings.BadBankSize.Code], log.ToSorted().Select(finding => finding.Code));
    }

    public static TheoryData<string> Boards => [.. BoardCatalog.Ids];

    [Theory]
    [MemberData(nameof(Boards))]
    public void On_every_board_the_cartridge_reads_as_its_chips_give(string id)
    {
        var board = BoardCatalog.Find(id)!;
        Assert.All([TestImageKinds.Signature, TestImageKinds.Order], kind =>
        {
            // Where small blocks of a ROM would be repeated on the chip, only the whole ROM fills it.
            var largest = board.Sites[0].Blocks is null ? 64 << 10 : (int)board.Sites[0].End;
            var set = Enumerable.Range(0, 6).Select(halvings => TestBench.Make(board, kind, new FindingLog(), largest >> halvings)).First(made => made is not null)!;
            Assert.NotEmpty(set.Chips);
            var again = new ChipImageBuilder(board, TestBench.Settings(board), new ImageSettings("", default, [ImageFormat.Raw], WordOrder.Bus), new FindingLog()).Build(new Rom(set.Regions));
            Assert.All(set.Chips.Zip(again), pair => Assert.Equal(Content(pair.Second, pair.Second), Content(pair.First, pair.Second)));
        });
    }

    [Fact]
    public void Chips_of_a_board_have_seeds_of_their_own()
    {
        var set = TestBench.Make(BoardCatalog.Find("md-double-8bit")!, TestImageKinds.Signature, new FindingLog(), 512 << 10)!;
        Assert.Equal([1u, 2u], set.Chips.Select(set.SeedOf));
        Assert.NotEqual(set.Chips[0].Bytes.ToArray(), set.Chips[1].Bytes.ToArray());
    }

    [Fact]
    public void A_chip_that_gets_only_a_remnant_is_refused()
    {
        var whole = SingleChip.Of(8);
        var board = whole with { Sites = [whole.Sites[0] with { Length = 1536 }, whole.Sites[0] with { Name = "U2", Start = 1536 }] };
        var log = new FindingLog();
        Assert.Null(TestBench.Make(board, TestImageKinds.Size, log, 2 << 10));
        Assert.Equal(["The chip at U2 would have 0x000200 (512 bytes)."], log.ToSorted().Select(finding => finding.Message));
    }

    [Fact]
    public void A_region_without_a_length_is_asked_for()
    {
        var log = new FindingLog();
        Assert.Empty(RegionSizes.Of(SingleChip.Of(8), null, new Dictionary<string, long>(), default, log));
        Assert.Equal([TestImageFindings.NoSize.Code], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void A_board_that_says_what_its_sites_hold_needs_no_size() =>
        Assert.Equal(4 << 20, RegionSizes.Of(BoardCatalog.Find("md-double-8bit")!, null, new Dictionary<string, long>(), default, new FindingLog())["rom"]);

    // What of the chip comes from the region: the rest of a larger chip is out of the cartridge's sight.
    private static byte[] Content(ChipImage chip, ChipImage measure) =>
        chip.Site.Fill == ChipFill.Top ? chip.Bytes[^(int)measure.ContentLength..].ToArray() : chip.Bytes[..(int)measure.ContentLength].ToArray();
}
