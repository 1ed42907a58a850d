using Cartwright.TestImages;
using Xunit;

namespace Cartwright.Tests.TestImages;

public sealed class RetentionCheckTests
{
    private static readonly byte[] Written = MemoryImage.Make(4096, 1);

    [Fact]
    public void What_is_the_same_was_kept()
    {
        var check = RetentionCheck.Compare(Written, Written, Written);
        Assert.Equal(new RetentionCheck(4096, 0, 0, 0, 0), check);
        Assert.True(check.IsKept);
    }

    [Fact]
    public void Bits_are_counted_by_direction_and_block()
    {
        var before = (byte[])Written.Clone();
        var after = (byte[])Written.Clone();
        (before[3], after[3]) = (0xF0, 0x0F);
        (before[4], after[4]) = (0x00, 0x01);
        (before[700], after[700]) = (0x01, 0x00);
        var check = RetentionCheck.Compare(Written, before, after);
        Assert.Equal((5, 5, 2), (check.BitsToZero, check.BitsToOne, check.BlocksChanged));
        Assert.Equal(3, check.WrongBefore);
        Assert.False(check.IsKept);
        Assert.False(check.IsForgotten);
    }

    [Fact]
    public void Chance_bytes_mean_that_everything_is_forgotten() => Assert.True(RetentionCheck.Compare(Written, Written, TestBytes.L(4096)).IsForgotten);
}
