using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.MasterSystem;
using Cartwright.Roms;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.MasterSystem;

public sealed class SegaTests
{
    private const int K = 1 << 10;

    // ROM Header (smspower.org): values computed by two independent programs for the bytes of the generator;
    // product 27026, version 0, region 4. D and 2 are faulty in boot ROMs, so the value of 2 is checked by the function alone.
    [Theory]
    [InlineData(8 * K, "8KiB", "17D12670204A", "7F093F47")]
    [InlineData(16 * K, "16KiB", "63CD2670204B", "18BFB567")]
    [InlineData(32 * K, "32KiB", "1B902670204C", "25BD8E81")]
    [InlineData(64 * K, "64KiB", "2D4D2670204E", "1D664061")]
    [InlineData(128 * K, "128KiB", "C5092670204F", "DD3EF6A3")]
    [InlineData(256 * K, "256KiB", "76BE26702040", "FB10AD5B")]
    [InlineData(512 * K, "512KiB", "9B2526702041", "71A54091")]
    public void The_header_and_the_image_are_the_worked_ones(int size, string range, string digits, string crc)
    {
        var rom = Worked(size, range).Assemble().Bytes("rom");
        var header = rom.Slice(Math.Min(0x7FF0, size - 0x10), 0x10);
        Assert.Equal("544D52205345474100" + "00" + digits, Convert.ToHexString(header));
        Assert.Equal(crc, TestBytes.Crc(rom));
    }

    [Fact]
    public void The_sum_of_a_mebibyte_is_the_worked_one_although_it_is_refused()
    {
        var bench = Worked(1024 * K, "1MiB");
        var rom = bench.TryAssemble()!.Bytes("rom");
        Assert.Equal("527A6280", TestBytes.Crc(rom));
        Assert.Equal(["CW4341"], Errors(bench));
    }

    // The same source: a nibble smaller than the ROM only shortens the range; all-FF images.
    [Fact]
    public void A_smaller_range_sums_less()
    {
        var rom = Worked(128 * K, "32KiB").Assemble().Bytes("rom");
        Assert.Equal(0x901B, rom[0x7FFA] | (rom[0x7FFB] << 8));
        Assert.Equal(0x7010, Filled(32 * K, 0x4C));
        Assert.Equal(0xF010, Filled(128 * K, 0x4F));
    }

    [Theory]
    [InlineData("7026", "267000")]
    [InlineData("27026", "267020")]
    [InlineData("107026", "2670A0")]
    [InlineData("1234", "341200")]
    [InlineData("159999", "9999F0")]
    public void Product_codes_are_the_published_ones(string code, string digits)
    {
        var field = new byte[3];
        Assert.Null(new ProductCodeCodec().Write(code, field));
        Assert.Equal(digits, Convert.ToHexString(field));
        Assert.Equal(code, new ProductCodeCodec().Read(field));
    }

    // SDSC Header (smspower.org): 16 bytes before the header, digits in BCD, the year's lower pair first.
    [Fact]
    public void The_author_tag_is_written_when_anything_of_it_is_stated()
    {
        var rom = Bench(32 * K).Header("tagVersion", "1.02").Header("tagDate", "2026-11-25").Header("tagAuthor", "0x0100").Header("tagName", "0x0120").Assemble().Bytes("rom");
        Assert.Equal("53445343" + "0102" + "25112620" + "0001" + "2001" + "FFFF", Convert.ToHexString(rom.Slice(0x7FE0, 0x10)));
    }

    [Fact]
    public void Without_a_tag_its_place_is_the_program_s()
    {
        var bench = Bench(32 * K, program => program.AsSpan(0x7FE0, 0x10).Fill(0xC9));
        Assert.Equal(TestBytes.All(0xC9, 0x10), bench.Assemble().Bytes("rom").Slice(0x7FE0, 0x10));
        Assert.Empty(bench.Codes());
    }

    [Theory]
    [InlineData("48KiB", 48 * K, "CW4341")]
    [InlineData("raw 0x05", 32 * K, "CW4341")]
    [InlineData("128KiB", 32 * K, "CW4342")]
    public void Ranges_that_cannot_be_used(string range, int size, string code)
    {
        var bench = Bench(size).Header("sumRange", range);
        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
    }

    [Fact]
    public void Code_where_the_mark_goes()
    {
        var bench = Bench(32 * K, program => program.AsSpan(0x7FF0, 8).Fill(0x76));
        bench.TryAssemble();
        Assert.Equal(["CW4340"], bench.Codes());
    }

    [Fact]
    public void The_region_of_the_other_console()
    {
        var bench = Bench(32 * K).Header("region", "gg-export");
        bench.Assemble();
        Assert.Equal(["CW4343"], bench.Codes());
    }

    [Fact]
    public void Nothing_at_reset()
    {
        var bench = new RomBench(SegaPlatform.Sg1000()).Program("rom", 0x100, TestBytes.L(0x100));
        bench.TryAssemble();
        Assert.Equal(["CW4344"], bench.Codes());
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(byte version, uint product, byte region, bool tag)
    {
        var bench = Bench(32 * K).Header("version", $"{version % 16}").Header("productCode", $"{product % 160_000}").Header("region", $"0x{region % 16:X}");
        if (tag)
            bench.Header("tagVersion", $"{version % 100}.07");

        var first = bench.TryAssemble()!.Bytes("rom").ToArray();
        var again = Bench(32 * K);
        var table = SegaPlatform.MasterSystem().Layouts[0].Headers[0];
        foreach (var entry in HeaderReader.Read(table, first, new HeaderContext(null, null, _ => first.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.TryAssemble()!.Bytes("rom").ToArray());
    }

    [Property(MaxTest = 50)]
    public void One_wrong_byte_in_the_range_is_found(ushort at, byte mask)
    {
        var rom = Bench(32 * K).Assemble().Bytes("rom").ToArray();
        var right = SegaHeader.Sum(rom);
        rom[at % 0x7FF0] ^= (byte)(mask | 1);
        Assert.NotEqual(right, SegaHeader.Sum(rom));
    }

    [Theory]
    [InlineData("$0000", 0)]
    [InlineData("$BFFF", 0xBFFF)]
    [InlineData("03:8000", 0xC000)]
    [InlineData("0x034001", 0xC001)]
    public void Addresses_of_the_ROM(string text, long offset) => Assert.Equal(offset, Locate(text).Offset);

    [Theory]
    [InlineData("$C000", "work RAM")]
    [InlineData("100:8000", "above the last one")]
    public void Addresses_elsewhere(string text, string words) =>
        Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Fact]
    public void Images_are_recognised_by_mark_and_region()
    {
        var sms = Bench(32 * K).Assemble().Bytes("rom").ToArray();
        Assert.Equal(Certainty.Exact, SegaPlatform.MasterSystem().Recognise(sms)!.Certainty);
        Assert.Equal(Certainty.Candidate, SegaPlatform.GameGear().Recognise(sms)!.Certainty);
        Assert.Null(SegaPlatform.Sg1000().Recognise(sms));
        Assert.Equal(0x200, SegaPlatform.MasterSystem().Recognise([.. new byte[0x200], .. sms])!.PrefixLength);
        Assert.Equal(Certainty.Candidate, SegaPlatform.Sg1000().Recognise([0xF3, 0xED, 0x56, .. new byte[0x2000]])!.Certainty);
    }

    [Fact]
    public void Blank_and_random_bytes_are_not_recognised()
    {
        var random = new Random(1);
        for (var i = 0; i < 300; i++)
        {
            var bytes = new byte[random.Next(0, 0x10000)];
            Assert.Null(SegaPlatform.MasterSystem().Recognise(bytes));
            random.NextBytes(bytes);
            Assert.Null(SegaPlatform.MasterSystem().Recognise(bytes));
            Assert.Null(SegaPlatform.GameGear().Recognise(bytes));
        }
    }

    [Fact]
    public void The_file_command_knows_the_ROM()
    {
        using var folder = new TempFolder();
        folder.Write("game.sms", Bench(32 * K).Assemble().Bytes("rom"));
        Assert.Contains("Sega Master System", Tool.Succeed("file", folder.Path, "--brief", "game.sms"), StringComparison.Ordinal);
    }

    private static RomBench Worked(int size, string range) =>
        new RomBench(SegaPlatform.MasterSystem()).Program("rom", 0, TestBytes.L(size)).Size("rom", size).Keep(false)
            .Header("productCode", "27026").Header("version", "0").Header("region", "sms-export").Header("sumRange", range);

    private static RomBench Bench(int size, Action<byte[]>? change = null)
    {
        var program = TestBytes.L(size);
        program.AsSpan(Math.Min(0x7FE0, size - 0x20), 0x20).Clear();
        change?.Invoke(program);
        return new RomBench(SegaPlatform.MasterSystem()).Program("rom", 0, program).Size("rom", size);
    }

    private static ushort Filled(int size, byte last)
    {
        var rom = TestBytes.All(0xFF, size);
        rom[0x7FFF] = last;
        return SegaHeader.Sum(rom);
    }

    private static IEnumerable<string> Errors(RomBench bench) =>
        bench.Log.ToSorted().Where(finding => finding.Severity == Findings.FindingSeverity.Error).Select(finding => finding.Code);

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? SegaPlatform.MasterSystem().Layouts[0].Addresses.Locate(address, _ => null) : throw new ArgumentException(text);
}
