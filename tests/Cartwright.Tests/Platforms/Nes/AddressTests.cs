using Cartwright.Manifests;
using Cartwright.Platforms.Nes;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

public sealed class AddressTests
{
    [Theory]
    [InlineData("nrom", null, "$8000", 0x0000, 0x8000)]
    [InlineData("nrom", null, "$C000", 0x4000, 0x4000)]
    [InlineData("nrom", null, "$FFFA", 0x7FFA, 6)]
    [InlineData("nrom", 16 * K, "$C000", 0x0000, 0x4000)]
    [InlineData("nrom", 16 * K, "$8000", 0x0000, 0x4000)]
    [InlineData("nrom", 16 * K, "$FFFA", 0x3FFA, 6)]
    [InlineData("nrom", 32 * K, "00:C000", 0x4000, 0x4000)]
    [InlineData("uxrom", null, "07:C000", 0x1C000, 0x4000)]
    [InlineData("uxrom", 128 * K, "07:C000", 0x1C000, 0x4000)]
    [InlineData("uxrom", null, "03:8010", 0x0C010, 0x3FF0)]
    [InlineData("uxrom", 128 * K, "$C000", 0x1C000, 0x4000)]
    [InlineData("uxrom", 128 * K, "$FFFA", 0x1FFFA, 6)]
    [InlineData("uxrom", null, "$8000", 0x00000, 0x4000)]
    [InlineData("mmc3", null, "05:A000", 0x0A000, 0x2000)]
    [InlineData("mmc3", 512 * K, "$E000", 0x7E000, 0x2000)]
    [InlineData("mmc1", 256 * K, "$C000", 0x3C000, 0x4000)]
    [InlineData("mmc1", 256 * K, "03:C000", 0x0C000, 0x4000)]
    [InlineData("mmc2", 128 * K, "$A000", 0x1A000, 0x6000)]
    [InlineData("mmc2", 128 * K, "0D:A000", 0x1A000, 0x2000)]
    [InlineData("axrom", null, "$C000", 0x4000, 0x4000)]
    [InlineData("axrom", null, "02:C000", 0x14000, 0x4000)]
    [InlineData("nsf-style", null, "10:F000", 0x10000, 0x1000)]
    [InlineData("180", null, "$8000", 0x0000, 0x4000)]
    [InlineData("180", null, "05:C000", 0x14000, 0x4000)]
    public void Places(string mapper, int? size, string address, long offset, long run)
    {
        var place = Locate(mapper, size, address);
        Assert.Equal(new AddressPlace("prg", offset, run, null), place);
    }

    [Theory]
    [InlineData("uxrom", 0x07C000, 0x1C000)]
    [InlineData("uxrom", 0x008000, 0x00000)]
    [InlineData("axrom", 0x02C000, 0x14000)]
    [InlineData("mmc3", 0x05A000, 0x0A000)]
    public void Numbers_of_program_files_hold_the_bank_above_the_address(string mapper, long number, long offset) =>
        Assert.Equal(offset, Map(mapper).Locate(new ConsoleAddress(null, number), _ => null).Offset);

    [Theory]
    [InlineData("nrom", null, "$0200", "work RAM")]
    [InlineData("nrom", null, "$2000", "register")]
    [InlineData("nrom", null, "$5000", "expansion")]
    [InlineData("nrom", null, "$6000", "RAM of the cartridge")]
    [InlineData("nrom", null, "01:8000", "no bank 01")]
    [InlineData("uxrom", null, "$C000", "state it")]
    [InlineData("uxrom", null, "$C000", "03:C000")]
    [InlineData("uxrom", 128 * K, "03:C000", "always shows bank 07")]
    [InlineData("mmc2", 128 * K, "0E:A000", "always shows bank 0D")]
    [InlineData("180", null, "01:8000", "always shows bank 00")]
    [InlineData("180", null, "$C000", "switches")]
    [InlineData("mmc3", 512 * K, "$C000", "switches")]
    [InlineData("mmc3", null, "40:8000", "banks 00 to 3F")]
    [InlineData("uxrom", null, "7FFFFFFF:8000", "banks 00 to FF")]
    [InlineData("1000", null, "$8000", "offset")]
    [InlineData("nrom", null, "00:18000", "16 bits")]
    public void Problems(string mapper, int? size, string address, string words)
    {
        var place = Locate(mapper, size, address);
        Assert.Null(place.Region);
        Assert.Contains(words, place.Problem, StringComparison.Ordinal);
    }

    [Property]
    public bool No_address_of_any_mapper_leads_out_of_its_bank(int row, ushort address, byte bank)
    {
        var mapper = NesMappers.All[(int)((uint)row % NesMappers.All.Length)];
        var map = new NesPlatform().Layout(Settings(mapper)).Addresses;
        var place = map.Locate(new ConsoleAddress(bank, address), _ => mapper.PrgMax);
        return place.Region is null
            ? place.Problem is not null
            : place.Offset >= 0 && place.Run > 0 && place.Offset + place.Run <= mapper.PrgLargest && (place.Offset + place.Run) % 0x1000 == 0;
    }

    private static AddressPlace Locate(string mapper, int? size, string address)
    {
        Assert.True(ConsoleAddress.TryParse(address, out var read));
        return Map(mapper).Locate(read, region => region == "prg" ? size : null);
    }

    private static AddressMap Map(string mapper) => new NesPlatform().Layout(Settings(mapper)).Addresses;

    private static HeaderSettings Settings(NesMapper mapper) => Settings(mapper.Name);

    private static HeaderSettings Settings(string mapper) => HeaderSettings.None with
    {
        Values = HeaderSettings.None.Values.Add("mapper", new ManifestValue(mapper, default)),
    };
}
