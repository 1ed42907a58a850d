using Cartwright.Patching;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>IPS. Sources: IPS patch format; IPS article (restrictions, the EOF offset).</summary>
public sealed class IpsTests
{
    private const string Begin = "50 41 54 43 48";
    private const string End = "45 4F 46";

    // The forms of IPS patch format, put together by hand.
    [Fact]
    public void Bytes_and_a_run_are_written_where_they_belong()
    {
        var output = PatchBench.Output(new byte[0x300], PatchBench.Hex($"{Begin} 00 01 00 00 02 AA BB 00 02 00 00 00 00 10 FF {End}"));
        var expected = new byte[0x300];
        (expected[0x100], expected[0x101]) = (0xAA, 0xBB);
        expected.AsSpan(0x200, 16).Fill(0xFF);
        Assert.Equal(expected, output);
    }

    // A patch of this form is in use: a run, and a final length.
    [Theory]
    [InlineData(0x10)]
    [InlineData(0x14)]
    [InlineData(0x20)]
    public void A_final_length_cuts_a_longer_image(int length)
    {
        var run = PatchBench.Apply(TestBytes.All(7, length), PatchBench.Hex($"{Begin} 00 00 10 00 00 00 04 20 {End} 00 00 14"));
        Assert.Equal([.. TestBytes.All(7, 0x10), .. TestBytes.All(0x20, 4)], run.Output!);
        Assert.Equal(length > 0x14 ? ["CW7015"] : [], run.Codes);
    }

    [Fact]
    public void A_final_length_lengthens_nothing() =>
        Assert.Equal([9, 2], PatchBench.Output([1, 2], PatchBench.Hex($"{Begin} 000000 0001 09 {End} 000010")));

    [Fact]
    public void What_is_written_past_the_end_lengthens_the_image_and_a_gap_is_zeros() =>
        Assert.Equal([1, 2, 0, 0, 9], PatchBench.Output([1, 2], PatchBench.Hex($"{Begin} 000004 0001 09 {End}")));

    [Fact]
    public void Later_records_win() =>
        Assert.Equal([1, 9, 8, 4], PatchBench.Output([1, 2, 3, 4], PatchBench.Hex($"{Begin} 000001 0002 0707 000001 0002 0908 {End}")));

    [Fact]
    public void The_last_record_begins_at_the_last_offset()
    {
        var output = PatchBench.Output([], PatchBench.Hex($"{Begin} FFFFFF 0000 FFFF 5A {End}"));
        Assert.Equal(0xFFFFFF + 0xFFFF, output.Length);
        Assert.Equal(0xFFFF, output.Count(value => value == 0x5A));
    }

    [Theory]
    [InlineData("", "CW7003")]
    [InlineData("000001 0002 07", "CW7003")]
    [InlineData("000001 0002 0707", "CW7003")]
    [InlineData("000001 0000 0001", "CW7003")]
    [InlineData("000001 0000 0000 07 454F46", "CW7011")]
    public void A_malformed_patch_is_refused(string records, string code) =>
        Assert.Equal([code], PatchBench.Apply(new byte[16], PatchBench.Hex($"{Begin} {records}")).Codes);

    [Fact]
    public void A_place_is_told_in_hex_and_decimal()
    {
        var finding = Assert.Single(PatchBench.Apply(new byte[16], PatchBench.Hex($"{Begin} 000001 0002 0707 000001 0000 0000 07 {End}")).Findings);
        Assert.Equal(12, finding.Place.Offset);
        Assert.Contains("0x0000000C (12)", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_end_mark_counts_when_what_follows_leads_nowhere()
    {
        var run = PatchBench.Apply([1, 2], PatchBench.Hex($"{Begin} 000000 0001 09 {End} 0102"));
        Assert.Equal([9, 2], run.Output);
        Assert.Equal(["CW7013"], run.Codes);
    }

    [Fact]
    public void A_record_at_the_offset_that_reads_EOF_is_a_record_when_the_patch_goes_on_and_ends_properly()
    {
        var run = PatchBench.Apply(new byte[0x454F50], PatchBench.Hex($"{Begin} 454F46 0002 0908 {End}"));
        Assert.Equal([0, 9, 8, 0], run.Output![0x454F45..0x454F49]);
        Assert.Equal(["CW7012"], run.Codes);
    }

    [Fact]
    public void A_patch_that_changes_nothing_says_so() =>
        Assert.Equal(["CW7005"], PatchBench.Apply([1, 2], PatchBench.Hex($"{Begin} 000001 0001 02 {End}")).Codes);

    // No record may begin at 0x454F46, whatever leads there: a change, a run, the second part of a change longer than a record.
    [Theory]
    [InlineData(0x454F46, 1, false)]
    [InlineData(0x454F46, 100, false)]
    [InlineData(0x454F46, 100, true)]
    [InlineData(0x454F46, 0x20000, true)]
    [InlineData(0x454F46 - 0xFFFF, 0x20000, false)]
    [InlineData(0x454F46 - 0xFFFF, 0x20000, true)]
    [InlineData(0x454F46 - 5, 100, true)]
    public void No_record_is_made_at_the_offset_that_reads_EOF(int at, int length, bool isRun)
    {
        var image = new byte[0x454F46 + 0x30000];
        var target = (byte[])image.Clone();
        for (var i = 0; i < length; i++) target[at + i] = isRun ? (byte)0x77 : (byte)(1 + (i % 250));
        var made = PatchBench.Make(PatchFormats.Ips, image, target);
        Assert.Empty(made.Codes);
        Assert.DoesNotContain(0x454F46, Offsets(made.Output!));
        Assert.Equal(target, NaiveIps.Apply(image, made.Output!));
    }

    [Fact]
    public void Runs_and_small_gaps_make_small_patches()
    {
        var image = new byte[0x10000];
        var target = (byte[])image.Clone();
        target.AsSpan(0x100, 0x4000).Fill(0xEA);
        (target[0x8000], target[0x8005]) = (1, 2);
        Assert.Equal(PatchBench.Hex($"{Begin} 000100 0000 4000 EA 008000 0006 010000000002 {End}"), PatchBench.Make(PatchFormats.Ips, image, target).Output);
    }

    [Fact]
    public void A_shorter_image_is_cut_and_that_is_told()
    {
        var made = PatchBench.Make(PatchFormats.Ips, [1, 2, 3], [1, 2]);
        Assert.Equal(PatchBench.Hex($"{Begin} {End} 000002"), made.Output);
        Assert.Equal(["CW7015"], made.Codes);
    }

    [Fact]
    public void Sixteen_MiB_are_in_reach_and_one_byte_more_is_not()
    {
        var image = new byte[0x100_0000];
        var target = (byte[])image.Clone();
        target[^1] = 1;
        Assert.Empty(PatchBench.Make(PatchFormats.Ips, image, target).Codes);
        Assert.Equal(["CW7014"], PatchBench.Make(PatchFormats.Ips, image, [.. image, 1]).Codes);
        Assert.Equal(["CW7014"], PatchBench.Make(PatchFormats.Ips, [.. image, 1], image).Codes);
    }

    // Walks the records without a look at what they hold.
    private static IEnumerable<int> Offsets(byte[] patch)
    {
        for (var at = 5; at < patch.Length - 3;)
        {
            yield return (patch[at] << 16) | (patch[at + 1] << 8) | patch[at + 2];
            var size = (patch[at + 3] << 8) | patch[at + 4];
            at += size == 0 ? 8 : 5 + size;
        }
    }
}
