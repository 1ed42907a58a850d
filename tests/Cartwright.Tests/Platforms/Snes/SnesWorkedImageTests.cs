using System.Buffers.Binary;
using Cartwright.Platforms;
using Cartwright.Platforms.Snes;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

/// <summary>Worked images, computed by two independent programs by the rules of SNESdev Wiki, ROM header.</summary>
public sealed class SnesWorkedImageTests
{
    private const int PairInHeader = 0x2C;

    [Theory]
    [InlineData("lorom", 0x008000, "slow", 0x20, 0x05, 0xA89B, "0B0A8D36")]
    [InlineData("lorom", 0x040000, "slow", 0x20, 0x08, 0xE89E, "6A04A0AE")]
    [InlineData("lorom", 0x018000, "slow", 0x20, 0x07, 0xE89D, "E63565A7")]
    [InlineData("hirom", 0x140000, "slow", 0x21, 0x0B, 0xE8A2, "E13FF002")]
    [InlineData("lorom", 0x1C0000, "fast", 0x30, 0x0B, 0xE8B1, "21E3EF12")]
    [InlineData("hirom", 0x300000, "fast", 0x31, 0x0C, 0xE8B3, "D92F39A5")]
    [InlineData("exhirom", 0x600000, "fast", 0x35, 0x0D, 0xD170, "68483375")]
    public void The_image_comes_out_as_worked(string name, int length, string speed, byte mode, byte size, ushort checksum, string crc)
    {
        var mapping = SnesMapping.Named(name);
        var cart = Build(mapping, length, speed);
        var rom = cart.Bytes("rom");
        Assert.Equal(mode, rom[mapping.Header + 0x25]);
        Assert.Equal(size, rom[mapping.Header + 0x27]);
        Assert.Equal(checksum, BinaryPrimitives.ReadUInt16LittleEndian(rom[(mapping.Header + PairInHeader + 2)..]));
        Assert.Equal((ushort)~checksum, BinaryPrimitives.ReadUInt16LittleEndian(rom[(mapping.Header + PairInHeader)..]));
        Assert.Equal(crc, TestBytes.Crc(rom));
        Assert.All(cart.Headers[0].Checksums, entry => Assert.True(entry.Right));
        Assert.All(SnesBench.Read(mapping, rom).Checksums, entry => Assert.True(entry.Right));
    }

    private static CartView Build(SnesMapping mapping, int length, string speed)
    {
        var bytes = TestBytes.Snes(length);
        bytes.AsSpan(mapping.Header, SnesMapping.HeaderLength + 4).Clear();
        for (var vector = mapping.Title + 0x24; vector < mapping.Title + 0x40; vector += 2)
            BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(vector), 0x8000);

        return new RomBench(new SnesPlatform()) { Title = "CARTWRIGHT TEST" }
            .Header("mapping", mapping.Name).Header("speed", speed).Header("region", "north-america")
            .Program("rom", 0, bytes).Size("rom", length).Assemble();
    }
}
