using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Atari8Bit;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

/// <summary>The CART container of both machines (CAR; CAR extension page).</summary>
public sealed class CartContainerTests
{
    // Sums of L(2000h) and L(8000h), computed twice by programs of their own.
    [Fact]
    public void The_worked_container_of_a_computer() =>
        Assert.Equal("4341525400000001000FD78400000000", Digits(ComputerPrograms.Bench("standard", TestBytes.L(0x2000)).Header("container", "cart")));

    [Fact]
    public void The_worked_container_of_the_console() =>
        Assert.Equal("4341525400000004003F971B00000000", Digits(ConsolePrograms.Bench("plain", TestBytes.L(0x8000)).Header("container", "cart")));

    // CAR extension page; Cartridge types thread.
    [Theory]
    [InlineData("standard", 8, 1)]
    [InlineData("standard", 16, 2)]
    [InlineData("right-slot", 8, 21)]
    [InlineData("xegs", 32, 12)]
    [InlineData("xegs", 64, 13)]
    [InlineData("xegs", 128, 14)]
    [InlineData("xegs", 256, 23)]
    [InlineData("xegs", 512, 24)]
    [InlineData("xegs", 1024, 25)]
    [InlineData("megacart", 16, 26)]
    [InlineData("megacart", 32, 27)]
    [InlineData("megacart", 64, 28)]
    [InlineData("megacart", 128, 29)]
    [InlineData("megacart", 256, 30)]
    [InlineData("megacart", 512, 31)]
    [InlineData("megacart", 1024, 32)]
    [InlineData("switchable-xegs", 32, 33)]
    [InlineData("switchable-xegs", 64, 34)]
    [InlineData("williams", 32, 22)]
    [InlineData("williams", 64, 8)]
    public void Numbers_of_a_computers_boards(string scheme, int kib, int number)
    {
        var bench = ComputerPrograms.Bench(scheme, kib << 10).Header("container", "cart");
        var cart = bench.Assemble();
        Assert.Equal(number, cart.Container()[7]);
        Assert.Empty(bench.Codes());
        Assert.Equal("car", new Atari8BitPlatform().Extension(cart));
    }

    [Theory]
    [InlineData("plain", 4, 20)]
    [InlineData("plain", 8, 19)]
    [InlineData("plain", 16, 16)]
    [InlineData("plain", 32, 4)]
    [InlineData("two-chip", 16, 6)]
    [InlineData("banked-40k", 40, 7)]
    public void Numbers_of_the_consoles_boards(string scheme, int kib, int number)
    {
        var bench = ConsolePrograms.Bench(scheme, ConsolePrograms.Whole(kib << 10)).Header("container", "cart");
        var cart = bench.Assemble();
        Assert.Equal(number, cart.Container()[7]);
        Assert.Empty(bench.Codes());
        Assert.Equal("car", new Atari5200Platform().Extension(cart));
    }

    [Theory]
    [InlineData("oss", 16, null, "CW4002")]
    [InlineData("oss", 16, "oss-16k-034m", null)]
    [InlineData("oss", 16, "0x0000000F", null)]
    [InlineData("switchable-xegs", 128, null, "CW4002")]
    [InlineData("standard", 8, "5200-8k", "CW4003")]
    public void A_number_that_only_the_manifest_can_say(string scheme, int kib, string? stated, string? code)
    {
        var bench = ComputerPrograms.Bench(scheme, kib << 10).Header("container", "cart");
        _ = stated is null ? bench : bench.Header("cartType", stated);
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Fact]
    public void Without_being_asked_for_there_is_none() => Assert.Single(ComputerPrograms.Bench().Assemble().Headers);

    [Fact]
    public void A_stated_checksum_is_compared()
    {
        var bench = ComputerPrograms.Bench().Header("container", "cart").Header("checksum", "0x00000001");
        bench.TryAssemble();
        Assert.Equal(["CW4004"], bench.Codes());
    }

    [Property(MaxTest = 100)]
    public void One_wrong_byte_is_found(ushort at, byte mask)
    {
        var cart = ComputerPrograms.Bench().Header("container", "cart").Assemble();
        var rom = cart.Rom();
        Assert.True(Checksum(cart, rom).Right);
        rom[at % rom.Length] ^= (byte)(mask | 1);
        Assert.False(Checksum(cart, rom).Right);
    }

    [Property(MaxTest = 50)]
    public void What_a_reader_finds_builds_the_same_container(byte number, uint reserved)
    {
        var first = ComputerPrograms.Bench().Header("container", "cart").Header("cartType", $"0x{number:X8}").Header("reserved12", $"{reserved:X8}").TryAssemble()!;
        var again = ComputerPrograms.Bench().Header("container", "cart");
        foreach (var entry in ComputerPrograms.Read(first.Headers[1], first.Rom(), first.Container()).Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(first.Container(), again.TryAssemble()!.Container());
    }

    private static ChecksumEntry Checksum(CartView cart, byte[] rom) => ComputerPrograms.Read(cart.Headers[1], rom, cart.Container()).Checksums[0];

    private static string Digits(RomBench bench) => Convert.ToHexString(bench.TryAssemble()!.Container());
}
