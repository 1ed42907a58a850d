using Cartwright.Boards;
using Cartwright.Documents;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class BoardPageTests
{
    [Fact]
    public void The_page_of_boards_is_up_to_date() => Approved.Equal("docs/boards.md", BoardPage.Markdown());

    [Fact]
    public void Every_board_loads_and_is_on_the_page_with_all_its_sites()
    {
        var page = BoardPage.Markdown();
        Assert.NotEmpty(BoardCatalog.All);
        Assert.Equal(BoardCatalog.Ids, BoardCatalog.All.Select(board => board.Id));
        foreach (var board in BoardCatalog.All)
        {
            var start = page.IndexOf($"\n## {board.Id}\n", StringComparison.Ordinal);
            Assert.True(start >= 0, board.Id);
            var section = page[(start + 1)..].Split("\n## ")[0];
            Assert.Contains(board.Description, section, StringComparison.Ordinal);
            Assert.Contains(board.Source!, section, StringComparison.Ordinal);
            Assert.All(board.Sites, site => Assert.Contains($"\n| {site.Name} | {site.Region} | {site.Width} |", section, StringComparison.Ordinal));
            Assert.All(board.Expects, pair => Assert.Contains($"Wired for: `{pair.Key}`", section, StringComparison.Ordinal));
        }
    }
}
