using System.IO.Hashing;
using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>VCDIFF. Source: RFC 3284, The VCDIFF Generic Differencing and Compression Data Format; its section 3 gives source and target.</summary>
public sealed class VcdiffTests
{
    private const string Head = "D6 C3 C4 00 00";
    private const string WindowA = "01 10 00 13 1C 00 05 06 03 77 78 79 7A 7A 14 05 14 1C 00 04 00 04 18";
    private const string Target = "abcdwxyzefghefghefghefghzzzz";

    private static readonly byte[] Image = PatchBench.Ascii("abcdefghijklmnop");

    [Theory]
    [InlineData($"{Head} {WindowA}", Target)]
    [InlineData($"{Head} 05 10 00 16 1C 00 05 05 03 A7 FC 0B BD 77 78 79 7A 7A 14 C4 2C 00 04 00 04 04", Target)]
    [InlineData($"D6 C3 C4 00 04 02 68 69 {WindowA} 02 0C 10 0A 11 00 01 02 02 21 1C FD 00 00", $"{Target}efghefghzzzzefgh!")]
    [InlineData($"{Head} 00 0F 11 00 05 04 01 63 61 72 74 2E 05 18 00 05 00", "cartcartcart.....")]
    [InlineData($"D6 C3 C4 00 01 02 {WindowA}", Target)]
    public void The_worked_patches_make_their_targets(string patch, string target) =>
        Assert.Equal(target, System.Text.Encoding.ASCII.GetString(PatchBench.Output(Image, PatchBench.Hex(patch))));

    [Fact]
    public void Only_Adler_checks_the_result()
    {
        var plain = PatchBench.Hex($"{Head} {WindowA}");
        var summed = PatchBench.Hex($"{Head} 05 10 00 16 1C 00 05 05 03 A7 FC 0B BD 77 78 79 7A 7A 14 C4 2C 00 04 00 04 04");
        Assert.Equal(PatchChecks.None, PatchBench.Apply(Image, plain).Result!.Checked);
        Assert.Equal(PatchChecks.Result, PatchBench.Apply(Image, summed).Result!.Checked);
        Assert.Equal(PatchChecks.None, PatchBench.Apply(Image, [.. summed, .. plain[5..]]).Result!.Checked);
        Assert.Equal(["CW7010"], PatchBench.Apply(PatchBench.Ascii("abcdefghXjklmnop"), summed[..^1].Append((byte)8).ToArray()).Codes);
    }

    // RFC 1950: the Adler-32 of no bytes is 1.
    [Fact]
    public void An_empty_window_has_the_Adler_of_no_bytes()
    {
        var run = PatchBench.Apply(Image, PatchBench.Hex($"{Head} 04 09 00 00 00 00 00 00 00 00 01"));
        Assert.Empty(run.Output!);
        Assert.Empty(run.Codes);
    }

    [Fact]
    public void The_largest_result_is_made() =>
        Assert.Equal(Patch.LargestResult, PatchBench.Output(Image, PatchBench.Hex($"{Head} 00 0E C0 80 80 00 00 01 05 00 41 00 C0 80 80 00")).Length);

    [Fact]
    public void A_result_beyond_the_limit_is_refused_before_any_room_is_made()
    {
        var patch = PatchBench.Hex($"{Head} 00 0E C0 80 80 01 00 01 05 00 41 00 C0 80 80 01");
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(["CW7002"], PatchBench.Apply(Image, patch).Codes);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 0x10_0000);
    }

    [Fact]
    public void The_application_header_is_shown() => Assert.Equal("hi", Patch.Describe(PatchBench.Hex("D6 C3 C4 00 04 02 68 69"))!.Text);

    [Theory]
    [InlineData("03 10 00 00", "CW7020")]
    [InlineData("08", "CW7020")]
    [InlineData("01 11 00 05 04 00 00 01 01 14 00", "CW7024")]
    [InlineData("02 04 00 00", "CW7024")]
    [InlineData("01 01 FF FF FF FF FF FF FF FF 7F 05 04 00 00 01 01 14 00", "CW7024")]
    [InlineData("01 10 00 07 04 00 00 01 01 14 10", "CW7026")]
    [InlineData("01 10 00 07 04 00 00 01 01 24 11", "CW7026")]
    [InlineData("01 10 00 0F 04 00 00 01 09 54 FF FF FF FF FF FF FF FF 7F", "CW7026")]
    [InlineData("01 10 00 09 05 00 01 02 01 5A 02 14 0E", "CW7026")]
    [InlineData("01 10 00 07 05 00 00 01 01 14 00", "CW7009")]
    [InlineData("01 10 00 07 03 00 00 01 01 14 00", "CW7009")]
    [InlineData("01 10 00 08 04 00 01 01 01 51 14 00", "CW7025")]
    [InlineData("01 10 00 08 04 00 00 01 02 14 00 00", "CW7025")]
    [InlineData("00 0E 04 00 87 FF FF FF 7F 87 FF FF FF 7F 01 14", "CW7025")]
    [InlineData("00 06 04 00 00 01 00 05", "CW7003")]
    [InlineData("00 06 04 00 00 01 00 01", "CW7003")]
    [InlineData("01 10 00 06 04 00 00 01 00 14", "CW7003")]
    [InlineData("00 20 04 00 00 01 00 05", "CW7003")]
    [InlineData("00 06 04 08 00 01 00 05", "CW7020")]
    [InlineData("00 06 04 01 00 01 00 05", "CW7020")]
    [InlineData("00 FF FF FF FF FF FF FF FF FF FF 7F", "CW7004")]
    [InlineData("00 09 8F FF FF FF 7F 00 01 06 00 41 00", "CW7002")]
    [InlineData("00 0E C0 80 80 01 00 01 05 00 41 00 C0 80 80 01", "CW7002")]
    [InlineData("00 07 01 00 01 01 00 41 02 00 0E C0 80 80 00 00 01 05 00 41 00 C0 80 80 00", "CW7002")]
    [InlineData("04 05 00 00 00 00 00", "CW7003")]
    [InlineData("04 09 00 00 00 00 00 00 00 00 00", "CW7010")]
    public void A_malformed_window_is_refused(string window, string code)
    {
        var patch = PatchBench.Hex($"{Head} {window}");
        Assert.Equal([code], PatchBench.Apply(Image, patch).Codes);
        Assert.Null(NaiveVcdiff.Apply(Image, patch));
    }

    [Theory]
    [InlineData("D6 C3 C4", "CW7003")]
    [InlineData("D6 C3 C4 00", "CW7003")]
    [InlineData("D6 C3 C4 01 00", "CW7019")]
    [InlineData("D6 C3 C4 53 00", "CW7019")]
    [InlineData("D6 C3 C4 00 08", "CW7020")]
    [InlineData("D6 C3 C4 00 02", "CW7022")]
    [InlineData("D6 C3 C4 00 04 05 68", "CW7003")]
    [InlineData("D6 C3 C4 00 01 02 00 06 04 01 00 01 00 05", "CW7021")]
    public void A_header_we_do_not_follow_is_refused(string patch, string code) => Assert.Equal([code], PatchBench.Apply(Image, PatchBench.Hex(patch)).Codes);

    [Fact]
    public void No_window_makes_an_empty_file_and_is_told()
    {
        var run = PatchBench.Apply(Image, PatchBench.Hex(Head));
        Assert.Empty(run.Output!);
        Assert.Equal(["CW7023"], run.Codes);
    }

    [Fact]
    public void The_interleaved_variant_is_named() =>
        Assert.Contains("interleaved", PatchBench.Apply(Image, PatchBench.Hex("D6 C3 C4 53 00")).Text, StringComparison.Ordinal);

    [Fact]
    public void The_compressor_is_named() =>
        Assert.Contains("compressor 2", PatchBench.Apply(Image, PatchBench.Hex("D6 C3 C4 00 01 02 00 06 04 01 00 01 00 05")).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData(0L, "00")]
    [InlineData(127L, "7F")]
    [InlineData(128L, "81 00")]
    [InlineData(16383L, "FF 7F")]
    [InlineData(16384L, "81 80 00")]
    [InlineData(123456789L, "BA EF 9A 15")]
    [InlineData(5L, "80 80 05")]
    [InlineData(long.MaxValue, "FF FF FF FF FF FF FF FF 7F")]
    public void Integers_are_read(long value, string bytes)
    {
        var cursor = new PatchCursor(PatchBench.Hex(bytes), 0, PatchLog.Silent());
        Assert.Equal(value, cursor.VcdiffNumber("a number"));
        Assert.True(cursor.IsAtEnd && !cursor.HasFailed);
    }

    [Theory]
    [InlineData("81 80 80 80 80 80 80 80 80 00")]
    [InlineData("80 80 80 80 80 80 80 80 80 80 00")]
    [InlineData("81 80")]
    public void Integers_too_large_or_too_long_are_not(string bytes)
    {
        var cursor = new PatchCursor(PatchBench.Hex(bytes), 0, PatchLog.Silent());
        Assert.Equal(0, cursor.VcdiffNumber("a number"));
        Assert.True(cursor.HasFailed);
    }

    // The table's bytes in the order of RFC 3284, section 7: all first types, all second types, sizes, modes; the CRC-32 was computed from section 5.6.
    [Fact]
    public void The_default_code_table_has_the_CRC_of_its_1536_bytes()
    {
        VcdiffStep[] first = [.. VcdiffCodeTable.Steps.Where((_, index) => index % 2 == 0)];
        VcdiffStep[] second = [.. VcdiffCodeTable.Steps.Where((_, index) => index % 2 == 1)];
        byte[] bytes = [.. Column(step => (byte)step.Kind), .. Column(step => step.Size), .. Column(step => step.Mode)];
        Assert.Equal(1536, bytes.Length);
        Assert.Equal(0x8BF2DEA1, Crc32.HashToUInt32(bytes));

        IEnumerable<byte> Column(Func<VcdiffStep, byte> part) => first.Concat(second).Select(part);
    }

    [Theory]
    [InlineData(1, "Add 0 0")]
    [InlineData(2, "Add 1 0")]
    [InlineData(18, "Add 17 0")]
    [InlineData(19, "Copy 0 0")]
    [InlineData(20, "Copy 4 0")]
    [InlineData(28, "Copy 12 0")]
    [InlineData(34, "Copy 18 0")]
    [InlineData(35, "Copy 0 1")]
    [InlineData(44, "Copy 12 1")]
    [InlineData(162, "Copy 18 8")]
    [InlineData(163, "Add 1 0, Copy 4 0")]
    [InlineData(166, "Add 2 0, Copy 4 0")]
    [InlineData(174, "Add 4 0, Copy 6 0")]
    [InlineData(175, "Add 1 0, Copy 4 1")]
    [InlineData(196, "Add 4 0, Copy 4 2")]
    [InlineData(234, "Add 4 0, Copy 6 5")]
    [InlineData(235, "Add 1 0, Copy 4 6")]
    [InlineData(253, "Copy 4 6, Add 1 0")]
    public void Codes_mean_what_section_5_6_says(int code, string meaning)
    {
        var steps = new[] { VcdiffCodeTable.Steps[2 * code], VcdiffCodeTable.Steps[(2 * code) + 1] };
        Assert.Equal(meaning, string.Join(", ", steps.Where(step => step.Kind != VcdiffKind.Noop).Select(step => $"{step.Kind} {step.Size} {step.Mode}")));
    }
}
