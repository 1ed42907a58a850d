using System.Buffers.Binary;
using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>BPS. Source: BPS File Format Specification; the worked values were computed from it.</summary>
public sealed class BpsTests
{
    private const string Worked =
        """
        42 50 53 31  88 90 80
        84
        85 58 59
        8C
        86 80
        81 41
        93 94
        1C B6 DC 68
        94 79 F1 36
        97 2E 36 EE
        """;

    private static readonly byte[] Image = PatchBench.Ascii("ABCDEFGH");

    [Fact]
    public void The_worked_patch_makes_its_target()
    {
        var run = PatchBench.Apply(Image, PatchBench.Hex(Worked));
        Assert.Equal(PatchBench.Ascii("ABXYEFGHABAAAAAA"), run.Output);
        Assert.Equal(PatchChecks.Patch | PatchChecks.Base | PatchChecks.Result, run.Result!.Checked);
        Assert.Empty(run.Codes);
    }

    [Fact]
    public void The_worked_patch_says_what_it_is_for()
    {
        var statement = Patch.Describe(PatchBench.Hex(Worked));
        Assert.Equal(new PatchStatement(PatchFormats.Bps, 8, 0x68DCB61C, 16, 0x36F17994), statement);
        Assert.Null(Patch.Describe(PatchBench.Hex(Worked).AsSpan(..^1)));
    }

    [Fact]
    public void A_whole_patch_always_has_the_same_CRC() => Assert.Equal("2144DF1C", TestBytes.Crc(PatchBench.Make(PatchFormats.Bps, Image, TestBytes.L(1000)).Output));

    [Theory]
    [InlineData(0UL, "80")]
    [InlineData(1UL, "81")]
    [InlineData(127UL, "FF")]
    [InlineData(128UL, "00 80")]
    [InlineData(129UL, "01 80")]
    [InlineData(255UL, "7F 80")]
    [InlineData(256UL, "00 81")]
    [InlineData(16511UL, "7F FF")]
    [InlineData(16512UL, "00 00 80")]
    [InlineData(65536UL, "00 7F 82")]
    [InlineData(1048576UL, "00 7F BE")]
    [InlineData(4194304UL, "00 7F 7E 80")]
    public void Numbers_are_written_and_read(ulong value, string bytes)
    {
        var writer = new BpsWriter();
        writer.Number(value);
        Assert.Equal(PatchBench.Hex(bytes), writer.Written);
        var cursor = new PatchCursor(PatchBench.Hex(bytes), 0, PatchLog.Silent());
        Assert.Equal(value, cursor.BpsNumber("a number"));
        Assert.True(cursor.IsAtEnd && !cursor.HasFailed);
    }

    [Theory]
    [InlineData(ulong.MaxValue, true)]
    [InlineData(ulong.MaxValue - 1, true)]
    [InlineData(0x0102_0408_1020_4080UL, true)]
    [InlineData(0UL, false)]
    public void The_largest_numbers_are_read_and_larger_ones_are_not(ulong value, bool fits)
    {
        var writer = new BpsWriter();
        writer.Number(value);
        var bytes = fits ? writer.Written.ToArray() : PatchBench.Hex("7F 7F 7F 7F 7F 7F 7F 7F 7F 81");
        var cursor = new PatchCursor(bytes, 0, PatchLog.Silent());
        Assert.Equal(value, cursor.BpsNumber("a number"));
        Assert.Equal(fits, !cursor.HasFailed);
    }

    // Each faulty in one place, signed anew so that only that shows.
    [Theory]
    [InlineData("42505331 88", "CW7003")]
    [InlineData("42505331 88 90 FF 84", "CW7003")]
    [InlineData("42505331 7F7F7F7F7F7F7F7F7F7F7F80 90 80", "CW7004")]
    [InlineData("42505331 88 88 80 A0", "CW7009")]
    [InlineData("42505331 88 87 80 9C", "CW7009")]
    [InlineData("42505331 88 89 80 9C", "CW7009")]
    [InlineData("42505331 88 90 80 A0", "CW7017")]
    [InlineData("42505331 88 84 80 8E 8A", "CW7017")]
    [InlineData("42505331 88 84 80 8E 83", "CW7017")]
    [InlineData("42505331 88 84 80 8E 7F7F7F7F7F7F7F7F80", "CW7017")]
    [InlineData("42505331 88 84 80 8F 80", "CW7018")]
    [InlineData("42505331 88 86 80 84 8F 84", "CW7018")]
    [InlineData("42505331 88 86 80 84 8F 83", "CW7018")]
    [InlineData("42505331 88 84 80 8D 41 42", "CW7003")]
    [InlineData("42505331 88 84 80 8E", "CW7003")]
    [InlineData("42505331 88 00 7F 7E BF 80", "CW7002")]
    [InlineData("42505331 88 7F7F7F7F7F7F7F7F80 80 80", "CW7002")]
    [InlineData("42505331 88 90 80 7F7F7F7F7F7F7F7F80", "CW7009")]
    public void A_malformed_patch_is_refused(string head, string code)
    {
        var patch = RandomPatches.Sign([.. PatchBench.Hex(head), .. new byte[12]], Image, null);
        Assert.Equal([code], PatchBench.Apply(Image, patch).Codes);
        Assert.Null(NaiveBps.Apply(Image, patch));
    }

    [Fact]
    public void A_changed_byte_is_seen_before_anything_else()
    {
        var patch = PatchBench.Hex(Worked);
        patch[8] ^= 1;
        Assert.Equal(["CW7016"], PatchBench.Apply(Image, patch).Codes);
        Assert.Equal(["CW7003"], PatchBench.Apply(Image, patch.AsSpan(..18)).Codes);
    }

    [Fact]
    public void A_wrong_base_is_told_with_what_was_expected_and_found()
    {
        var finding = Assert.Single(PatchBench.Apply(PatchBench.Ascii("ABCDEFGX"), PatchBench.Hex(Worked)).Findings);
        Assert.Equal("CW7007", finding.Code);
        Assert.Equal("8 bytes (0x8) and CRC-32 0x68DCB61C", finding.Expected);
        Assert.Contains($"8 bytes (0x8) and CRC-32 0x{TestBytes.Crc(PatchBench.Ascii("ABCDEFGX"))}", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["CW7006"], PatchBench.Apply(PatchBench.Ascii("ABCDEFG"), PatchBench.Hex(Worked)).Codes);
    }

    [Fact]
    public void A_patched_base_is_recognised() => Assert.Equal(["CW7008"], PatchBench.Apply(PatchBench.Ascii("ABXYEFGHABAAAAAA"), PatchBench.Hex(Worked)).Codes);

    [Fact]
    public void A_result_of_another_CRC_is_not_given_out()
    {
        var patch = PatchBench.Hex(Worked);
        patch[22] ^= 1;
        BinaryPrimitives.WriteUInt32LittleEndian(patch.AsSpan(26), NaiveBps.Crc(patch[..26]));
        Assert.Equal(["CW7010"], PatchBench.Apply(Image, patch).Codes);
    }

    [Fact]
    public void Metadata_is_shown()
    {
        byte[] patch = [.. PatchBench.Hex("42505331 88 88 85"), .. PatchBench.Ascii("tide!"), 0x9C, .. new byte[12]];
        var signed = RandomPatches.Sign(patch, Image, Image);
        Assert.Equal("tide!", Patch.Describe(signed)!.Text);
        Assert.Equal(["CW7005"], PatchBench.Apply(Image, signed).Codes);
    }

    [Fact]
    public void Two_gigabytes_of_runs_are_refused_before_any_room_is_made()
    {
        byte[] patch = [.. PatchBench.Hex("42505331 88"), .. RandomPatches.Number(int.MaxValue), 0x80, 0x81, 0x41, .. RandomPatches.Number(((int.MaxValue - 2UL) << 2) | 3), 0x80, .. new byte[12]];
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(["CW7002"], PatchBench.Apply(Image, RandomPatches.Sign(patch, Image, null)).Codes);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 0x10_0000);
    }

    [Fact]
    public void A_moved_block_costs_a_few_bytes()
    {
        var image = TestBytes.L(0x40000);
        byte[] target = [.. image[0x30000..], .. image[..0x123], 1, 2, 3, .. image[0x123..0x30000]];
        Assert.InRange(PatchBench.Make(PatchFormats.Bps, image, target).Output!.Length, 1, 60);
    }

    [Fact]
    public void Fill_and_repeats_cost_a_few_bytes()
    {
        byte[] target = [.. TestBytes.All(0xFF, 0x40000), .. TestBytes.L(100), .. TestBytes.All(0, 0x40000), .. TestBytes.L(100)];
        Assert.InRange(PatchBench.Make(PatchFormats.Bps, [], target).Output!.Length, 1, 160);
    }

    [Fact]
    public void A_target_above_the_limit_is_not_made() => Assert.Equal(["CW7002"], PatchBench.Make(PatchFormats.Bps, [], new byte[Patch.LargestResult + 1]).Codes);
}
