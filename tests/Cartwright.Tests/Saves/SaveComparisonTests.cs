using Cartwright.Saves;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveComparisonTests
{
    [Fact]
    public void Changes_are_counted_by_block_and_by_run()
    {
        var (before, after) = (new byte[1024], new byte[1024]);
        (after[0xFF], after[0x100], after[0x101], after[0x3FF]) = (1, 3, 7, 0xFF);
        var comparison = SaveComparison.Of(before, after, 256);
        Assert.Equal((4, 14L, 2), (comparison.ChangedBytes, comparison.ChangedBits, comparison.RunCount));
        Assert.Equal([new(0, 1), new(1, 2), new(3, 1)], comparison.Blocks);
        Assert.Equal([new(0xFF, 3), new(0x3FF, 1)], comparison.Runs);
        Assert.Equal("4 of 1024 bytes (14 bits), first at 0x0000FF (255)", comparison.Summary);
    }

    [Theory]
    [InlineData(0, 0, "all 0 bytes are the same")]
    [InlineData(8192, 8192, "all 8 KiB are the same")]
    [InlineData(8192, 0, "the 0 bytes both have are the same")]
    [InlineData(8192, 32767, "the 8 KiB both have are the same")]
    public void Equal_bytes_of_other_lengths_are_no_equal_saves(int first, int second, string summary)
    {
        var comparison = SaveComparison.Of(new byte[first], new byte[second], 256);
        Assert.Equal((first == second, summary), (comparison.IsSame, comparison.Summary));
    }

    [Fact]
    public void Sixteen_mebibytes_of_scattered_changes_are_counted_and_only_the_first_runs_listed()
    {
        var after = new byte[16 << 20];
        for (var i = 0; i < after.Length; i += 2) after[i] = 0x80;
        var comparison = SaveComparison.Of(new byte[16 << 20], after, SaveComparison.SmallestBlock);
        Assert.Equal((8 << 20, 8 << 20, SaveComparison.MostRuns, 1 << 20), (comparison.ChangedBytes, comparison.RunCount, comparison.Runs.Length, comparison.Blocks.Length));
        Assert.All(comparison.Blocks, block => Assert.Equal(8, block.ChangedBytes));
    }

    // The counts against a plain loop over the bytes.
    [Property]
    public bool Counts_are_those_of_a_loop(byte[] first, byte[] second)
    {
        var comparison = SaveComparison.Of(first, second, SaveComparison.SmallestBlock);
        var common = Math.Min(first.Length, second.Length);
        var changed = Enumerable.Range(0, common).Where(i => first[i] != second[i]).ToList();
        var blocks = changed.GroupBy(i => i / SaveComparison.SmallestBlock).Select(group => new ChangedBlock(group.Key, group.Count()));
        return comparison.ChangedBytes == changed.Count
            && comparison.Blocks.SequenceEqual(blocks)
            && comparison.RunCount == changed.Count(i => i == 0 || first[i - 1] == second[i - 1])
            && comparison.Runs.SelectMany(run => Enumerable.Range(run.Offset, run.Length)).SequenceEqual(changed);
    }
}
