using Cartwright.Findings;
using Cartwright.Platforms.Commodore;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class C64CheckTests
{
    [Theory]
    [InlineData("0980 0980 C3C2CD3830", null)]
    [InlineData("0980 0980 C3C2CD3831", "CW4523")]
    [InlineData("0980 0980 4C0080EAEA", "CW4523")]
    [InlineData("0980 0980 4130C3C2CD", "CW4523")]
    public void The_mark(string header, string? code) => Only(code, C64(header: header));

    [Fact]
    public void A_cartridge_that_is_started_by_hand_says_so() =>
        Only("CW4524", C64(header: "0980 0980 4C0080EAEA").Header("mark", "0x4C0080EAEA"));

    [Theory]
    [InlineData("8k", "FF9F", null)]
    [InlineData("8k", "0980", null)]
    [InlineData("8k", "0880", "CW4527")]
    [InlineData("8k", "0081", null)]
    [InlineData("8k", "00A0", "CW4526")]
    [InlineData("8k", "0010", "CW4526")]
    [InlineData("16k", "00A0", null)]
    [InlineData("16k", "00C0", "CW4526")]
    [InlineData("type-8", "FFBF", null)]
    [InlineData("type-19", "00A0", "CW4526")]
    public void The_cold_start(string mapping, string start, string? code) =>
        Only(code, C64(mapping, mapping switch { "8k" => 0x2000, "16k" => 0x4000, "type-8" => 0x8000, _ => 0x100000 }, start + "0980 0000000000"));

    [Theory]
    [InlineData("0090 0980", "CW4525")]
    [InlineData("0980 0090", "CW4528")]
    [InlineData("0980 0003", null)]
    public void Starts_where_no_program_is(string starts, string? code) => Only(code, C64(size: 0x1000, header: starts + "0000000000"));

    [Fact]
    public void Halves_that_have_changed_places()
    {
        var rom = C64("16k", 0x4000).Assemble().Rom();
        var bench = new RomBench(new C64Platform()).Header("mapping", "16k").Program("rom", 0, [.. rom[0x2000..], .. rom[..0x2000]]);
        Only("CW4529", bench);
        Assert.Contains("it lies at 0x2004", bench.Log.ToSorted()[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("16k", 0x2000, "CW4530")]
    [InlineData("16k", 0x2001, null)]
    [InlineData("8k", 0x2000, null)]
    public void A_half_with_nothing_in_it(string mapping, int size, string? code) => Only(code, C64(mapping, size));

    [Theory]
    [InlineData("8k", 0x2000, "low", "high", null)]
    [InlineData("8k", 0x2000, "high", "low", "CW4531")]
    [InlineData("8k", 0x2000, "low", "low", "CW4531")]
    [InlineData("8k", 0x2000, "high", "high", "CW4532")]
    [InlineData("16k", 0x4000, "low", "low", null)]
    [InlineData("16k", 0x4000, "high", "high", "CW4532")]
    [InlineData("type-5", 0x8000, "low", "low", null)]
    [InlineData("type-19", 0x100000, "high", "low", null)]
    [InlineData("type-19", 0x100000, "high", "high", "CW4532")]
    [InlineData("8k", 0x2000, "0x02", "high", "CW4531")]
    public void Lines(string mapping, int size, string exrom, string game, string? code) => Only(code, C64(mapping, size).Header("exrom", exrom).Header("game", game));

    // Some containers of this board say low and low, with which the machine would start without its vectors.
    [Theory]
    [InlineData("high", null)]
    [InlineData("low", "CW4531")]
    public void Lines_of_two_flash_chips(string exrom, string? code) => Only(code, Ultimax("type-32", 0x100000).Header("exrom", exrom).Header("game", "low"));

    [Fact]
    public void No_finding_about_lines_is_an_error() =>
        Assert.All([CommodoreFindings.OtherLines, CommodoreFindings.NoLines], rule => Assert.Equal(FindingSeverity.Warning, rule.Severity));

    [Theory]
    [InlineData("ultimax", 0x2000, "10E0 0010 30E0", "CW4533")]
    [InlineData("ultimax", 0x2000, "10E0 0080 30E0", "CW4533")]
    [InlineData("ultimax-16k", 0x4000, "10E0 0080 30E0", null)]
    [InlineData("ultimax", 0x2000, "0003 20E0 0003", null)]
    [InlineData("type-32", 0x4000, "10E0 0040 30E0", "CW4533")]
    public void The_vectors(string mapping, int size, string vectors, string? code) => Only(code, Ultimax(mapping, size, vectors));

    [Theory]
    [InlineData("00E0 00F8 00F8", "CW4534")]
    [InlineData("00F8 00F8 00E0", "CW4534")]
    [InlineData("00F8 00E0 00F8", "CW4533")]
    public void Vectors_into_what_no_program_fills(string vectors, string code) =>
        Only(code, new RomBench(new C64Platform()).Header("mapping", "ultimax").Size("rom", 0x2000).Program("rom", -0x800, Noise(0x800, 0x7FA, vectors)));

    // Type 32 starts in ROMH of bank 0: an image without a start-up routine there does not start.
    [Fact]
    public void A_board_of_two_flash_chips_needs_its_start_routine() =>
        Only("CW4002", new RomBench(new C64Platform()).Header("mapping", "type-32").Header("nmi", "$8000").Header("irq", "$8000").Program("rom", 0, TestBytes.L(0x2000)));

    [Fact]
    public void A_missing_cold_start_is_told_once() => Only("CW4002", C64(header: "0000 0980 0000000000"));

    [Theory]
    [InlineData("8k", 0x2000)]
    [InlineData("16k", 0x4000)]
    public void A_load_address(string mapping, int size)
    {
        var rom = C64(mapping, size).Assemble().Rom();
        Only("CW4520", new RomBench(new C64Platform()).Header("mapping", mapping).Program("rom", 0, [0x00, 0x80, .. rom]));
    }

    [Fact]
    public void A_container_as_a_program()
    {
        var file = C64().Assemble().File(new C64Platform());
        var bench = new RomBench(new C64Platform()).Program("rom", 0, file);
        Only("CW4522", bench);
        Assert.Contains("\"skip\": 80` and `\"length\": 8192", bench.Log.ToSorted()[0].Advice, StringComparison.Ordinal);
    }
}
