using Cartwright.Headers;
using Cartwright.Tests.Platforms;
using Xunit;

namespace Cartwright.Tests.Headers;

public sealed class ChecksumTests
{
    private const int Offset = TestPlatform.LowStart + 0x1E;

    [Fact]
    public void A_checksum_is_computed_over_the_finished_header_and_stored()
    {
        var cart = Bench().Assemble();
        var entry = Assert.Single(cart.Headers[0].Checksums);
        var expected = TestPlatform.Sum(cart.Bytes("rom"), TestPlatform.LowStart);
        Assert.Equal((expected, expected, Offset), (entry.Stored, entry.Computed, entry.Offset));
        Assert.True(entry.Right);
        Assert.Equal((expected >> 8, expected & 0xFF), ((ulong)cart.Bytes("rom")[Offset], (ulong)cart.Bytes("rom")[Offset + 1]));
    }

    [Theory]
    [InlineData(null, null, "CW4006", false)]
    [InlineData(true, null, "CW4006", false)]
    [InlineData(false, null, "CW4006", false)]
    [InlineData(null, "checksum", "CW4007", true)]
    [InlineData(false, "CHECKSUM", "CW4007", true)]
    public void A_program_s_checksum_is_written_over_unless_it_is_kept_by_name(bool? all, string? field, string code, bool isKept)
    {
        var bench = Bench().Program("rom", Offset, [0x12, 0x34]).Keep(all, field is null ? [] : [field]);
        var entry = Assert.Single(bench.Assemble().Headers[0].Checksums);
        Assert.Equal([code], bench.Codes());
        Assert.Equal(isKept, entry.Stored == 0x1234);
        Assert.Equal(!isKept, entry.Right);
        Assert.Contains("0x1234", bench.Log.ToSorted()[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0xFF)]
    public void A_blank_checksum_is_written_without_a_word(byte blank)
    {
        var bench = Bench().Program("rom", Offset, [blank, blank]);
        Assert.True(bench.Assemble().Headers[0].Checksums[0].Right);
        Assert.Empty(bench.Codes());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0xFF)]
    public void A_checksum_kept_by_name_is_kept_even_where_it_was_never_filled_in(byte blank)
    {
        var bench = Bench().Program("rom", Offset, [blank, blank]).Keep(null, "checksum");
        Assert.Equal((ulong)(blank * 0x101), bench.Assemble().Headers[0].Checksums[0].Stored);
        Assert.Equal(["CW4007"], bench.Codes());
    }

    [Fact]
    public void Where_no_program_is_there_is_no_checksum_to_keep()
    {
        var bench = Bench().Keep(null, "checksum");
        Assert.True(bench.Assemble().Headers[0].Checksums[0].Right);
    }

    [Fact]
    public void A_checksum_the_program_has_right_is_left_without_a_word()
    {
        var right = Bench().Assemble().Headers[0].Checksums[0].Computed;
        var bench = Bench().Program("rom", Offset, [(byte)(right >> 8), (byte)right]);
        Assert.True(bench.Assemble().Headers[0].Checksums[0].Right);
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void A_stated_checksum_is_held_against_the_computed_one()
    {
        var right = Bench().Assemble().Headers[0].Checksums[0].Computed;
        var good = Bench().Header("checksum", $"0x{right:X4}");
        good.TryAssemble();
        Assert.Empty(good.Codes());
        foreach (var stated in (string[])[$"{right + 1}", "unknown"])
        {
            var bench = Bench().Header("checksum", stated);
            bench.TryAssemble();
            Assert.Equal([HeaderFindings.StatedWrong.Code], bench.Codes());
        }
    }

    private static RomBench Bench() => new RomBench(new TestPlatform()).Program("rom", 0x80, TestBytes.L(0x60));
}
