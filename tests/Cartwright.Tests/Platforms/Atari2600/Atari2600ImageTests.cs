using Cartwright.Platforms;
using Cartwright.Platforms.Atari2600;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari2600;

/// <summary>Files and chips: what is recognised, and small ROMs in larger chips.</summary>
public sealed class Atari2600ImageTests
{
    [Theory]
    [InlineData("2k", 2)]
    [InlineData("4k", 4)]
    [InlineData("f8", 8)]
    [InlineData("fa", 12)]
    [InlineData("f6", 16)]
    [InlineData("f4sc", 32)]
    [InlineData("bf", 256)]
    public void An_image_is_recognised(string scheme, int kib) => Assert.Equal(Certainty.Structural, Ask(Atari2600Programs.Whole(scheme, kib << 10))?.Certainty);

    [Theory]
    [InlineData(0x2800)]
    [InlineData(10495)]
    public void A_file_with_a_chips_data_behind_is_recognised(int length) => Assert.NotNull(Ask([.. Atari2600Programs.Whole("f8", 0x2000), .. TestBytes.L(length - 0x2000)]));

    [Theory]
    [InlineData(0x1FFC, "FFFF")]
    [InlineData(0x0FFC, "0000")]
    [InlineData(0x1FFC, "00EF")]
    [InlineData(0x1F00, "FF")]
    [InlineData(0x1F00, "00")]
    public void A_bank_without_a_start_speaks_against_it(int at, string digits)
    {
        var image = Atari2600Programs.Whole("f8", 0x2000);
        Convert.FromHexString(digits).CopyTo(image, at);
        Assert.Null(Ask(image));
    }

    // STA, STY, STX $02 and STA $0002.
    [Theory]
    [InlineData("8502", true)]
    [InlineData("8402", true)]
    [InlineData("8602", true)]
    [InlineData("8D0200", true)]
    [InlineData("8503", false)]
    public void A_write_that_waits_for_the_line_is_asked_for(string digits, bool found)
    {
        var image = Atari2600Programs.Whole("4k", 0x1000);
        Convert.FromHexString("78D8EAEAEA").CopyTo(image, 0xF00);
        Convert.FromHexString(digits).CopyTo(image, 0xF10);
        Assert.Equal(found, Ask(image) is not null);
    }

    [Fact]
    public void Another_start_makes_a_candidate()
    {
        var image = Atari2600Programs.Whole("4k", 0x1000);
        image[0xF00] = 0xA2;
        Assert.Equal(Certainty.Candidate, Ask(image)?.Certainty);
    }

    [Theory]
    [InlineData(0x1400)]
    [InlineData(0x6000)]
    public void No_scheme_has_the_size(int length) => Assert.Null(Ask([.. Atari2600Programs.Whole("4k", 0x1000), .. new byte[length - 0x1000]]));

    [Fact]
    public void Short_files_are_nothing()
    {
        for (var length = 0; length < 0x40; length++)
            Assert.Null(Ask(TestBytes.L(length)));
    }

    // mirror(L(800h), 1000h), computed twice by programs of their own.
    [Fact]
    public void Two_KiB_are_repeated_in_a_chip_of_4()
    {
        var chip = Chip("2k", "a2600-plain", TestBytes.L(0x800), "4KiB");
        Assert.Equal(0x1000, chip.Length);
        Assert.Equal("530B8AD0", TestBytes.Crc(chip));
    }

    [Theory]
    [InlineData("2k", "a2600-plain", 0x800, "32KiB")]
    [InlineData("4k", "a2600-plain", 0x1000, "8KiB")]
    [InlineData("f8", "a2600-hotspot", 0x2000, "32KiB")]
    [InlineData("3f", "a2600-fixed-top", 0x2000, "64KiB")]
    [InlineData("ef", "a2600-many-banks", 0x10000, "128KiB")]
    public void Small_ROMs_are_repeated_in_larger_chips(string scheme, string board, int size, string capacity)
    {
        var rom = Atari2600Programs.Whole(scheme, size);
        Assert.All(Chip(scheme, board, rom, capacity).Chunk(size), part => Assert.Equal(rom, part));
    }

    private static RecognitionClaim? Ask(byte[] file) => new Atari2600Platform().Recognise(file);

    private static byte[] Chip(string scheme, string board, byte[] rom, string capacity)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", rom);
        bench.Manifest($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "a2600" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "header": { "scheme": "{{scheme}}" },
              "board": { "use": "{{board}}", "chips": { "U1": { "capacity": "{{capacity}}" } } }
            }
            """);
        var build = bench.Build();
        Assert.DoesNotContain("CW5008", build.Findings.Select(finding => finding.Code));
        return Assert.Single(build.Chips).Bytes.ToArray();
    }
}
