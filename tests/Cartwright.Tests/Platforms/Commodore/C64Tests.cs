using Cartwright.Platforms.Commodore;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class C64Tests
{
    // CRT file format: the dump of a cartridge has the cold start, the warm start and these five bytes.
    [Theory]
    [InlineData("8k", 0x2000)]
    [InlineData("16k", 0x4000)]
    [InlineData("type-5", 0x8000)]
    [InlineData("type-7", 0x20000)]
    [InlineData("type-8", 0x10000)]
    [InlineData("type-15", 0x80000)]
    [InlineData("type-17", 0x20000)]
    [InlineData("type-19", 0x100000)]
    public void The_mark_is_written_where_the_KERNAL_looks(string mapping, int size)
    {
        var bench = CommodorePrograms.C64(mapping, size);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("09800980" + CommodorePrograms.C64Mark, Convert.ToHexString(rom.AsSpan(0, StartHeader.Length)));
        Assert.Equal(TestBytes.L(size)[9..], rom[9..]);
    }

    [Theory]
    [InlineData("ultimax", 0x1000, "10F0 20F0 30F0")]
    [InlineData("ultimax", 0x1000, "10E0 20E0 30E0")]
    [InlineData("ultimax", 0x2000, "10E0 20E0 30E0")]
    [InlineData("ultimax-16k", 0x4000, "10E0 2080 30E0")]
    [InlineData("type-32", 0x100000, "10E0 20E0 0000")]
    public void Without_the_KERNAL_there_is_no_mark(string mapping, int size, string vectors)
    {
        var bench = CommodorePrograms.Ultimax(mapping, size, vectors);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal(TestBytes.L(size)[..0x100], rom[..0x100]);
    }

    [Theory]
    [InlineData("ultimax", 0x1FFC, 0x2000)]
    [InlineData("ultimax-16k", 0x3FFC, 0x4000)]
    [InlineData("type-32", 0x3FFC, 0x100000)]
    public void Vectors_stated_in_the_manifest_are_at_the_top_of_ROMH(string mapping, int at, int size)
    {
        var rom = CommodorePrograms.Ultimax(mapping, size, "0000 0000 0000").Header("reset", "$E020").Assemble().Rom();
        Assert.Equal("20E0", Convert.ToHexString(rom.AsSpan(at, 2)));
    }

    [Theory]
    [InlineData("8k", 1, 0x2000)]
    [InlineData("8k", 0x2001, null)]
    [InlineData("16k", 0x2001, 0x4000)]
    [InlineData("16k", 0x4001, null)]
    [InlineData("ultimax", 0x1000, 0x1000)]
    [InlineData("ultimax", 0x1001, 0x2000)]
    [InlineData("ultimax-16k", 1, 0x4000)]
    [InlineData("type-5", 0x8001, 0x20000)]
    [InlineData("type-5", 0x20001, 0x40000)]
    [InlineData("type-5", 0x80001, null)]
    [InlineData("type-7", 0x20001, null)]
    [InlineData("type-8", 1, 0x8000)]
    [InlineData("type-8", 0x10001, null)]
    [InlineData("type-15", 0x40001, 0x80000)]
    [InlineData("type-17", 0x20001, null)]
    [InlineData("type-19", 0x80001, 0x100000)]
    [InlineData("type-32", 1, 0x100000)]
    public void Sizes(string mapping, long needed, int? fit) => Assert.Equal(fit, C64Mappings.Named(mapping).Sizes.Fit(needed));

    [Theory]
    [InlineData("8k", "$8000", 0)]
    [InlineData("16k", "$A000", 0x2000)]
    [InlineData("ultimax", "$E000", -0x2000)]
    [InlineData("ultimax", "$F000", -0x1000)]
    [InlineData("ultimax-16k", "$8123", 0x0123)]
    [InlineData("ultimax-16k", "$E000", 0x2000)]
    [InlineData("type-5", "$8000", 0)]
    [InlineData("type-5", "03:8123", 0x6123)]
    [InlineData("type-5", "10:A000", 0x20000)]
    [InlineData("type-8", "02:A000", 0xA000)]
    [InlineData("type-19", "7F:8000", 0xFE000)]
    [InlineData("type-32", "$E000", 0x2000)]
    [InlineData("type-32", "01:8000", 0x4000)]
    [InlineData("type-32", "01:A000", 0x6000)]
    public void Addresses(string mapping, string text, long offset) => Assert.Equal(offset, Locate(mapping, text).Offset);

    [Theory]
    [InlineData("8k", "$A000", "BASIC")]
    [InlineData("8k", "$D000", "I/O")]
    [InlineData("16k", "$E000", "KERNAL")]
    [InlineData("ultimax", "$8000", "not shown")]
    [InlineData("8k", "01:8000", "no banks")]
    [InlineData("type-7", "10:8000", "last one")]
    [InlineData("type-19", "01:A000", "banks are seen")]
    public void Addresses_elsewhere(string mapping, string text, string words) => Assert.Contains(words, Locate(mapping, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData(0x0800, 0x1000)]
    [InlineData(0x1800, 0x2000)]
    public void A_program_for_the_top_lies_at_the_end(int length, int size)
    {
        var program = TestBytes.L(length);
        Convert.FromHexString("00FF00FF00FF").CopyTo(program, length - 6);
        var rom = new RomBench(new C64Platform()).Header("mapping", "ultimax").Program("rom", 0, program).Assemble().Rom();
        Assert.Equal(size, rom.Length);
        Assert.Equal(program, rom[^length..]);
        Assert.Equal(TestBytes.All(0xFF, size - length), rom[..^length]);
    }

    private static AddressPlace Locate(string mapping, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? C64Mappings.Named(mapping).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);
}
