using Cartwright.Platforms;
using Cartwright.Platforms.Msx;
using Xunit;

namespace Cartwright.Tests.Platforms.Msx;

public sealed class MsxCheckTests
{
    [Theory]
    [InlineData("4344", "CW4386")]
    [InlineData("C300", "CW4385")]
    [InlineData("4142", null)]
    public void The_mark(string mark, string? code) => Only(code, MsxPrograms.Bench(digits: mark));

    [Fact]
    public void Halves_that_have_changed_places()
    {
        var rom = MsxPrograms.Bench(size: 0x8000).Assemble().Rom();
        var bench = new RomBench(new MsxPlatform()).Program("rom", 0, [.. rom[0x4000..], .. rom[..0x4000]]);
        bench.TryAssemble();
        var finding = Assert.Single(bench.Log.ToSorted(), finding => finding.Rule == MsxFindings.NoMark);
        Assert.Contains("it lies at 0x4000", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("page-1", 0x4000, 0x7FFF, null)]
    [InlineData("page-1", 0x4000, 0x8010, "CW4387")]
    [InlineData("page-1", 0x4000, 0x0100, "CW4387")]
    [InlineData("page-1", 0x8000, 0x8010, null)]
    [InlineData("page-2", 0x4000, 0x4010, "CW4387")]
    [InlineData("page-0", 0xC000, 0x0100, null)]
    [InlineData("ascii8", 0x20000, 0x5FFF, null)]
    [InlineData("ascii8", 0x20000, 0x6000, "CW4389")]
    [InlineData("ascii16", 0x20000, 0x6000, null)]
    [InlineData("ascii16", 0x20000, 0x8000, "CW4389")]
    [InlineData("konami", 0x20000, 0xC000, "CW4387")]
    public void Init(string mapping, int size, int init, string? code) => Only(code, MsxPrograms.Bench(mapping, size, init: init));

    [Fact]
    public void An_INIT_in_page_2_tells_of_the_mapping()
    {
        var bench = MsxPrograms.Bench(init: 0x8010);
        bench.TryAssemble();
        Assert.Contains("page-2", bench.Log.ToSorted()[0].Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("statement", "0x0000", "CW4388")]
    [InlineData("statement", "0x4010", null)]
    [InlineData("device", "0x4010", null)]
    public void Something_must_start(string field, string value, string? code) => Only(code, MsxPrograms.Bench(init: 0).Header(field, value));

    [Fact]
    public void A_BASIC_program_starts_without_INIT() => Only(null, MsxPrograms.Bench("page-2", init: 0).Header("text", "$8010"));

    [Theory]
    [InlineData(0x8000, "CW4390")]
    [InlineData(0x4000, null)]
    public void A_second_page_nobody_selects(int size, string? code) => Only(code, MsxPrograms.Bench(size: size, at: 0x20, digits: "0000"));

    [Theory]
    [InlineData("CD2400")]
    [InlineData("C32400")]
    [InlineData("D3A8")]
    public void A_second_page_that_is_selected(string digits) => Only(null, MsxPrograms.Bench(size: 0x8000, at: 0x20, digits: digits));

    [Theory]
    [InlineData("544954454C20", "CW4391")]
    [InlineData("000100000000", "CW4391")]
    [InlineData("000000C00000", "CW4391")]
    [InlineData("104010400000", null)]
    [InlineData("000000001040", "CW4392")]
    [InlineData("0000000010C0", "CW4392")]
    public void Handlers_and_BASIC_programs(string digits, string? code) => Only(code, MsxPrograms.Bench(at: 4, digits: digits));

    [Fact]
    public void Reserved_bytes() => Only("CW4393", MsxPrograms.Bench(at: 0x0A, digits: "4C54"));

    [Theory]
    [InlineData("konami-scc", 0x80000, "CW4394")]
    [InlineData("konami-scc", 0x40000, null)]
    [InlineData("konami", 0x80000, null)]
    public void A_bank_that_the_sound_chip_hides(string mapping, int size, string? code) => Only(code, MsxPrograms.Bench(mapping, size));

    [Fact]
    public void A_load_header()
    {
        var bench = new RomBench(new MsxPlatform()).Program("rom", 0, [0xFE, 0x00, 0x40, 0xFF, 0x7F, 0x10, 0x40, .. MsxPrograms.Bench().Assemble().Rom()]);
        bench.TryAssemble();
        Assert.Single(bench.Codes(), "CW4395");
    }

    [Theory]
    [InlineData("ascii8", "3200503200703200903200B0", "CW4396")]
    [InlineData("konami", "3200503200703200903200B0", "CW4396")]
    [InlineData("konami-scc", "3200503200703200903200B0", null)]
    [InlineData("generic8", "3200503200703200903200B0", null)]
    public void A_program_for_another_mapper(string mapping, string digits, string? code)
    {
        var program = new byte[0x10000];
        Convert.FromHexString("0000104000000000").CopyTo(program, 0);
        Convert.FromHexString(digits).CopyTo(program, 0x10);
        Only(code, new RomBench(new MsxPlatform()).Header("mapping", mapping).Program("rom", 0, program));
    }

    [Theory]
    [InlineData("page-1", 0x4000, 0x4010, "page-1")]
    [InlineData("page-1", 0xC000, 0x8010, "page-1")]
    [InlineData("page-2", 0x4000, 0x8010, "page-2")]
    [InlineData("page-0", 0xC000, 0x4010, "page-0")]
    [InlineData("ascii8", 0x20000, 0x4010, null)]
    public void A_cartridge_is_recognised(string mapping, int size, int init, string? variant)
    {
        var rom = MsxPrograms.Bench(mapping, size, init: init).Assemble().Rom();
        Assert.Equal((Certainty.Structural, variant, 0), (Ask(rom)!.Certainty, Ask(rom)!.Variant, Ask(rom)!.PrefixLength));
    }

    [Fact]
    public void A_load_header_is_a_prefix() =>
        Assert.Equal(7, Ask([0xFE, 0x00, 0x40, 0xFF, 0x7F, 0x10, 0x40, .. MsxPrograms.Bench().Assemble().Rom()])!.PrefixLength);

    [Fact]
    public void A_BASIC_program_is_recognised() =>
        Assert.Equal("page-2", Ask(MsxPrograms.Bench("page-2", init: 0).Header("text", "$8010").Assemble().Rom())!.Variant);

    [Theory]
    [InlineData(0x4010, 0x1000)]
    [InlineData(0xC000, 0x4000)]
    [InlineData(0x0000, 0x4000)]
    [InlineData(0x7010, 0x2000)]
    public void Other_bytes_are_not(int init, int length) => Assert.Null(Ask([0x41, 0x42, .. MsxPrograms.Whole(length, init: init)[2..]]));

    [Fact]
    public void Text_and_blank_files_are_not_recognised()
    {
        var text = new byte[0x4000];
        for (var i = 0; i < text.Length; i++)
            text[i] = (byte)(i % 40 == 39 ? '\n' : 'A' + (i % 26));
        Assert.Equal((byte)'B', text[1]);
        Assert.Null(Ask(text));
        for (var length = 0; length < 0x40; length++)
        {
            Assert.Null(Ask(new byte[length]));
            Assert.Null(Ask([0x41, 0x42, .. new byte[length]]));
            Assert.Null(Ask([0xFE, 0x41, 0x42, .. new byte[length]]));
        }

        Assert.Null(Ask(TestBytes.All(0xFF, 0x8000)));
    }

    private static RecognitionClaim? Ask(byte[] file) => new MsxPlatform().Recognise(file);

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
