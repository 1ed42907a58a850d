using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Programs;
using Cartwright.Roms;
using Cartwright.Tests.Platforms;
using Xunit;

namespace Cartwright.Tests.Roms;

public sealed class SegmentPlacerTests
{
    private static readonly ImmutableArray<RegionRule> One = [new("rom", SizeRule.PowersOfTwo(0x100, 0x10000), "everything")];

    private static readonly ImmutableArray<RegionRule> Two = [One[0], One[0] with { Name = "chr" }];

    [Theory]
    [InlineData("0", 0)]
    [InlineData("0x8000", 0x8000)]
    [InlineData("$10", 0x10)]
    [InlineData("32KiB", 0x8000)]
    [InlineData("100", 100)]
    public void An_offset_places_a_raw_file(string offset, long at) => Assert.Equal($"rom {at:X} 4", Place(One, Raw(4), offset: offset));

    [Fact]
    public void An_offset_is_added_to_a_file_s_own_addresses() =>
        Assert.Equal("rom 110 2; rom 200 3", Place(One, Hex((0x10, 2), (0x100, 3)), offset: "0x100"));

    [Theory]
    [InlineData("$8000", "rom 0 4")]
    [InlineData("0x80FE", "rom FE 4")]
    [InlineData("03:8010", "rom 310 4")]
    [InlineData("33024", "rom 200 4")]
    public void An_address_places_a_raw_file_as_one_block(string address, string placed) => Assert.Equal(placed, Place(One, Raw(4), address: address));

    [Fact]
    public void A_file_s_own_addresses_place_it() => Assert.Equal("rom 10 2; rom 205 1", Place(One, Hex((0x8010, 2), (0x8105, 1))));

    [Fact]
    public void A_run_across_windows_is_cut_at_each() =>
        Assert.Equal("rom F0 10; rom 200 100; rom 400 8", Place(One, Hex((0x80F0, 0x118))));

    [Fact]
    public void An_address_moves_a_file_s_own_addresses() => Assert.Equal("rom 512 2", Place(One, Hex((0x12, 2)), address: "05:8000"));

    [Theory]
    [InlineData("$7FFF", "the address $7FFF is not in the ROM: it lies below the ROM")]
    [InlineData("00:8100", "the address 00:8100 is not in the ROM: it lies behind the window")]
    [InlineData("0xFFFF0000", "the address $FFFF0000 is not in the ROM: it lies behind the ROM")]
    public void An_address_outside_the_ROM_is_told_why(string address, string message)
    {
        var finding = Refused(One, Raw(4), address: address);
        Assert.Equal((RomFindings.NotInRom.Code, "address"), (finding.Code, finding.Place.Key));
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_s_own_address_outside_the_ROM_is_told_at_the_record()
    {
        var finding = Refused(One, Hex((0x8000, 1), (0xFFFF0000, 1)));
        Assert.Equal((RomFindings.NotInRom.Code, 2), (finding.Code, finding.Place.Line));
    }

    [Fact]
    public void A_run_that_leaves_the_ROM_is_told_at_the_address_where_it_does() =>
        Assert.Contains("$10000", Refused(One, Hex((0xFFFF, 2))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("here")]
    [InlineData("-1")]
    [InlineData("0x7FFFFFFFFFFFFFFF")]
    [InlineData("99999999999999999999")]
    public void What_is_no_offset_is_refused(string offset) => Assert.Equal(RomFindings.BadAddress.Code, Refused(One, Raw(4), offset: offset).Code);

    [Theory]
    [InlineData("here")]
    [InlineData("8000:")]
    [InlineData("0x7FFFFFFFFFFFFFFF")]
    public void What_is_no_address_is_refused_with_the_console_s_forms(string address)
    {
        var finding = Refused(One, Raw(4), address: address);
        Assert.Equal((RomFindings.BadAddress.Code, new TestAddresses().Forms), (finding.Code, finding.Expected));
    }

    [Fact]
    public void A_raw_file_needs_a_place() => Assert.Equal(RomFindings.NoPlace.Code, Refused(One, Raw(4)).Code);

    [Fact]
    public void The_region_is_named_where_there_are_several()
    {
        Assert.Equal("chr 5 4", Place(Two, Raw(4), offset: "5", region: "CHR"));
        Assert.Equal("rom 0 4", Place(Two, Raw(4), address: "$8000"));
        Assert.Equal(RomFindings.BadRegion.Code, Refused(Two, Raw(4), offset: "5").Code);
        Assert.Contains("`rom`, not in `chr`", Refused(Two, Raw(4), address: "$8000", region: "chr").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_region_is_told_with_the_nearest()
    {
        var finding = Refused(Two, Raw(4), offset: "0", region: "cha");
        Assert.Equal((RomFindings.BadRegion.Code, "Did you mean chr?"), (finding.Code, finding.Advice));
    }

    [Fact]
    public void Only_the_last_part_of_an_absolute_path_is_kept()
    {
        var placed = Run(One, Raw(4), "/home/somebody/game/main.bin", "0", null, null).Placed;
        Assert.Equal("main.bin", Assert.Single(placed).Program);
    }

    private static ProgramFile Raw(int length) => new("main.bin", ProgramFormat.Raw, [new Segment(0, new byte[length], SourcePlace.At("main.bin", 0))]);

    private static ProgramFile Hex(params (long Address, int Length)[] runs) =>
        new("main.hex", ProgramFormat.IntelHex, [.. runs.Select((run, line) => new Segment(run.Address, new byte[run.Length], SourcePlace.AtLine("main.hex", line + 1)))]);

    private static string Place(ImmutableArray<RegionRule> regions, ProgramFile program, string? offset = null, string? address = null, string? region = null)
    {
        var (placed, findings) = Run(regions, program, "main.bin", offset, address, region);
        Assert.Empty(findings);
        return string.Join("; ", placed.Select(segment => $"{segment.Region} {segment.Offset:X} {segment.Length:X}"));
    }

    private static Finding Refused(ImmutableArray<RegionRule> regions, ProgramFile program, string? offset = null, string? address = null, string? region = null) =>
        Assert.Single(Run(regions, program, "main.bin", offset, address, region).Findings);

    private static (ImmutableArray<PlacedSegment> Placed, ImmutableArray<Finding> Findings) Run(
        ImmutableArray<RegionRule> regions, ProgramFile program, string file, string? offset, string? address, string? region)
    {
        var log = new FindingLog();
        var entry = new ProgramEntry(Value("file", file)!, new SourcePlace("cart.json", 1)) { Offset = Value("offset", offset), Address = Value("address", address), Region = Value("region", region) };
        return (new SegmentPlacer(regions, [new NamedPlace("bootCode", "rom", 0x40, 0x10, "The boot code.")], new TestAddresses(), _ => null, log).Place(entry, program), log.ToSorted());
    }

    private static ManifestValue? Value(string key, string? text) => text is null ? null : new ManifestValue(text, new SourcePlace("cart.json", 1, Key: key));
}
