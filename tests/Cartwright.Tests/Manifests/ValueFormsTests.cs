using Cartwright.Manifests;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Manifests;

public sealed class ValueFormsTests
{
    [Theory]
    [InlineData("512KiB", 524288)]
    [InlineData("4Mbit", 524288)]
    [InlineData("0x80000", 524288)]
    [InlineData("$80000", 524288)]
    [InlineData("524288", 524288)]
    [InlineData(" 512 kib ", 524288)]
    [InlineData("512K", 524288)]
    [InlineData("512KB", 524288)]
    [InlineData("0.5MiB", 524288)]
    [InlineData("64Kbit", 8192)]
    [InlineData("1byte", 1)]
    [InlineData("12 bytes", 12)]
    [InlineData("0", 0)]
    [InlineData("1GiB", 1 << 30)]
    [InlineData("1073741824GiB", 1L << 60)]
    [InlineData("0x1000000000000000", 1L << 60)]
    public void A_size_is_read_as_people_write_it(string text, long bytes)
    {
        Assert.True(ByteSize.TryParse(text, out var read));
        Assert.Equal(bytes, read);
    }

    [Theory]
    [InlineData("")]
    [InlineData("KiB")]
    [InlineData("-1")]
    [InlineData("-1KiB")]
    [InlineData("1.5")]
    [InlineData("0.3KiB")]
    [InlineData("1e3KiB")]
    [InlineData("0x10KiB")]
    [InlineData("1,5KiB")]
    [InlineData("512 KiB KiB")]
    [InlineData("٣KiB")]
    [InlineData("1073741825GiB")]
    [InlineData("0x1000000000000001")]
    [InlineData("99999999999999999999999999999999999999999GiB")]
    [InlineData("9223372036854775807")]
    public void What_is_no_size_is_refused(string text) => Assert.False(ByteSize.TryParse(text, out _));

    [Property]
    public bool A_size_that_was_written_reads_back_the_same(ulong number, byte shift)
    {
        var bytes = (long)(number % (1UL << 40)) << (shift % 20);
        return ByteSize.TryParse(ByteSize.Format(bytes), out var read) && read == bytes;
    }

    [Theory]
    [InlineData(0, "0x000000 (0 bytes)")]
    [InlineData(1, "0x000001 (1 byte)")]
    [InlineData(291, "0x000123 (291 bytes)")]
    [InlineData(1024, "0x000400 (1 KiB)")]
    [InlineData(1536, "0x000600 (1536 bytes)")]
    [InlineData(524288, "0x080000 (512 KiB)")]
    [InlineData(3 << 20, "0x300000 (3 MiB)")]
    public void A_size_in_a_message_has_both_forms(long bytes, string words) => Assert.Equal(words, ByteSize.Describe(bytes));

    [Theory]
    [InlineData("0", 0)]
    [InlineData("32768", 0x8000)]
    [InlineData("0x8000", 0x8000)]
    [InlineData("$8000", 0x8000)]
    [InlineData("0XFF_FF", 0xFFFF)]
    [InlineData(" 1_000 ", 1000)]
    [InlineData("0x7FFFFFFFFFFFFFFF", long.MaxValue)]
    public void A_number_is_decimal_or_marked_hexadecimal(string text, long value)
    {
        Assert.True(Number.TryParse(text, out long read));
        Assert.Equal(value, read);
    }

    [Theory]
    [InlineData("")]
    [InlineData("$")]
    [InlineData("0x")]
    [InlineData("-1")]
    [InlineData("+1")]
    [InlineData("FF")]
    [InlineData("0xG")]
    [InlineData("$ 12")]
    [InlineData("1.0")]
    [InlineData("0x8000000000000000")]
    [InlineData("9223372036854775808")]
    public void What_is_no_number_is_refused(string text) => Assert.False(Number.TryParse(text, out long _));

    [Property]
    public bool A_number_of_64_bits_reads_back_in_both_forms(ulong number) =>
        Number.TryParse($"{number}", out ulong plain) && plain == number && Number.TryParse($"0x{number:X}", out ulong hex) && hex == number;

    [Theory]
    [InlineData("$C08000", null, 0xC08000)]
    [InlineData("0xC08000", null, 0xC08000)]
    [InlineData("32768", null, 32768)]
    [InlineData("03:4000", 3, 0x4000)]
    [InlineData("$1F:$FFFF", 0x1F, 0xFFFF)]
    [InlineData(" 3 : 10 ", 3, 0x10)]
    public void An_address_has_a_bank_or_has_none(string text, int? bank, long address)
    {
        Assert.True(ConsoleAddress.TryParse(text, out var read));
        Assert.Equal(new ConsoleAddress(bank, address), read);
    }

    [Theory]
    [InlineData("")]
    [InlineData(":")]
    [InlineData("3:")]
    [InlineData(":8000")]
    [InlineData("1:2:3")]
    [InlineData("bank:8000")]
    [InlineData("-1:8000")]
    [InlineData("8000h")]
    [InlineData("0x1000000000000")]
    [InlineData("FFFFFFFFFFFFFFFF:8000")]
    [InlineData("7FFFFFFFFFFFFFFF")]
    public void What_is_no_address_is_refused(string text) => Assert.False(ConsoleAddress.TryParse(text, out _));

    [Property]
    public bool An_address_that_was_written_reads_back_the_same(uint bank, uint address, bool hasBank)
    {
        var given = new ConsoleAddress(hasBank ? bank : null, address);
        return ConsoleAddress.TryParse(given.ToString(), out var read) && read == given;
    }

    // Source: Naming files on FAT, platform documentation.
    [Theory]
    [InlineData("lantern-tide", true)]
    [InlineData("A_1", true)]
    [InlineData("", false)]
    [InlineData("a b", false)]
    [InlineData("a.b", false)]
    [InlineData("../a", false)]
    [InlineData("é", false)]
    [InlineData("con", false)]
    [InlineData("LPT9", false)]
    [InlineData("COM0", false)]
    [InlineData("console", true)]
    [InlineData("a\u0000", false)]
    public void A_file_name_is_safe_on_any_card(string name, bool safe) => Assert.Equal(safe, FileNameRule.Problem(name) is null);

    [Fact]
    public void A_file_name_has_at_most_a_hundred_characters()
    {
        Assert.Null(FileNameRule.Problem(new string('a', 100)));
        Assert.Equal("it has 101 characters, and 1 to 100 are possible", FileNameRule.Problem(new string('a', 101)));
    }

    [Theory]
    [InlineData("dist", true)]
    [InlineData("a/b", true)]
    [InlineData(".", true)]
    [InlineData("a/..b", true)]
    [InlineData("", false)]
    [InlineData("..", false)]
    [InlineData("a/../../b", false)]
    [InlineData("a\\\\..\\\\b", false)]
    [InlineData("/tmp", false)]
    [InlineData("\\\\srv\\\\x", false)]
    [InlineData("C:out", false)]
    [InlineData("a\\u0000b", false)]
    public void The_output_folder_is_below_the_manifest(string folder, bool allowed)
    {
        var read = ManifestText.With($$"""
            "images": { "folder": "{{folder}}" }
            """);
        Assert.Equal(allowed ? [] : ["CW1010"], read.Findings.Select(finding => finding.Code));
    }
}
