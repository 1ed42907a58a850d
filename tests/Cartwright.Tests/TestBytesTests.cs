using Xunit;

namespace Cartwright.Tests;

/// <summary>Worked values, computed by two independent programs, and the catalogue of parametrised CRC algorithms.</summary>
public sealed class TestBytesTests
{
    [Fact]
    public void The_generator_starts_as_published() =>
        Assert.Equal("3C5E81B40C5EC68E04A3406C97D63CFB", Convert.ToHexString(TestBytes.L(16)));

    [Theory]
    [InlineData(0x100, "83E2BACF")]
    [InlineData(0x10000, "52C975FA")]
    [InlineData(0x20000, "662B121A")]
    [InlineData(0x60000, "C092265F")]
    public void The_generator_gives_the_worked_digests(int length, string crc) =>
        Assert.Equal(crc, TestBytes.Crc(TestBytes.L(length)));

    // Catalogue of parametrised CRC algorithms, CRC-32/ISO-HDLC: check value.
    [Fact]
    public void The_digest_is_the_catalogue_s_CRC_32() => Assert.Equal("CBF43926", TestBytes.Crc("123456789"u8));

    [Fact]
    public void The_digest_of_nothing_is_zero() => Assert.Equal("00000000", TestBytes.Crc([]));
}
