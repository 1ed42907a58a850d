using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

/// <summary>Differences are counted as one would by hand.</summary>
public sealed class DifferencesTests
{
    [Property]
    public void Every_differing_byte_counts_once(byte[] first, byte[] changes)
    {
        var second = first.ToArray();
        for (var i = 0; i < Math.Min(first.Length, changes.Length); i++)
            second[i] ^= (byte)(changes[i] & 1);

        Assert.Equal(first.Zip(second).Count(pair => pair.First != pair.Second), Differences.Count(first, second));
    }

    [Fact]
    public void Runs_of_two_lengths_are_no_pair() => Assert.Throws<ArgumentException>(() => Differences.Count([1], [1, 2]));
}
