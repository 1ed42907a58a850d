using Cartwright.Platforms.GameBoy;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyAddressesTests
{
    private static readonly GameBoyAddresses Map = new();

    // File offset = bank x 0x4000 + (address AND 0x3FFF): Pan Docs, Memory Map. Numbers above 16 bits: common practice.
    [Theory]
    [InlineData("$0000", 0x000000, 0x8000)]
    [InlineData("$0150", 0x000150, 0x7EB0)]
    [InlineData("$3FFF", 0x003FFF, 0x4001)]
    [InlineData("$4000", 0x004000, 0x4000)]
    [InlineData("$7FFF", 0x007FFF, 0x0001)]
    [InlineData("00:0000", 0x000000, 0x4000)]
    [InlineData("00:0150", 0x000150, 0x3EB0)]
    [InlineData("01:4000", 0x004000, 0x4000)]
    [InlineData("03:4000", 0x00C000, 0x4000)]
    [InlineData("03:7FFF", 0x00FFFF, 0x0001)]
    [InlineData("1FF:4123", 0x7FC123, 0x3EDD)]
    [InlineData("$034000", 0x00C000, 0x4000)]
    [InlineData("0x1FF7FFF", 0x7FFFFF, 0x0001)]
    public void Addresses_of_the_ROM_have_an_offset_and_a_run(string text, long offset, long run) =>
        Assert.Equal(AddressPlace.In("rom", offset, run), Locate(text));

    [Theory]
    [InlineData("$8000", "$8000 is video RAM")]
    [InlineData("$9FFF", "$9FFF is video RAM")]
    [InlineData("$A000", "$A000 is cartridge RAM")]
    [InlineData("$C000", "$C000 is work RAM")]
    [InlineData("$E000", "$E000 is a repeat of work RAM")]
    [InlineData("$FE00", "$FE00 is sprite memory")]
    [InlineData("$FEA0", "$FEA0 is an area without memory")]
    [InlineData("$FF00", "$FF00 is registers")]
    [InlineData("$FF80", "$FF80 is high RAM")]
    [InlineData("$03A000", "$A000 is cartridge RAM")]
    [InlineData("02:C000", "$C000 is work RAM")]
    [InlineData("00:4000", "bank 0 is seen at $0000-$3FFF")]
    [InlineData("03:0150", "bank $03 is seen at $4000-$7FFF")]
    [InlineData("$030150", "bank $03 is seen at $4000-$7FFF")]
    [InlineData("200:4000", "bank $200 (512) is above the last one, $1FF (511)")]
    [InlineData("03:14000", "$14000 is more than the 16 bits an address has")]
    public void Other_addresses_say_what_they_are(string text, string problem) => Assert.Equal(AddressPlace.Nowhere(problem), Locate(text));

    [Property]
    public void Every_offset_of_a_bank_is_found_by_bank_and_by_number(ushort bank, ushort within)
    {
        bank = (ushort)(1 + (bank % 0x1FF));
        within = (ushort)(0x4000 | (within & 0x3FFF));
        var place = Map.Locate(new ConsoleAddress(bank, within), _ => null);
        Assert.Equal((bank * 0x4000L) + within - 0x4000, place.Offset);
        Assert.Equal(place, Map.Locate(new ConsoleAddress(null, ((long)bank << 16) | within), _ => null) with { Run = place.Run });
        Assert.Equal(0x8000 - within, place.Run);
    }

    private static AddressPlace Locate(string text)
    {
        Assert.True(ConsoleAddress.TryParse(text, out var address));
        return Map.Locate(address, _ => null);
    }
}
