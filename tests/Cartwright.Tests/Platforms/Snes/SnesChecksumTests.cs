using Cartwright.Checksums;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Platforms.Snes;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesChecksumTests
{
    private const int Bank = 0x8000;

    // 3 of 4 units show as 0 1 2 2, 5 of 8 as 0 1 2 3 4 4 4 4, 7 of 8 as 0 … 5 6 6, 12 of 16 as 0 … 11 8 9 10 11.
    [Theory]
    [InlineData(3, 0, 1)]
    [InlineData(3, 2, 2)]
    [InlineData(5, 3, 1)]
    [InlineData(5, 4, 4)]
    [InlineData(7, 5, 1)]
    [InlineData(7, 6, 2)]
    [InlineData(12, 8, 2)]
    [InlineData(16, 15, 1)]
    public void A_unit_is_counted_as_often_as_the_view_shows_it(int length, int unit, int times) =>
        Assert.Equal((ulong)times, MirroredByteSum.Repeats(unit, length));

    [Fact]
    public void Every_unit_of_every_length_is_counted_as_often_as_the_view_shows_it()
    {
        for (var length = 1; length < 130; length++)
        {
            var view = Enumerable.Range(0, (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)length)).CountBy(address => Map(address, length)).ToDictionary();
            for (var unit = 0; unit < length; unit++)
                Assert.Equal((ulong)view[unit], MirroredByteSum.Repeats(unit, length));
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void A_unit_outside_the_image_is_refused(int unit) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MirroredByteSum.Repeats(unit, 3));

    // The plain way: put FF FF 00 00 there, walk the whole view address by address, add.
    [Theory]
    [InlineData("lorom", 1)]
    [InlineData("lorom", 2)]
    [InlineData("lorom", 3)]
    [InlineData("lorom", 5)]
    [InlineData("lorom", 7)]
    [InlineData("lorom", 11)]
    [InlineData("hirom", 6)]
    [InlineData("hirom", 10)]
    [InlineData("exhirom", 130)]
    [InlineData("exlorom", 129)]
    [InlineData("exlorom", 133)]
    public void The_sum_is_that_of_the_whole_view(string name, int banks)
    {
        var pair = SnesMapping.Named(name).Title + 0x1C;
        var rom = TestBytes.L(banks * Bank);
        var held = rom.ToArray();
        byte[] placeholder = [0xFF, 0xFF, 0x00, 0x00];
        placeholder.CopyTo(rom, pair);
        var view = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)rom.Length);
        var sum = 0;
        for (var address = 0; address < view; address++)
            sum += rom[Map(address, rom.Length)];

        Assert.Equal((ushort)sum, SnesChecksum.Sum(held, pair));
        Assert.Equal((ushort)(sum ^ 0xFFFF), SnesChecksum.Complement(held, pair));
        Assert.Equal((ushort)sum, SnesChecksum.Sum(rom, pair));
    }

    [Property]
    public void What_the_pair_holds_does_not_count(byte a, byte b, byte c, byte d, bool uneven)
    {
        var rom = TestBytes.L(uneven ? 3 * Bank : Bank);
        var before = SnesChecksum.Sum(rom, 0x7FDC);
        byte[] pair = [a, b, c, d];
        pair.CopyTo(rom, 0x7FDC);
        Assert.Equal(before, SnesChecksum.Sum(rom, 0x7FDC));
    }

    [Property]
    public void Any_flipped_byte_shows(ushort where, byte flip, bool uneven)
    {
        var mapping = SnesMapping.Lorom;
        var bench = SnesBench.Clean(mapping);
        if (uneven)
            bench.Program("rom", 2 * Bank, TestBytes.L(Bank)).Size("rom", 3 * Bank);

        var rom = bench.Assemble().Rom();
        Assert.All(SnesBench.Read(mapping, rom).Checksums, entry => Assert.True(entry.Right));
        rom[where % rom.Length] ^= (byte)(flip | 1);
        Assert.Contains(SnesBench.Read(mapping, rom).Checksums, entry => !entry.Right);
    }

    [Fact]
    public void Every_byte_is_covered()
    {
        var mapping = SnesMapping.Lorom;
        var rom = SnesBench.Clean(mapping).Assemble().Rom();
        for (var i = 0; i < rom.Length; i += 127)
        {
            rom[i] ^= 0x40;
            Assert.Contains(SnesBench.Read(mapping, rom).Checksums, entry => !entry.Right);
            rom[i] ^= 0x40;
        }
    }

    // Common practice: a template has letters where the pair belongs.
    [Fact]
    public void Letters_in_place_of_the_pair_are_mended_and_told()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => "CCCS"u8.CopyTo(bank.AsSpan(0x7FDC)));
        var plain = SnesBench.Clean(SnesMapping.Lorom).Assemble().Rom();
        Assert.Equal(plain, bench.Assemble().Rom());
        Assert.Equal(2, bench.Count(HeaderFindings.WrittenOver));
    }

    [Fact]
    public void A_kept_pair_stays_and_is_told()
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom, bank => "CCCS"u8.CopyTo(bank.AsSpan(0x7FDC))).Keep(null, "checksum", "complement");
        var rom = bench.Assemble().Rom();
        Assert.Equal("CCCS"u8, rom.AsSpan(0x7FDC, 4));
        Assert.Equal(2, bench.Count(HeaderFindings.KeptWrong));
        Assert.DoesNotContain(bench.Log.ToSorted(), finding => finding.Severity == FindingSeverity.Error);
    }

    [Theory]
    [InlineData("checksum", "0x1234")]
    [InlineData("complement", "nonsense")]
    public void A_stated_checksum_is_held_against_the_true_one(string row, string value)
    {
        var bench = SnesBench.Clean(SnesMapping.Lorom).Header(row, value);
        Assert.NotNull(bench.TryAssemble());
        Assert.Equal(1, bench.Count(HeaderFindings.StatedWrong));
    }

    // As SNESdev Wiki's readers have it: take away the highest bit of the address until it lies in the image.
    private static int Map(int address, int length)
    {
        var start = 0;
        var mask = 0x800000;
        while (address >= length)
        {
            while ((address & mask) == 0)
                mask >>= 1;

            address -= mask;
            if (length > mask)
            {
                length -= mask;
                start += mask;
            }

            mask >>= 1;
        }

        return start + address;
    }
}
