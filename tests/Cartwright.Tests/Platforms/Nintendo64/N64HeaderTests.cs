using System.Globalization;
using Cartwright.Headers;
using Cartwright.Platforms.Nintendo64;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Nintendo64.CheckWordsTests;

namespace Cartwright.Tests.Platforms.Nintendo64;

public sealed class N64HeaderTests
{
    // N64brew Wiki, ROM Header: the fields of a usual homebrew header; bytes 0x10-0x17 are the check words.
    [Fact]
    public void A_blank_header_is_filled_in()
    {
        var bench = N64Bench.Bench();
        var rom = bench.Assemble().Bytes("rom");
        Assert.Empty(bench.Codes());
        Assert.Equal(2 << 20, rom.Length);
        Assert.Equal("803712400000000F8000040000001444", Convert.ToHexString(rom[..0x10]));
        Assert.Equal("0000000000000000", Convert.ToHexString(rom.Slice(0x18, 8)));
        Assert.Equal("LANTERN TIDE        "u8, rom.Slice(0x20, 20));
        Assert.Equal("000000000000004E00000000", Convert.ToHexString(rom.Slice(0x34, 12)));
    }

    [Fact]
    public void Every_bit_of_the_header_has_an_owner()
    {
        foreach (var table in new N64Platform().Layouts.Select(layout => layout.Headers[0]))
        {
            foreach (var isExtended in (bool[])[false, true])
            {
                var owned = new byte[N64Header.Length];
                foreach (var field in table.Fields.Where(field => field.When?.Invoke(Context(isExtended)) != false))
                {
                    var mask = new byte[field.Length];
                    field.Codec.Mask(mask);
                    for (var i = 0; i < mask.Length; i++)
                        owned[field.Offset + i] |= mask[i];
                }

                foreach (var row in table.Checksums)
                    owned.AsSpan(row.Offset, row.Length).Fill(0xFF);

                Assert.DoesNotContain(owned, bits => bits != 0xFF);
            }
        }
    }

    // The same page: 32 KiB SRAM, clock and any region is 33; flash alone 50; EEPROM of 512 bytes and any region 12.
    [Theory]
    [InlineData("sram-32KiB", "true", "true", 0x33)]
    [InlineData("flash-128KiB", "false", "false", 0x50)]
    [InlineData("eeprom-512", "false", "true", 0x12)]
    [InlineData("eeprom-2KiB", "false", "false", 0x20)]
    [InlineData("sram-96KiB", "false", "false", 0x40)]
    [InlineData("sram-128KiB", "true", "false", 0x61)]
    public void The_extension_is_the_documented_one(string save, string clock, string free, int value)
    {
        var rom = N64Bench.Bench().Header("saveMemory", save).Header("realTimeClock", clock).Header("regionFree", free).Header("controller2", "mouse").Assemble().Bytes("rom");
        Assert.Equal("ED"u8, rom.Slice(0x3C, 2));
        Assert.Equal(value, rom[0x3F]);
        Assert.Equal("00800000", Convert.ToHexString(rom.Slice(0x34, 4)));
    }

    [Fact]
    public void The_extension_needs_its_own_code()
    {
        var bench = N64Bench.Bench().Header("uniqueCode", "LT").Header("saveMemory", "sram-32KiB");
        bench.TryAssemble();
        Assert.Equal(["CW4010"], bench.Codes());
    }

    [Fact]
    public void Without_the_extension_the_last_byte_is_the_revision()
    {
        var rom = new RomBench(new N64Platform()) { Title = "LANTERN TIDE", Revision = "3" }.Program("rom", 0x40, N64Bench.Forged(BootChips.Usual))
            .Program("rom", 0x1000, TestBytes.L(0x100)).Header("entry", "$80001000").Header("uniqueCode", "LT").Header("destination", "europe").Assemble().Bytes("rom");
        Assert.Equal("4E4C545003", Convert.ToHexString(rom.Slice(0x3B, 5)));
    }

    // The stock boot codes of 6103 and 6106 take 0x100000 and 0x200000 off the header's entry; that of the 7102 starts 80000480 whatever it says.
    [Theory]
    [InlineData("6101", "80000400")]
    [InlineData("6102", "80000400")]
    [InlineData("7102", "80000480")]
    [InlineData("6103", "80100400")]
    [InlineData("6105", "80000400")]
    [InlineData("6106", "80200400")]
    public void The_entry_is_raised_as_the_boot_code_asks(string chip, string digits)
    {
        var cart = N64Bench.Bench(Chip(chip)).Assemble();
        Assert.Equal(Chip(chip).Name, cart.Layout.Variant);
        Assert.Equal(digits, Convert.ToHexString(cart.Bytes("rom").Slice(8, 4)));
        Assert.Equal(chip == "7102" ? "0x80000480" : "0x80000400", cart["entry"]);
    }

    [Fact]
    public void An_entry_must_be_stated()
    {
        var bench = new RomBench(new N64Platform()).Program("rom", 0x40, N64Bench.Forged(BootChips.Usual)).Program("rom", 0x1000, TestBytes.L(0x100));
        bench.TryAssemble();
        Assert.Contains("CW4002", bench.Codes());
    }

    [Theory]
    [InlineData("6101")]
    [InlineData("6102")]
    [InlineData("7102")]
    [InlineData("6103")]
    [InlineData("6105")]
    [InlineData("6106")]
    public void The_boot_code_chooses_the_check_words(string chip)
    {
        var cart = N64Bench.Bench(Chip(chip)).Assemble();
        var entry = Assert.Single(cart.Headers[0].Checksums);
        Assert.True(entry.Right);
        Assert.Equal(CheckWords.Compute(cart.Bytes("rom"), Chip(chip)), entry.Stored);
        Assert.Equal(entry.Stored.ToString("X16", CultureInfo.InvariantCulture), Convert.ToHexString(cart.Bytes("rom").Slice(0x10, 8)));
    }

    [Theory]
    [InlineData("7101", "6102")]
    [InlineData("6102", "6102")]
    [InlineData("7106", "6106")]
    public void A_stated_chip_chooses_them_too(string stated, string chip)
    {
        var cart = N64Bench.Bench(Chip(chip)).Header("bootChip", stated).Assemble();
        Assert.Equal(stated, cart.Layout.Variant);
        Assert.True(Assert.Single(cart.Headers[0].Checksums).Right);
    }

    // The worked image of the golden pattern, built: the header is outside the sum, and the boot code's words enter that of the 6105 only.
    [Theory]
    [InlineData("6102", "669E4DDDF55C2808")]
    [InlineData("6103", "D424675964E01E6C")]
    [InlineData("6106", "04800F9E8E7F756A")]
    public void The_worked_image_is_built_with_its_words(string chip, string words)
    {
        var rom = new RomBench(new N64Platform()).Program("rom", 0x40, N64Bench.Forged(Chip(chip))).Program("rom", 0x1000, N64Bench.Pattern()[0x1000..])
            .Size("rom", N64Bench.Size).Header("entry", "0x80000400").Assemble().Bytes("rom");
        Assert.Equal(words, Convert.ToHexString(rom.Slice(0x10, 8)));
    }

    [Theory]
    [InlineData("2.0L", "0000144C")]
    [InlineData("2.0D", "00001444")]
    [InlineData("none", "00000000")]
    [InlineData("25.5z", "0000FF7A")]
    [InlineData("01001444", "01001444")]
    public void Versions_of_the_system_library(string text, string digits)
    {
        var bytes = new byte[4];
        Assert.Null(new SystemVersionCodec().Write(text, bytes));
        Assert.Equal(digits, Convert.ToHexString(bytes));
        Assert.Equal(text, new SystemVersionCodec().Read(bytes));
    }

    [Theory]
    [InlineData("25.6A")]
    [InlineData("2.L")]
    [InlineData("2.0")]
    [InlineData("2.0?")]
    [InlineData("-1.0L")]
    [InlineData("later")]
    public void Texts_that_are_no_version(string text) => Assert.NotNull(new SystemVersionCodec().Write(text, new byte[4]));

    [Fact]
    public void A_title_of_21_letters_does_not_fit()
    {
        var bench = N64Bench.Bench().Header("title", "LANTERN TIDE OVER SEA");
        bench.TryAssemble();
        Assert.Contains("CW4003", bench.Codes());
    }

    [Property(MaxTest = 40)]
    public void What_a_reader_finds_builds_the_same_ROM(int seed)
    {
        var random = new Random(seed);
        var chip = BootChips.All[random.Next(BootChips.All.Length)];
        var first = N64Bench.Bench(chip).Header("latency", $"0x{random.Next(256):X2}").Header("pageSize", $"0x{random.Next(16):X2}").Header("clockRate", $"{random.Next()}");
        if (random.Next(2) == 0)
            first.Header("controller3", $"0x{random.Next(256):X2}").Header("saveMemory", $"0x{random.Next(16):X2}").Header("reserved3F", $"{random.Next(4)}");
        else
            first.Header("version", $"{random.Next(256)}").Header("titleEnd", "TIDE".PadRight(random.Next(4, 8))).Header("category", $"0x{random.Next(256):X2}");

        var rom = first.Assemble().Bytes("rom").ToArray();
        var again = N64Bench.Bench(chip);
        foreach (var entry in HeaderReader.Read(N64Platform(chip).Headers[0], rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(rom, again.Assemble().Bytes("rom").ToArray());
    }

    // A byte-order test of the tool's own: it knows these images by their first word and the usual clock.
    [Fact]
    public void The_file_command_knows_the_ROM_and_its_title()
    {
        using var folder = new TempFolder();
        folder.Write("game.z64", N64Bench.Bench().Assemble().Bytes("rom"));
        var words = Tool.Succeed("file", folder.Path, "--brief", "game.z64");
        Assert.Contains("Nintendo 64 ROM", words, StringComparison.Ordinal);
        Assert.Contains("LANTERN TIDE", words, StringComparison.Ordinal);
    }

    private static Cartwright.Platforms.PlatformLayout N64Platform(BootChip chip) => new N64Platform().Layouts.Single(layout => layout.Variant == chip.Name);

    private static HeaderContext Context(bool isExtended)
    {
        var context = new HeaderContext(null, null, _ => 0);
        context.Set("uniqueCode", isExtended ? "ED" : "");
        return context;
    }
}
