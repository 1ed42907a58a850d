using Cartwright.Platforms;
using Cartwright.Tests.Oracles;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.MasterSystem;

public sealed class SegaHeaderTests
{
    [Theory]
    [InlineData("sms")]
    [InlineData("gg")]
    public void A_blank_header_is_filled_in(string id)
    {
        var bench = SegaPrograms.Bench(platform: PlatformCatalog.BuiltIn.Find(id)!);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("TMR SEGA"u8, rom.AsSpan(0x7FF0, 8));
        Assert.Equal(id == "sms" ? 0x4C : 0x7C, rom[0x7FFF]);
        Assert.True(rom.AsSpan(0x7FE0, 0x10).IndexOfAnyExcept((byte)0) < 0);
    }

    // ROM Header, smspower.org: the boot ROM looks before $8000, $4000 and $2000.
    [Theory]
    [InlineData(0x2000, 0x1FF0, 0xA)]
    [InlineData(0x4000, 0x3FF0, 0xB)]
    [InlineData(0x6000, 0x3FF0, 0xB)]
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
    [InlineData("64KiB", 0x8000, new[] { "CW4004", "CW4344" })]
    [InlineData("raw 0x0E", 0x8000, new[] { "CW4007", "CW4344" })]
    [InlineData("raw 0x0D", 0xC000, new[] { "CW4007", "CW4343" })]
    [InlineData("raw 0x02", 0x100000, new[] { "CW4007", "CW4343" })]
    [InlineData("raw 0x03", 0x8000, new[] { "CW4007", "CW4343" })]
    [InlineData("raw 0x09", 0x8000, new[] { "CW4007", "CW4343" })]
    [InlineData("1MiB", 0x100000, new[] { "CW4003" })]
    public void A_stated_size_code(string range, int size, string[] codes)
    {
        var bench = SegaPrograms.Bench(size).Header("checksumRange", range);
        bench.TryAssemble();
        Assert.Equal(codes, bench.Codes());
    }

    [Fact]
    public void A_tag_is_written_before_the_header_and_summed()
    {
        var bench = SegaPrograms.Bench(at: 0x200, digits: Convert.ToHexString("Quillmoor Softworks\0Lantern Tide\0"u8))
            .Header("sdscVersion", "1.02").Header("sdscDate", "2026-01-31").Header("sdscAuthor", "$0200").Header("sdscName", "$0214");
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
        var header = WorkedImageTests.Read(rom);
        Assert.Equal(("SDSC", "1.00", "2023-12-31", "none"), (header["sdscMark"], header["sdscVersion"], header["sdscDate"], header["sdscAuthor"]));
    }

    [Fact]
    public void A_tag_needs_version_and_date()
    {
        var bench = SegaPrograms.Bench().Header("sdscAuthor", "none");
        bench.TryAssemble();
        Assert.Equal(["CW4002", "CW4002"], bench.Codes().Where(code => code == "CW4002"));
    }

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_ROM() => Prop.ForAll(Settings().ToArbitrary(), settings =>
    {
        var size = settings.Large ? 0x20000 : 0x2000;
        var first = SegaPrograms.Bench(size);
        foreach (var (field, value) in settings.Fields)
            first.Header(field, value);
        var rom = first.Assemble().Rom();
        var again = SegaPrograms.Bench(size);
        foreach (var entry in WorkedImageTests.Read(rom).Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(rom, again.Assemble().Rom());
    });

    [Property(MaxTest = 100)]
    public void One_wrong_byte_in_the_range_is_found(ushort at, byte mask, bool whole)
    {
        var rom = SegaPrograms.Bench(0x10000).Header("checksumRange", whole ? "64KiB" : "32KiB").Assemble().Rom();
        Assert.True(WorkedImageTests.Read(rom).Checksums[0].Right);
        rom[at] ^= (byte)(mask | 1);
        var covered = at < 0x7FF0 || (whole && at >= 0x8000);
        Assert.True(at is >= 0x7FF0 and < 0x8000 || WorkedImageTests.Read(rom).Checksums[0].Right != covered);
    }

    [Theory]
    [InlineData("sms", "Sega Master System ROM image: 27026 (Rev.01) (32 KB)")]
    [InlineData("gg", "Sega Game Gear ROM image: 27026 (Rev.01) (32 KB)")]
    public void The_file_command_knows_console_product_and_size(string id, string words)
    {
        using var folder = new TempFolder();
        folder.Write("game.rom", SegaPrograms.Bench(platform: PlatformCatalog.BuiltIn.Find(id)!).Header("productCode", "27026").Header("version", "1").Assemble().Bytes("rom"));
        Assert.Equal(words, Tool.Succeed("file", folder.Path, "--brief", "game.rom").Trim());
    }

    private static Gen<(bool Large, (string Field, string Value)[] Fields)> Settings()
    {
        var product = Gen.Choose(0, 159999).Select(number => ("productCode", $"{number}"));
        var version = Gen.Choose(0, 15).Select(number => ("version", $"{number}"));
        var region = Gen.Choose(0, 15).Select(number => ("region", $"0x{number:X2}"));
        var reserved = Gen.Elements("0000", "FFFF", "2020", "0102").Select(text => ("reserved", text));
        var tag = Gen.Elements<(string, string)[]>([], [("sdscVersion", "1.02"), ("sdscDate", "1999-12-31"), ("sdscName", "0x0000")]);
        return from large in Gen.Elements(true, false)
               from range in Gen.Elements(large ? ["8KiB", "16KiB", "32KiB", "64KiB", "128KiB"] : new[] { "8KiB" })
               from a in product
               from b in version
               from c in region
               from d in reserved
               from e in tag
               select (large, new[] { ("checksumRange", range), a, b, c, d }.Concat(e).ToArray());
    }
}
