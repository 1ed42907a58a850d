using Cartwright.Checksums;
using Cartwright.Tests.Patching;
using Xunit;

namespace Cartwright.Tests.Checksums;

public sealed class Adler32Tests
{
    // RFC 1950; the second value is the usual check of nine digits.
    [Theory]
    [InlineData("", 0x00000001)]
    [InlineData("123456789", 0x091E01DE)]
    public void Worked_values(string text, uint expected) => Assert.Equal(expected, Adler32.Of(PatchBench.Ascii(text)));

    [Theory]
    [InlineData(5551)]
    [InlineData(5552)]
    [InlineData(5553)]
    [InlineData(200_000)]
    public void Long_inputs_of_the_largest_byte_do_not_overflow(int length) =>
        Assert.Equal(NaiveVcdiff.Adler(TestBytes.All(0xFF, length)), Adler32.Of(TestBytes.All(0xFF, length)));
}
