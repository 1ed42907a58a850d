using Cartwright.Chips;
using Cartwright.Images;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

public sealed class PartFitterTests
{
    private const int Needed = 512 * 1024;

    [Fact]
    public void Parts_that_could_be_fitted_are_large_and_wide_enough()
    {
        var fits = Fitter("", null).Among(PartCatalog.BuiltIn.All, Needed);
        Assert.Equal(PartCatalog.BuiltIn.CouldHold(Needed, 8, 5), fits.Select(static fit => fit.Part));
        Assert.Empty(Fitter("", null).Among(PartCatalog.BuiltIn.All, 1L << 40));
        Assert.Empty(Fitter("", null).Among([PartCatalog.BuiltIn.Find("SST39SF020A")!], Needed));
    }

    // What is tied follows from the pin lists of the data sheets; how, from common practice.
    [Theory]
    [InlineData("AT27C040", "", "VPP as the data sheet says for reading")]
    [InlineData("SST39SF040", "", "WE# high")]
    [InlineData("SST39VF040", "", "WE# high; a supply of 2.7-3.6 V and level shifting on every line")]
    [InlineData("M27C801", "", "a file filled `repeat`; A19 tied low or high, unless the board drives them")]
    [InlineData("M27C801", ", \"fill\": \"erased\"", "a file filled `erased`; A19 tied low, unless the board drives them")]
    [InlineData("M27C801", ", \"fill\": \"top\", \"largest\": \"256KiB\"", "a file filled `top`; A18 to A19 tied high")]
    [InlineData("M27C801", ", \"largest\": \"1MiB\"", "a file filled `repeat`")]
    [InlineData("M27C400", "", "BYTE# low")]
    [InlineData("M27C800", "", "a file filled `repeat`; A18 tied low or high, unless the board drives them; BYTE# low")]
    [InlineData("28F320J3A", "", "a file filled `repeat`; A19 to A21 tied low or high, unless the board drives them; WE# high; RP# high; CE2 high; BYTE# low; a supply of 2.7-3.6 V and level shifting on every line")]
    public void What_a_part_takes_is_told(string name, string site, string needs) => Assert.Equal(needs, Needs(name, site, null));

    [Theory]
    [InlineData("M27C400", "BYTE# high")]
    [InlineData("M27C800", "a file filled `repeat`; A18 tied low or high, unless the board drives them; BYTE# high")]
    public void On_sixteen_lines_address_lines_count_words(string name, string needs)
    {
        var bench = new BoardBench("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16 } ]");
        Assert.Equal(needs, Needs(name, bench, null));
    }

    // 27C040 and 29F040 differ at two pins: A18 and WE# or VPP.
    [Theory]
    [InlineData("AT27C040", "VPP as the data sheet says for reading")]
    [InlineData("SST39SF040", "WE# high; an adapter, or lifted pins: pin 1 VPP is its A18, pin 31 A18 is its WE#")]
    [InlineData("W29C040", "WE# high; an adapter: it comes in PLCC32, TSOP32, and the site is made for DIP32")]
    [InlineData("Am29F032B", "a file filled `repeat`; A19 to A21 tied low or high, unless the board drives them; a look at its data sheet: its pin-out is not known here, and the site is made for DIP32")]
    public void Pins_that_have_moved_are_told(string name, string needs)
    {
        var socket = PinOutCatalog.BuiltIn.Find("DIP32-27C040");
        Assert.Equal(needs, Needs(name, "", socket));
    }

    private static string Needs(string name, string site, PinOut? socket) => Needs(name, BoardBench.One(site), socket);

    private static string Needs(string name, BoardBench bench, PinOut? socket) => string.Join("; ", Assert.Single(
        new PartFitter(bench.Board!, bench.Board!.Sites[0], socket).Among([PartCatalog.BuiltIn.Find(name)!], Needed)).Needs);

    private static PartFitter Fitter(string site, PinOut? socket)
    {
        var board = BoardBench.One(site).Board!;
        return new PartFitter(board, board.Sites[0], socket);
    }
}
