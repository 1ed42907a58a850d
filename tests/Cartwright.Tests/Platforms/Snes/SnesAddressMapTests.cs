using Cartwright.Platforms.Snes;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesAddressMapTests
{
    // Offsets by the formulas of SNESdev Wiki, Memory map; the run ends where the window does.
    [Theory]
    [InlineData("lorom", "00:8000", 0x000000, 0x8000)]
    [InlineData("lorom", "00:FFFC", 0x007FFC, 4)]
    [InlineData("lorom", "$808000", 0x000000, 0x8000)]
    [InlineData("lorom", "03:9000", 0x019000, 0x7000)]
    [InlineData("lorom", "7D:8000", 0x3E8000, 0x8000)]
    [InlineData("lorom", "FF:FFFF", 0x3FFFFF, 1)]
    [InlineData("lorom", "40:0000", 0x200000, 0x8000)]
    [InlineData("lorom", "C1:7FFF", 0x20FFFF, 1)]
    [InlineData("lorom", "32768", 0x000000, 0x8000)]
    [InlineData("hirom", "C0:0000", 0x000000, 0x400000)]
    [InlineData("hirom", "$C08000", 0x008000, 0x3F8000)]
    [InlineData("hirom", "40:0000", 0x000000, 0x3E0000)]
    [InlineData("hirom", "7D:FFFF", 0x3DFFFF, 1)]
    [InlineData("hirom", "FF:FFFF", 0x3FFFFF, 1)]
    [InlineData("hirom", "00:8000", 0x008000, 0x8000)]
    [InlineData("hirom", "BF:FFC0", 0x3FFFC0, 0x40)]
    [InlineData("exhirom", "C0:0000", 0x000000, 0x400000)]
    [InlineData("exhirom", "40:0000", 0x400000, 0x3E0000)]
    [InlineData("exhirom", "00:FFC0", 0x40FFC0, 0x40)]
    [InlineData("exhirom", "80:FFC0", 0x00FFC0, 0x40)]
    [InlineData("exhirom", "3E:8000", 0x7E8000, 0x8000)]
    [InlineData("exhirom", "3F:FFFF", 0x7FFFFF, 1)]
    [InlineData("exlorom", "80:8000", 0x000000, 0x8000)]
    [InlineData("exlorom", "00:FFC0", 0x407FC0, 0x40)]
    [InlineData("exlorom", "7D:8000", 0x7E8000, 0x8000)]
    [InlineData("exlorom", "41:1234", 0x609234, 0x6DCC)]
    public void An_address_lies_where_the_lines_lead(string mapping, string text, long offset, long run)
    {
        var place = Locate(mapping, text);
        Assert.Null(place.Problem);
        Assert.Equal(("rom", offset, run), (place.Region, place.Offset, place.Run));
    }

    [Theory]
    [InlineData("lorom", "7E:8000", "work RAM")]
    [InlineData("hirom", "7F:0000", "work RAM")]
    [InlineData("exhirom", "$7E8000", "work RAM")]
    [InlineData("exlorom", "7F:FFFF", "work RAM")]
    [InlineData("lorom", "00:7FFF", "registers")]
    [InlineData("lorom", "$802100", "registers")]
    [InlineData("hirom", "00:0000", "registers")]
    [InlineData("hirom", "1F:6000", "registers")]
    [InlineData("lorom", "70:0000", "save RAM")]
    [InlineData("lorom", "FF:7FFF", "save RAM")]
    [InlineData("hirom", "20:6000", "save RAM")]
    [InlineData("hirom", "BF:7FFF", "save RAM")]
    [InlineData("lorom", "100:8000", "more than")]
    [InlineData("lorom", "00:18000", "more than")]
    [InlineData("hirom", "$1000000", "more than")]
    public void An_address_outside_the_rom_says_why(string mapping, string text, string reason)
    {
        var place = Locate(mapping, text);
        Assert.Null(place.Region);
        Assert.Contains(reason, place.Problem, StringComparison.Ordinal);
    }

    [Property(MaxTest = 2000)]
    public void A_run_ascends_and_stops_where_it_says(byte bank, ushort address, int which, ushort step)
    {
        var map = new SnesAddressMap(SnesMapping.All[(which & 0x7FFFFFFF) % 4]);
        var place = map.Locate(new ConsoleAddress(bank, address), _ => null);
        if (place.Region is null)
            return;

        var linear = ((long)bank << 16) | address;
        Assert.InRange(place.Offset, 0, 0x7FFFFF);
        var within = step % place.Run;
        Assert.Equal(place.Offset + within, map.Locate(new ConsoleAddress(null, linear + within), _ => null).Offset);
        var behind = map.Locate(new ConsoleAddress(null, linear + place.Run), _ => null);
        Assert.True(behind.Region is null || behind.Offset != place.Offset + place.Run);
    }

    [Fact]
    public void Every_byte_of_a_full_rom_has_an_address_unless_work_ram_hides_it()
    {
        Assert.Equal(0x400000 / 0x1000, Reached(SnesMapping.Lorom).Count);
        Assert.Equal(0x400000 / 0x1000, Reached(SnesMapping.Hirom).Count);
        Assert.Equal(Enumerable.Range(0x7E0, 8).Concat(Enumerable.Range(0x7F0, 8)), Enumerable.Range(0, 0x800).Except(Reached(SnesMapping.Exhirom)));
        Assert.Equal(Enumerable.Range(0x7F0, 16), Enumerable.Range(0, 0x800).Except(Reached(SnesMapping.Exlorom)));
    }

    private static HashSet<int> Reached(SnesMapping mapping)
    {
        var map = new SnesAddressMap(mapping);
        return [.. Enumerable.Range(0, 0x1000).Select(page => map.Locate(new ConsoleAddress(null, page << 12), _ => null)).Where(place => place.Region is not null).Select(place => (int)(place.Offset >> 12))];
    }

    private static AddressPlace Locate(string mapping, string text)
    {
        Assert.True(ConsoleAddress.TryParse(text, out var address));
        return new SnesAddressMap(SnesMapping.Named(mapping)).Locate(address, _ => null);
    }
}
