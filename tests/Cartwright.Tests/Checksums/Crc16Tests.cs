using Cartwright.Checksums;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Checksums;

public sealed class Crc16Tests
{
    // The check value of CRC-16/IBM-3740 in the Catalogue of parametrised CRC algorithms.
    [Fact]
    public void The_published_check_value() => Assert.Equal(0x29B1, Crc16.Compute("123456789"u8));

    // Worked values of the transfer container, all computed by two independent programs.
    [Fact]
    public void Worked_values()
    {
        Assert.Equal(0x9A53, Crc16.Compute(TestBytes.L(0x200)));
        Assert.Equal(0xBD6F, Crc16.Compute([0x50, 0x50], TestBytes.L(0x200)));
        Assert.Equal(0x8DF0, Crc16.Compute([0x04, 0x06, 0x00, 0x00, 0x00, 0x40]));
    }

    [Property]
    public void Two_runs_are_one(byte[] bytes, int cut)
    {
        var at = Math.Abs(cut % (bytes.Length + 1));
        Assert.Equal(Crc16.Compute(bytes), Crc16.Compute(bytes.AsSpan(0, at), bytes.AsSpan(at)));
    }

    [Property]
    public void One_changed_bit_changes_it(byte[] bytes, int bit)
    {
        if (bytes.Length == 0)
            return;

        var changed = bytes.ToArray();
        var at = Math.Abs(bit % (8 * bytes.Length));
        changed[at / 8] ^= (byte)(1 << (at % 8));
        Assert.NotEqual(Crc16.Compute(bytes), Crc16.Compute(changed));
    }
}
