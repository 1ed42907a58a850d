using Cartwright.Inspection;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>How much of a region is content.</summary>
public sealed class MeasureTests
{
    private static readonly byte[] Content = [.. Enumerable.Range(1, 100).Select(value => (byte)value)];

    [Fact]
    public void Fill_at_the_end_is_no_content() =>
        Assert.Equal(new ContentMeasure(256, 100, 0xFF), ContentMeasure.Of([.. Content, .. Enumerable.Repeat((byte)0xFF, 156)]));

    [Fact]
    public void A_few_bytes_at_the_end_are_the_program_s() =>
        Assert.Equal(new ContentMeasure(110, 110, null), ContentMeasure.Of([.. Content, .. new byte[10]]));

    [Fact]
    public void Repeats_are_measured_once()
    {
        byte[] once = [.. Content, .. new byte[28]];
        Assert.Equal(new ContentMeasure(128, 100, 0x00), ContentMeasure.Of([.. once, .. once, .. once, .. once]));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(4096, 1)]
    public void A_blank_region_has_no_content(int length, int period) =>
        Assert.Equal((period, 0), (ContentMeasure.Of(new byte[length]).Period, ContentMeasure.Of(new byte[length]).Content));

    [Fact]
    public void Banks_are_as_full_as_their_last_byte_that_is_no_fill()
    {
        byte[] region = [.. Content, .. new byte[28], .. Enumerable.Repeat((byte)0xFF, 128), 1, 2];
        Assert.Equal([new BankUse(0, 0, 128, 100), new BankUse(1, 128, 128, 0), new BankUse(2, 256, 2, 2)], BankUse.Of(region, 128));
    }

    [Fact]
    public void A_region_without_banks_is_shown_in_sixteenths() => Assert.Equal(16, BankUse.Of(new byte[4096], 0).Length);
}
