using System.Security.Cryptography;
using System.Text;
using Cartwright.Findings;
using Cartwright.Saves;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class NewSaveTests
{
    private static readonly NewSave Maker = new(64, 0xE5);

    [Fact]
    public void Without_contents_it_is_filler() => Assert.Equal(TestBytes.All(0xE5, 64), Maker.Blank());

    [Fact]
    public void Contents_stand_at_the_start() =>
        Assert.Equal([1, 2, .. TestBytes.All(0xE5, 62)], Maker.With("start.sav", [1, 2], new FindingLog())!);

    [Fact]
    public void Contents_that_do_not_fit_are_refused()
    {
        var log = new FindingLog();
        Assert.Null(Maker.With("start.sav", new byte[65], log));
        Assert.Equal("CW9519", Assert.Single(log.ToSorted()).Code);
    }

    // The seed of a unit as a production run makes it: SHA-256 of cart, field, serial number and offset.
    [Fact]
    public void A_seed_is_that_of_the_unit() =>
        Assert.Equal([.. SHA256.HashData(Encoding.UTF8.GetBytes("lantern-tide/save/7/0"))[..16], .. TestBytes.All(0xE5, 48)], Maker.Seeded("lantern-tide", 7, 16, new FindingLog())!);

    [Fact]
    public void Units_have_seeds_of_their_own() => Assert.NotEqual(Maker.Seeded("lantern-tide", 7, 16, new FindingLog()), Maker.Seeded("lantern-tide", 8, 16, new FindingLog()));
}
