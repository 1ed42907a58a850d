using Cartwright.Platforms.MasterSystem;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.MasterSystem;

public sealed class SegaHeaderTests
{
    // A public program of 32 KiB.
    [Fact]
    public void A_published_header_is_read()
    {
        var rom = new byte[0x8000];
        Convert.FromHexString("544D5220534547410000FB680000004C").CopyTo(rom, 0x7FF0);
        var header = SegaPrograms.Read(rom);
        Assert.Equal(("TMR SEGA", "0", "sms-export", "32KiB"), (header["mark"], header["productCode"], header["region"], header["sumRange"]));
        Assert.Equal(0x68FBUL, header.Checksums[0].Stored);
    }

    // ROM Header, smspower.org: the boot ROM looks before $8000, $4000 and $2000.
    [Theory]
    [InlineData(0x2000, 0x1FF0, 0xA)]
    [InlineData(0x4000, 0x3FF0, 0xB)]
    [InlineData(0x8000, 0x7FF0, 0xC)]
    [InlineData(0xC000, 0x7FF0, 0xC)]
    [InlineData(0x20000, 0x7FF0, 0xC)]
    public void Place_and_size_code_follow_from_the_size(int size, int place, int code)
    {
        var rom = SegaPrograms.Bench(size).Size("rom", size).Assemble().Rom();
        Assert.Equal(place, rom.AsSpan().IndexOf("TMR SEGA"u8));
        Assert.Equal(0x40 | code, rom[place + 15]);
        Assert.Equal((ushort)rom.Select((value, at) => at < (code == 0xC ? 0x8000 : place) && (at < place || at >= place + 16) ? value : 0).Sum(), rom[place + 10] | (rom[place + 11] << 8));
    }

    // A smaller code is legal and stays; one beyond the ROM gives way to the safest.
    [Theory]
    [InlineData(0x20000, 0x4F, 0x4F, new string[0])]
    [InlineData(0x20000, 0x4C, 0x4C, new string[0])]
    [InlineData(0x20000, 0x4E, 0x4E, new string[0])]
    [InlineData(0x8000, 0x40, 0x4C, new[] { "CW4006" })]
    [InlineData(0x20000, 0x4D, 0x4C, new[] { "CW4006" })]
    [InlineData(0x8000, 0x45, 0x4C, new[] { "CW4006" })]
    public void The_programs_own_size_code(int size, int held, int written, string[] codes)
    {
        var bench = SegaPrograms.Bench(size, at: 0x7FF0, digits: "544D52205345474100000000000000" + held.ToString("X2"));
        Assert.Equal(written, bench.Assemble().Rom()[0x7FFF]);
        Assert.Equal(codes, bench.Codes());
    }

    [Theory]
    [InlineData("128KiB", 0x20000, new string[0])]
    [InlineData("8KiB", 0x8000, new string[0])]
    [InlineData("64KiB", 0x8000, new[] { "CW4342" })]
    [InlineData("raw 0x0E", 0x8000, new[] { "CW4342" })]
    [InlineData("raw 0x0D", 0xC000, new[] { "CW4341" })]
    [InlineData("raw 0x02", 0x100000, new[] { "CW4341" })]
    [InlineData("raw 0x03", 0x8000, new[] { "CW4341" })]
    [InlineData("raw 0x09", 0x8000, new[] { "CW4341" })]
    [InlineData("1MiB", 0x100000, new[] { "CW4341" })]
    public void A_stated_size_code(string range, int size, string[] codes)
    {
        var bench = SegaPrograms.Bench(size).Header("sumRange", range);
        bench.TryAssemble();
        Assert.Equal(codes, bench.Codes());
    }

    [Fact]
    public void A_tag_is_written_before_the_header_and_summed()
    {
        var bench = SegaPrograms.Bench(at: 0x200, digits: Convert.ToHexString("Quillmoor Softworks\0Lantern Tide\0"u8))
            .Header("tagVersion", "1.02").Header("tagDate", "2026-01-31").Header("tagAuthor", "$0200").Header("tagName", "$0214");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("53445343" + "0102" + "31012620" + "0002" + "1402" + "FFFF", Convert.ToHexString(rom.AsSpan(0x7FE0, 0x10)));
        Assert.Equal((ushort)rom.Take(0x7FF0).Sum(value => value), rom[0x7FFA] | (rom[0x7FFB] << 8));
    }

    // SDSC Header, smspower.org: the tag of a small ROM lies before its header.
    [Fact]
    public void A_tag_of_a_small_ROM_is_read()
    {
        var rom = SegaPrograms.Bench(0x4000, at: 0x3FE0, digits: "53445343010031122320FFFFFFFFFFFF").Assemble().Rom();
        var header = SegaPrograms.Read(rom);
        Assert.Equal(("SDSC", "1.00", "2023-12-31", "0xFFFF"), (header["tag"], header["tagVersion"], header["tagDate"], header["tagAuthor"]));
    }

    [Property(MaxTest = 100)]
    public void One_wrong_byte_in_the_range_is_found(ushort at, byte mask, bool whole)
    {
        var rom = SegaPrograms.Bench(0x10000).Header("sumRange", whole ? "64KiB" : "32KiB").Assemble().Rom();
        Assert.True(SegaPrograms.Read(rom).Checksums[0].Right);
        rom[at] ^= (byte)(mask | 1);
        var covered = at < 0x7FF0 || (whole && at >= 0x8000);
        Assert.True(at is >= 0x7FF0 and < 0x8000 || SegaPrograms.Read(rom).Checksums[0].Right != covered);
    }

    [Theory]
    [InlineData("160000")]
    [InlineData("-1")]
    [InlineData("12A")]
    [InlineData("hex 123")]
    [InlineData("")]
    public void No_product_codes(string text) => Assert.NotNull(new ProductCodeCodec().Write(text, new byte[3]));

    [Theory]
    [InlineData("2001-02-29")]
    [InlineData("31.12.2001")]
    [InlineData("hex 112233")]
    public void No_dates(string text) => Assert.NotNull(new BcdCodec(BcdForm.Date).Write(text, new byte[4]));

    // Digits alone make no day: the text must be one that can be written back.
    [Theory]
    [InlineData("30022620", "hex 30022620")]
    [InlineData("01010000", "hex 01010000")]
    [InlineData("29022420", "2024-02-29")]
    public void Dates_read(string digits, string text)
    {
        var back = new byte[4];
        Assert.Equal(text, new BcdCodec(BcdForm.Date).Read(Convert.FromHexString(digits)));
        Assert.Null(new BcdCodec(BcdForm.Date).Write(text, back));
        Assert.Equal(digits, Convert.ToHexString(back));
    }

    [Fact]
    public void The_console_decides_whether_the_sum_is_enforced()
    {
        Assert.True(SegaPlatform.MasterSystem().Layouts[0].Headers[0].Checksums[0].Enforced);
        Assert.False(SegaPlatform.GameGear().Layouts[0].Headers[0].Checksums[0].Enforced);
    }
}
