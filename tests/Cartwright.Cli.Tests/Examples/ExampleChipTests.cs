using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>The chip files of the examples, made a second time from the ROM file with GNU objcopy and plain copies.</summary>
public sealed class ExampleChipTests
{
    private const int Container = 16;
    private const int Prg = 16 << 10;

    public static TheoryData<string> Names => ExampleCart.Names;

    [Fact]
    public void The_two_chips_of_a_16_bit_bus_hold_the_even_and_the_odd_bytes()
    {
        Tool.Require("objcopy");
        using var temp = new TempFolder();
        ExampleCart.Build("lantern-tide-md", temp.Path);
        Tool.Succeed("objcopy", temp.Path, "-I", "binary", "-O", "binary", "--interleave=2", "--byte=0", "lantern-tide-md.md", "even.bin");
        Tool.Succeed("objcopy", temp.Path, "-I", "binary", "-O", "binary", "--interleave=2", "--byte=1", "lantern-tide-md.md", "odd.bin");
        Assert.Equal(temp.Read("even.bin"), temp.Read("lantern-tide-md.U1.bin"));
        Assert.Equal(temp.Read("odd.bin"), temp.Read("lantern-tide-md.U2.bin"));
    }

    [Theory]
    [InlineData("lantern-tide-gb", "U1", 0, 32 << 10, 16)]
    [InlineData("lantern-tide-snes", "U1", 0, 64 << 10, 8)]
    [InlineData("lantern-tide-nes", "U1", Container, Prg, 8)]
    [InlineData("lantern-tide-nes", "U2", Container + Prg, 8 << 10, 16)]
    public void A_chip_repeats_its_part_of_the_rom(string name, string site, int start, int length, int times)
    {
        using var temp = new TempFolder();
        ExampleCart.Build(name, temp.Path);
        var part = File.ReadAllBytes(ExampleCart.Rom(temp.Path))[start..(start + length)];
        Assert.Equal(Enumerable.Repeat(part, times).SelectMany(static copy => copy), temp.Read($"{name}.{site}.bin"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hex_and_s_record_files_hold_the_same_bytes_as_the_raw_ones(string name)
    {
        Tool.Require("objcopy");
        using var temp = new TempFolder();
        ExampleCart.Build(name, temp.Path, "images:formats:0=raw", "images:formats:1=intel-hex", "images:formats:2=s-record");
        var chips = Directory.EnumerateFiles(temp.Path, "*.U?.bin").Select(static file => Path.GetFileNameWithoutExtension(file)).ToList();
        Assert.NotEmpty(chips);
        foreach (var chip in chips)
        {
            Tool.Succeed("objcopy", temp.Path, "-I", "ihex", "-O", "binary", chip + ".hex", "hex.out");
            Tool.Succeed("objcopy", temp.Path, "-I", "srec", "-O", "binary", chip + ".srec", "srec.out");
            Assert.Equal(temp.Read(chip + ".bin"), temp.Read("hex.out"));
            Assert.Equal(temp.Read(chip + ".bin"), temp.Read("srec.out"));
        }
    }
}
