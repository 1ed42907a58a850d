using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("tilte", "title")]
    [InlineData("SST39SF04", "SST39SF040")]
    [InlineData("PLATFORM", "platform")]
    [InlineData("md-dobule", "md-double-8bit")]
    public void A_typing_slip_finds_the_name_that_was_meant(string given, string meant) =>
        Assert.Equal(meant, NearestName.Among(given, ["title", "platform", "revision", "SST39SF040", "SST39VF1601", "md-double-8bit"])[0]);

    [Fact]
    public void Nothing_is_proposed_for_a_name_unlike_all_others() =>
        Assert.Null(NearestName.Question("xyzzyxyzzy", ["title", "rom"]));
}
