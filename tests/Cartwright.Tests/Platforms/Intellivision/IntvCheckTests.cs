using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.Intellivision;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.Intellivision;

public sealed class IntvCheckTests
{
    [Theory]
    [InlineData("001A0050", null)]
    [InlineData("00FF005F", null)]
    [InlineData("00000060", "CW4570")]
    [InlineData("00000070", "CW4570")]
    [InlineData("003400A0", "CW4570")]
    [InlineData("00190050", "CW4571")]
    [InlineData("00000050", "CW4571")]
    [InlineData("1A500050", "CW4572")]
    public void Starts(string digits, string? code) => Only(code, IntvPrograms.Bench(0x08, digits), "CW4578");

    [Fact]
    public void A_start_counted_in_bytes_is_told()
    {
        var bench = IntvPrograms.Bench(0x08, "003400A0");
        bench.TryAssemble();
        Assert.Contains("it would be the word at $501A", Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("000D0050", null)]
    [InlineData("00000010", null)]
    [InlineData("00000060", "CW4573")]
    [InlineData("000000D0", "CW4573")]
    public void Other_pointers(string digits, string? code) => Only(code, IntvPrograms.Bench(0x0C, digits));

    [Theory]
    [InlineData(0x28, "0046", null)]
    [InlineData(0x28, "0045", "CW4575")]
    [InlineData(0x28, "00C8", "CW4575")]
    [InlineData(0x2A, "0000", "CW4574")]
    [InlineData(0x2A, "001F", "CW4574")]
    [InlineData(0x14, "00FF00FF", "CW4574")]
    [InlineData(0x14, "00FF005F", "CW4574")]
    public void Titles(int at, string digits, string? code) => Only(code, IntvPrograms.Bench(at, digits));

    [Fact]
    public void A_swapped_program()
    {
        var bytes = IntvPrograms.Whole();
        WordSwap.Swap16(bytes);
        Only("CW4576", new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0, bytes));
    }

    [Fact]
    public void A_program_in_its_container() =>
        Only("CW4577", new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0, [.. TransferContainer.Parts(IntvPrograms.Whole()).SelectMany(part => part.ToArray())]));

    [Theory]
    [InlineData("03FF", null)]
    [InlineData("0400", "CW4578")]
    public void Wide_words(string digits, string? code) => Only(code, IntvPrograms.Bench(0x1000, digits));

    [Fact]
    public void Open_lines()
    {
        var bytes = IntvPrograms.Whole();
        for (var i = 0; i < bytes.Length; i += 2)
            bytes[i] |= 0xFC;
        Only("CW4579", new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0, bytes));
    }

    [Fact]
    public void Half_a_word() => Only("CW4580", new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0, IntvPrograms.Whole()[..0xFFF]));

    [Theory]
    [InlineData("$5000", 0, 0x4000)]
    [InlineData("$6FFF", 0x3FFE, 2)]
    [InlineData("$D000", 0x4000, 0x2000)]
    [InlineData("$DFFF", 0x5FFE, 2)]
    [InlineData("$F000", 0x6000, 0x2000)]
    [InlineData("$FFFF", 0x7FFE, 2)]
    public void Addresses(string text, long offset, long run) => Assert.Equal(("rom", offset, run), (Locate(text).Region, Locate(text).Offset, Locate(text).Run));

    [Theory]
    [InlineData("$4FFF", "not in the usual map")]
    [InlineData("$7000", "not in the usual map")]
    [InlineData("01:5000", "no banks")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    // Intel HEX counts bytes: the word $5000 is at byte $A000, and the run goes on at $D000, byte $1A000.
    [Theory]
    [InlineData("A000", "04", 0)]
    [InlineData("DFFE", "02", 0x3FFE)]
    [InlineData("A001", "01", null)]
    public void Program_files_count_bytes(string address, string length, int? offset)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        var record = Convert.FromHexString(length + address + "00" + "01020304"[..(2 * Convert.ToInt32(length, 16))]);
        var sum = (byte)-record.Sum(value => value);
        bench.Write("data.hex", System.Text.Encoding.ASCII.GetBytes($":{Convert.ToHexString(record)}{sum:X2}\n:00000001FF\n"));
        bench.Manifest("""
            {
              "cart": { "name": "lantern-tide", "platform": "intv" },
              "programs": [ { "file": "data.hex" } ],
              "rom": { "size": "32KiB" },
              "header": { "start": "$5100", "year": "2026", "title": "T" }
            }
            """);
        var build = bench.Build();
        Assert.Equal(offset is null, build.Findings.Any(finding => finding.Code == RomFindings.NotInRom.Code));
        if (offset > 0)
            Assert.Equal(0x01, build.Cart!.Rom()[offset.Value]);
    }

    [Theory]
    [InlineData(1, 0x2000)]
    [InlineData(0x2001, 0x4000)]
    [InlineData(0x4001, 0x6000)]
    [InlineData(0x6001, 0x8000)]
    [InlineData(0x8001, null)]
    public void Sizes(long needed, int? fit) => Assert.Equal(fit, new IntvPlatform().Layouts[0].Regions[0].Sizes.Fit(needed));

    [Theory]
    [InlineData(15872, true)]
    [InlineData(15870, false)]
    [InlineData(0x200, true)]
    public void Stated_sizes(long size, bool isLegal) => Assert.Equal(isLegal, new IntvPlatform().Layouts[0].Regions[0].Sizes.Allows(size));

    [Fact]
    public void Two_chips_hold_the_halves_of_each_word()
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", IntvPrograms.Whole());
        bench.Manifest("""
            {
              "cart": { "name": "lantern-tide", "platform": "intv" },
              "programs": [ { "file": "main.bin", "address": "$5000" } ],
              "board": { "use": "intv-double-8bit", "chips": { "U1": { "capacity": "8KiB" }, "U2": { "capacity": "8KiB" } } }
            }
            """);
        var chips = bench.Build().Chips;
        Assert.Equal(IntvPrograms.Whole().Where((_, i) => i % 2 == 0), chips[0].Bytes.ToArray()[..0x1000]);
        Assert.Equal(IntvPrograms.Whole().Where((_, i) => i % 2 != 0), chips[1].Bytes.ToArray()[..0x1000]);
        Assert.Equal(TestBytes.All(0xFF, 0x1000), chips[0].Bytes.ToArray()[0x1000..]);
    }

    [Fact]
    public void Words_are_recognised_in_both_orders()
    {
        var rom = IntvPrograms.Whole();
        Assert.Equal((Certainty.Structural, ImageOrder.Console), (Ask(rom)!.Certainty, Ask(rom)!.Order));
        WordSwap.Swap16(rom);
        Assert.Equal((Certainty.Structural, ImageOrder.ByteSwapped), (Ask(rom)!.Certainty, Ask(rom)!.Order));
    }

    [Theory]
    [InlineData(0x00, "0100")]
    [InlineData(0x08, "00000040")]
    [InlineData(0x08, "00000060")]
    [InlineData(0x14, "0000005F")]
    [InlineData(0x28, "0045")]
    [InlineData(0x28, "00C8")]
    [InlineData(0x2A, "0000")]
    [InlineData(0x32, "0001")]
    public void Other_blocks_are_not(int at, string digits)
    {
        var rom = IntvPrograms.Whole();
        Convert.FromHexString(digits).CopyTo(rom, at);
        Assert.Null(Ask(rom));
    }

    [Fact]
    public void Nothing_is_claimed_for_short_odd_and_blank_files()
    {
        for (var length = 0; length < 0x80; length++)
        {
            Assert.Null(Ask(new byte[length]));
            Assert.Null(Ask(TestBytes.All(0xFF, length)));
            Assert.True(Ask(IntvPrograms.Whole()[..length]) is null || length >= 0x36);
        }

        Assert.Null(Ask(IntvPrograms.Whole()[..0x1001]));
        Assert.Null(Ask(new byte[0x2000]));
        Assert.Null(Ask(IntvPrograms.Whole(0x20002)));
    }

    private static RecognitionClaim? Ask(byte[] file) => new IntvPlatform().Recognise(file);

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new IntvAddresses().Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string? code, RomBench bench, string? also = null)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes().Distinct().Where(found => found != also));
    }
}
