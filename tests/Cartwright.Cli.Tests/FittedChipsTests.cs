using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>The chips of a board, and the pins their lines are on.</summary>
public sealed class FittedChipsTests
{
    private readonly FindingLog _log = new();

    [Fact]
    public void A_line_is_named_by_the_pin_of_its_package()
    {
        var rows = Lines("SST39SF040", "DIP32").Rows;
        Assert.Equal(["bus", "chip", "", "chip", "pin of DIP32", "bus"], rows[0]);
        // Pin 4 of the 32-pin JEDEC socket is A12. Source: SST39SF010A/020A/040 data sheet.
        Assert.Contains(rows, row => row is ["A12", "A12", "", "A12", "4", "A12"]);
        Assert.Empty(_log.ToSorted());
    }

    [Fact]
    public void A_package_without_a_known_pin_out_is_told()
    {
        var rows = Lines("SST39SF040", "TSOP40").Rows;
        Assert.Equal(["bus", "chip", "", "chip", "bus"], rows[0]);
        Assert.Equal(OwnPartFindings.NoPinOut, Assert.Single(_log.ToSorted()).Rule);
    }

    private LineTable Lines(string part, string package)
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat);
        var board = new Board("own", null, 8, Headers.ByteOrder.BigEndian, 5, [site]);
        var chip = new ChipSettings("U1", SourcePlace.None, new ManifestValue(part, SourcePlace.None), null, null) { Package = new ManifestValue(package, SourcePlace.None) };
        return FittedChips.Of(board, [chip], _log).LinesOf(site);
    }
}
