using System.Security.Cryptography;
using Cartwright.Checksums;
using Cartwright.Headers;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class BootBitmapTests
{
    // Digests of the bytes that Pan Docs (The Cartridge Header) and a 1998 Game Boy specification text both give.
    [Fact]
    public void The_bytes_have_the_known_digests()
    {
        Assert.Equal(48, BootBitmap.Bytes.Length);
        Assert.Equal("daf4cabdc852baa0291849203f0b41fd0b4ecd58e0d7aff4a509f5de4d7f9a2e", Convert.ToHexStringLower(SHA256.HashData(BootBitmap.Bytes)));
        Assert.Equal("46195417", TestBytes.Crc(BootBitmap.Bytes));
        Assert.Equal(5446UL, ByteSum.Sum64(BootBitmap.Bytes));
    }

    // What the colour models compare; same sources.
    [Fact]
    public void The_first_24_have_the_known_digests()
    {
        var half = BootBitmap.Bytes[..BootBitmap.ComparedByColor];
        Assert.Equal("bb66a9cb4abb502bbc966828af0f70be5e61cb9eeb5e5ae37f78b0c6660e1b08", Convert.ToHexStringLower(SHA256.HashData(half)));
        Assert.Equal("776B6F9F", TestBytes.Crc(half));
    }

    [Fact]
    public void It_is_written_where_the_program_holds_nothing()
    {
        var cart = Programs.Bench().Assemble();
        Assert.Equal(BootBitmap.Bytes, cart.Bytes("rom").Slice(0x104, 48));
        Assert.Equal("write", cart["bitmap"]);
    }

    [Fact]
    public void Keep_leaves_the_programs_bytes()
    {
        var other = TestBytes.L(48);
        var cart = Programs.Changed(0x104, other).Header("bitmap", "keep").Assemble();
        Assert.Equal(other, cart.Bytes("rom").Slice(0x104, 48));
        Assert.Equal(Convert.ToHexString(other), cart["bitmap"]);
    }

    [Fact]
    public void Other_bytes_of_the_program_are_never_replaced_in_silence()
    {
        var bench = Programs.Changed(0x104, TestBytes.L(48));
        var cart = bench.TryAssemble();
        Assert.Equal(TestBytes.L(48), cart!.Bytes("rom").Slice(0x104, 48));
        Assert.Contains("CW4194", bench.Codes());
    }

    [Theory]
    [InlineData("WRITE", true)]
    [InlineData("Keep", true)]
    [InlineData("CEED", false)]
    [InlineData("draw", false)]
    public void Words_are_read_in_any_case(string text, bool good) => Assert.Equal(good, new BitmapCodec([.. BootBitmap.Bytes]).Write(text, new byte[48]) is null);
}
