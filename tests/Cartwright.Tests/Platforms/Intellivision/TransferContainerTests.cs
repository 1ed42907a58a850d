using System.Buffers.Binary;
using Cartwright.Checksums;
using Cartwright.Platforms;
using Cartwright.Platforms.Intellivision;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Intellivision;

/// <summary>The container of "Transfer protocol summary" against worked values, all computed by two independent programs.</summary>
public sealed class TransferContainerTests
{
    [Fact]
    public void One_segment()
    {
        var rom = TestBytes.L(15872);
        var file = TransferContainer.Parts(rom).SelectMany(part => part.ToArray()).ToArray();
        Assert.Equal(15929, file.Length);
        Assert.Equal("A801FE506E", Convert.ToHexString(file[..5]));
        Assert.Equal(rom, file[5..(5 + rom.Length)]);
        Assert.Equal(Crc16.Compute([0x50, 0x6E], rom), BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(5 + rom.Length)));
        Assert.Equal("0000000000" + "1111" + new string('0', 18) + Repeat("07", 22) + "06" + Repeat("07", 9) + "7566", Convert.ToHexString(file[^50..]));
    }

    [Fact]
    public void The_table_of_two_segments()
    {
        var table = TransferContainer.Table([(0x50, 0x67), (0xF0, 0xFE)]);
        Assert.Equal("0000000000" + "1101" + Repeat("00", 8) + "11" + Repeat("07", 31) + "06", Convert.ToHexString(table));
        Assert.Equal(0x77AA, Crc16.Compute(table));
    }

    [Fact]
    public void A_ROM_of_all_runs_has_three_segments()
    {
        var file = TransferContainer.Parts(TestBytes.L(0x8000)).SelectMany(part => part.ToArray()).ToArray();
        Assert.Equal("A803FC506F", Convert.ToHexString(file[..5]));
        Assert.Equal("D0DF", Convert.ToHexString(file, 3 + 2 + 0x4000 + 2, 2));
        Assert.Equal("F0FF", Convert.ToHexString(file, 3 + 2 + 0x4000 + 4 + 0x2000 + 2, 2));
        Assert.True(TransferContainer.IsWhole(file));
        Assert.True(TransferContainer.IsWhole([.. file, 0x04, 0x06, 0x00, 0x00, 0x00, 0x40, 0x8D, 0xF0]));
    }

    [Property(MaxTest = 60)]
    public void Any_changed_byte_is_noticed(int seed)
    {
        var random = new Random(seed);
        var file = TransferContainer.Parts(TestBytes.L(0x200 * random.Next(1, 65))).SelectMany(part => part.ToArray()).ToArray();
        file[random.Next(file.Length)] ^= (byte)random.Next(1, 0x100);
        Assert.False(TransferContainer.IsWhole(file));
    }

    [Theory]
    [InlineData("none", "bin", 0x2000)]
    [InlineData("transfer", "rom", 0x2000 + 3 + 4 + 50)]
    public void The_manifest_chooses_the_form(string container, string extension, int length)
    {
        var cart = IntvPrograms.Bench().Header("container", container).Assemble();
        Assert.Equal((extension, length), (new IntvPlatform().Extension(cart), cart.File().Length));
    }

    [Theory]
    [InlineData("none", Certainty.Structural)]
    [InlineData("transfer", Certainty.Exact)]
    public void Both_forms_are_recognised(string container, Certainty certainty)
    {
        var file = IntvPrograms.Bench().Header("container", container).Assemble().File();
        var claim = new IntvPlatform().Recognise(file)!;
        Assert.Equal((certainty, container), (claim.Certainty, claim.Variant));
    }

    [Fact]
    public void A_damaged_container_is_a_candidate()
    {
        var file = IntvPrograms.Bench().Header("container", "transfer").Assemble().File();
        file[0x100]++;
        Assert.Equal(Certainty.Candidate, new IntvPlatform().Recognise(file)!.Certainty);
        for (var length = 0; length < 0x300; length++)
            Assert.NotEqual(Certainty.Exact, new IntvPlatform().Recognise(file.AsSpan(0, length))?.Certainty);
    }

    private static string Repeat(string digits, int count) => string.Concat(Enumerable.Repeat(digits, count));
}
