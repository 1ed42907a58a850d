using Cartwright.Headers;
using Cartwright.Platforms.Msx;
using Cartwright.Roms;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Msx;

public sealed class MsxTests
{
    // Develop a program in cartridge ROM, msx.org; sizes and places of plain ROMs.
    [Theory]
    [InlineData("page-1", 0x2000, 0, 0x4010)]
    [InlineData("page-1", 0x4000, 0, 0x4010)]
    [InlineData("page-1", 0x8000, 0, 0x4010)]
    [InlineData("page-1", 0xC000, 0, 0x4010)]
    [InlineData("page-2", 0x2000, 0, 0x8010)]
    [InlineData("page-2", 0x4000, 0, 0x8010)]
    [InlineData("page-0", 0xC000, 0x4000, 0x4010)]
    [InlineData("page-0", 0x10000, 0x4000, 0x4010)]
    [InlineData("ascii8", 0x20000, 0, 0x4010)]
    [InlineData("ascii16", 0x60000, 0, 0x4010)]
    [InlineData("konami", 0x20000, 0, 0x4010)]
    [InlineData("konami-scc", 0x40000, 0, 0x4010)]
    [InlineData("generic8", 0x200000, 0, 0x4010)]
    [InlineData("generic16", 0x400000, 0, 0x4010)]
    [InlineData("zemina8", 0x20000, 0, 0x4010)]
    [InlineData("zemina16", 0x20000, 0, 0x4010)]
    [InlineData("msx-dos2", 0x10000, 0, 0x4010)]
    public void The_mark_is_written_where_the_BIOS_looks(string mapping, int size, int header, int init)
    {
        var bench = MsxPrograms.Bench(mapping, size, init: init);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal($"4142{init & 0xFF:X2}{init >> 8:X2}000000000000000000000000", Convert.ToHexString(rom.AsSpan(header, MsxHeader.Length)));
        Assert.Equal(MsxPrograms.Whole(size, header, init)[(header + 0x10)..], rom[(header + 0x10)..]);
    }

    [Theory]
    [InlineData("page-1", 1, 0x2000)]
    [InlineData("page-1", 0x4001, 0x8000)]
    [InlineData("page-1", 0xC001, null)]
    [InlineData("page-2", 0x4001, null)]
    [InlineData("page-0", 1, 0xC000)]
    [InlineData("ascii8", 0x20001, 0x40000)]
    [InlineData("ascii8", 0x200001, null)]
    [InlineData("ascii16", 0x200001, null)]
    [InlineData("konami", 0x80000, 0x80000)]
    [InlineData("konami-scc", 0x80001, null)]
    [InlineData("generic16", 0x400000, 0x400000)]
    public void Sizes(string mapping, long needed, int? fit) => Assert.Equal(fit, MsxMapping.Named(mapping).Sizes.Fit(needed));

    [Theory]
    [InlineData("page-1", "$4000", 0)]
    [InlineData("page-1", "$8000", 0x4000)]
    [InlineData("page-2", "$8000", 0)]
    [InlineData("page-0", "$4000", 0x4000)]
    [InlineData("ascii8", "$6000", 0x2000)]
    [InlineData("ascii8", "07:8123", 0xE123)]
    [InlineData("ascii16", "07:8123", 0x1C123)]
    [InlineData("konami", "$07A123", 0xE123)]
    public void Addresses(string mapping, string text, long offset) => Assert.Equal(offset, Locate(mapping, text).Offset);

    [Theory]
    [InlineData("page-1", "$0000", "BIOS")]
    [InlineData("page-2", "$4000", "before the ROM")]
    [InlineData("page-2", "$C000", "RAM or behind")]
    [InlineData("page-1", "01:4000", "no banks")]
    [InlineData("konami", "40:8000", "last one")]
    [InlineData("ascii16", "80:8000", "last one")]
    [InlineData("msx-dos2", "01:8000", "banks are seen")]
    public void Addresses_elsewhere(string mapping, string text, string words) => Assert.Contains(words, Locate(mapping, text).Problem, StringComparison.Ordinal);

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(ushort statement, ushort device, byte reserved, bool second)
    {
        var mapping = second ? "page-2" : "page-1";
        var first = MsxPrograms.Bench(mapping, init: second ? 0x8010 : 0x4010).Header("statement", $"${statement:X4}").Header("device", $"${device:X4}").Header("reserved", $"{reserved:X2}0000000000");
        var rom = first.Assemble().Rom();
        var again = MsxPrograms.Bench(mapping, init: second ? 0x8010 : 0x4010);
        foreach (var entry in HeaderReader.Read(MsxHeader.Table(MsxMapping.Named(mapping)), rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(rom, again.Assemble().Rom());
    }

    [Fact]
    public void The_file_command_knows_the_cartridge()
    {
        using var folder = new TempFolder();
        folder.Write("game.rom", MsxPrograms.Bench().Assemble().Bytes("rom"));
        Assert.Contains("MSX ROM, init=0x4010", Tool.Succeed("file", folder.Path, "--brief", "game.rom"), StringComparison.Ordinal);
    }

    private static AddressPlace Locate(string mapping, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? MsxMapping.Named(mapping).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);
}
