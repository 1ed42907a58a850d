using Cartwright.Platforms.VirtualBoy;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.VirtualBoy.VirtualBoyPrograms;

namespace Cartwright.Tests.Platforms.VirtualBoy;

/// <summary>Code of the handlers. Encodings of the V810 family, worked by hand.</summary>
public sealed class HandlerTests
{
    [Theory]
    [InlineData(0x07001234, "20BC0007 21A03412 0118")]
    [InlineData(0x0700C000, "20BC0107 21A000C0 0118")]
    public void The_stub_is_the_worked_one(uint address, string digits)
    {
        var stub = new byte[V810Jump.StubLength];
        V810Jump.WriteStub(address, stub);
        Assert.Equal(Hex(digits), stub);
        Assert.Equal(address, V810Jump.StubTarget(stub));
    }

    // A jump at 0x200 before the end of 1 MiB to offset 0x1000: 0xFEE00 back.
    [Fact]
    public void The_relative_jump_is_the_worked_one()
    {
        var distance = V810Jump.RelativeDistance(Hex("F0AB0012"));
        Assert.Equal(-0xFEE00, distance);
        Assert.Equal(0x1000, (0x100000 - 0x200 + distance) % 0x100000);
    }

    [Theory]
    [InlineData("F0AB0112")]
    [InlineData("F0AF0012")]
    [InlineData("F0AB")]
    public void Other_code_is_no_relative_jump(string digits) => Assert.Null(V810Jump.RelativeDistance(Hex(digits)));

    [Theory]
    [InlineData("00BC0007 00A03412 0018")]
    [InlineData("20BC0007 22A03412 0118")]
    [InlineData("20BC0007 21A03412 0218")]
    [InlineData("20BC0007 21A03412")]
    public void Other_code_is_no_stub(string digits) => Assert.Null(V810Jump.StubTarget(Hex(digits)));

    [Property]
    public void Any_address_comes_back_from_its_stub(uint address)
    {
        var stub = new byte[16];
        V810Jump.WriteStub(address, stub);
        Assert.Equal(address, V810Jump.StubTarget(stub));
    }

    // 101111 NNNNN 00000, hi, 101000 NNNNN NNNNN, lo, 000110 00000 NNNNN.
    [Fact]
    public void A_stub_may_use_any_register_but_0()
    {
        for (var register = 1; register < 32; register++)
        {
            int[] words = [0xBC00 | (register << 5), 0x0700, 0xA000 | (register << 5) | register, 0x1234, 0x1800 | register];
            Assert.Equal(0x07001234u, V810Jump.StubTarget([.. words.SelectMany(word => new[] { (byte)word, (byte)(word >> 8) })]));
        }
    }

    [Theory]
    [InlineData("none", "00000000000000000000000000000000")]
    [InlineData("return", "00640000000000000000000000000000")]
    [InlineData("0x07001234", "20BC000721A034120118000000000000")]
    [InlineData("7C4423DC000020BC000721A034120118", "7C4423DC000020BC000721A034120118")]
    [InlineData("64000000000000000000000000000000", "64000000000000000000000000000000")]
    [InlineData("20BC000721A035120118000000000000", "20BC000721A035120118000000000000")]
    [InlineData("00640000000000000000000000000001", "00640000000000000000000000000001")]
    public void Handlers_are_words_addresses_or_bytes(string text, string digits)
    {
        var bytes = new byte[16];
        Assert.Null(new HandlerCodec().Write(text, bytes));
        Assert.Equal(digits, Convert.ToHexString(bytes));
        Assert.Equal(text, new HandlerCodec().Read(bytes));
    }

    [Theory]
    [InlineData("$07000001")]
    [InlineData("$107000000")]
    [InlineData("0x")]
    [InlineData("start")]
    [InlineData("07000000")]
    public void Texts_that_are_no_handler(string text) => Assert.NotNull(new HandlerCodec().Write(text, new byte[16]));
}
