using Cartwright.Platforms;
using Cartwright.Platforms.Atari7800;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari7800;

/// <summary>Files and chips: what is recognised, and where a ROM lies in a larger chip.</summary>
public sealed class Atari7800ImageTests
{
    [Fact]
    public void A_container_is_recognised()
    {
        var cart = Atari7800Programs.Bench(signed: false).Assemble();
        byte[] file = [.. cart.Container(), .. cart.Rom()];
        Assert.Equal((Certainty.Exact, 128), (Ask(file)!.Certainty, Ask(file)!.PrefixLength));
        file[0x64] = (byte)'X';
        Assert.Null(Ask(file));
    }

    [Theory]
    [InlineData("linear", 0x2000)]
    [InlineData("linear", 0x4000)]
    [InlineData("linear", 0xC000)]
    [InlineData("supergame", 0x20000)]
    [InlineData("supergame-9-bank", 0x24000)]
    public void A_signed_ROM_is_recognised(string scheme, int size) => Assert.Equal(Certainty.Structural, Ask(Atari7800Programs.Whole(scheme, size))?.Certainty);

    [Theory]
    [InlineData(-0x1000, "00")]
    [InlineData(-4, "0080")]
    [InlineData(-4, "00E0")]
    [InlineData(-6, "0000")]
    [InlineData(-2, "FFFF")]
    [InlineData(-4, "80FF")]
    public void Vectors_that_do_not_fit_leave_a_candidate(int at, string digits)
    {
        var rom = Atari7800Programs.Whole();
        Convert.FromHexString(digits).CopyTo(rom, rom.Length + at);
        Assert.Equal(Certainty.Candidate, Ask(rom)?.Certainty);
    }

    [Fact]
    public void Without_a_signature_it_is_a_candidate() => Assert.Equal(Certainty.Candidate, Ask(Atari7800Programs.Whole(signed: false))?.Certainty);

    [Theory]
    [InlineData(-8, "EF")]
    [InlineData(-7, "F5")]
    [InlineData(-4, "FF3F")]
    public void Without_the_marks_it_is_nothing(int at, string digits)
    {
        var rom = Atari7800Programs.Whole();
        Convert.FromHexString(digits).CopyTo(rom, rom.Length + at);
        Assert.Null(Ask(rom));
    }

    [Fact]
    public void Other_sizes_and_short_files_are_nothing()
    {
        Assert.Null(Ask(Atari7800Programs.Whole()[1..]));
        for (var length = 0; length < 0x90; length++)
            Assert.Null(Ask(TestBytes.L(length)));
    }

    // 4000h x FF and L(C000h), computed twice by programs of their own: never repeated, since boards see the upper three quarters.
    [Fact]
    public void Forty_eight_KiB_are_the_end_of_a_chip_of_64()
    {
        var chip = Assert.Single(Chips("linear", "a7800-linear", TestBytes.L(0xC000), "64KiB"));
        Assert.Equal("074462F9", TestBytes.Crc(chip));
    }

    [Theory]
    [InlineData(0x2000)]
    [InlineData(0x8000)]
    public void Smaller_ROMs_end_where_the_chip_ends(int size)
    {
        var rom = Atari7800Programs.Whole(size: size);
        var chip = Assert.Single(Chips("linear", "a7800-linear", rom, "64KiB"));
        Assert.Equal(rom, chip[^size..]);
        Assert.False(chip.AsSpan(0, 0x10000 - size).ContainsAnyExcept((byte)0xFF));
    }

    [Fact]
    public void Banks_are_repeated()
    {
        var rom = Atari7800Programs.Whole("supergame", 0x20000);
        Assert.All(Assert.Single(Chips("supergame", "a7800-supergame", rom, "512KiB")).Chunk(0x20000), part => Assert.Equal(rom, part));
    }

    [Fact]
    public void The_ninth_bank_has_a_chip_of_its_own()
    {
        var rom = Atari7800Programs.Whole("supergame-9-bank", 0x24000);
        var chips = Chips("supergame-9-bank", "a7800-supergame-9-bank", rom, null);
        Assert.Equal([rom[..0x4000], rom[0x4000..]], chips);
    }

    private static RecognitionClaim? Ask(byte[] file) => new Atari7800Platform().Recognise(file);

    private static byte[][] Chips(string scheme, string board, byte[] rom, string? capacity)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", rom);
        var chips = capacity is null ? "" : $$""", "chips": { "U1": { "capacity": "{{capacity}}" } }""";
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "a7800" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "scheme": "{{scheme}}" },
              "board": { "use": "{{board}}"{{chips}} }
            }
            """);
        var build = bench.Build();
        Assert.DoesNotContain("CW5008", build.Findings.Select(finding => finding.Code));
        return [.. build.Chips.Select(chip => chip.Bytes.ToArray())];
    }
}
