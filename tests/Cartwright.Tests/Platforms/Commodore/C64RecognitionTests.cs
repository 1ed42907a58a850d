using Cartwright.Platforms;
using Cartwright.Platforms.Commodore;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class C64RecognitionTests
{
    [Theory]
    [InlineData("8k", 0x2000, "8k")]
    [InlineData("16k", 0x4000, "16k")]
    [InlineData("type-19", 0x100000, null)]
    public void A_cartridge_is_recognised(string mapping, int size, string? variant)
    {
        var rom = C64(mapping, size).Assemble().Rom();
        Assert.Equal((Certainty.Exact, variant, 0), (Ask(rom)!.Certainty, Ask(rom)!.Variant, Ask(rom)!.PrefixLength));
        Assert.Equal((Certainty.Exact, variant, 2), (Ask([0x00, 0x80, .. rom])!.Certainty, Ask([0x00, 0x80, .. rom])!.Variant, Ask([0x00, 0x80, .. rom])!.PrefixLength));
        Assert.Null(Ask([0x00, 0x60, .. rom]));
    }

    [Fact]
    public void A_file_that_is_not_filled_up_is_recognised() => Assert.Equal((2, "8k"), Prefix([0x00, 0x80, .. C64().Assemble().Rom()[..0x123]]));

    [Fact]
    public void A_container_of_one_packet_is_all_prefix_before_its_ROM() => Assert.Equal((0x50, "16k"), Prefix(C64("16k", 0x4000).Assemble().File(new C64Platform())));

    [Fact]
    public void A_container_of_several_packets_is_taken_apart_by_them() => Assert.Equal((0x40, "type-5"), Prefix(C64("type-5", 0x20000).Assemble().File(new C64Platform())));

    [Theory]
    [InlineData("V", "vic20")]
    [InlineData("8", "c128")]
    [InlineData("6", "c64")]
    public void The_signature_tells_the_machine(string kind, string platform)
    {
        var file = kind switch
        {
            "V" => Vic20().Assemble().File(new Vic20Platform()),
            "8" => C128().Assemble().File(new C128Platform()),
            _ => C64().Assemble().File(new C64Platform()),
        };
        Assert.Equal(platform, Recogniser.Decide(new Recogniser(PlatformCatalog.BuiltIn).Rank(file))?.Platform.Facts.Id);
    }

    // With lines of no cartridge, and with a board nobody here knows, the signature is still one.
    [Theory]
    [InlineData(0x18, 0x01)]
    [InlineData(0x17, 0x63)]
    public void A_container_whose_board_is_not_known(int at, byte value)
    {
        var file = C64().Assemble().File(new C64Platform());
        file[at] = value;
        Assert.Equal((Certainty.Exact, null), (Ask(file)!.Certainty, Ask(file)!.Variant));
    }

    [Theory]
    [InlineData(0x1000, "00F0 00F0 00F0", "ultimax")]
    [InlineData(0x2000, "00E0 00E0 00E0", "ultimax")]
    [InlineData(0x4000, "00E0 00E0 00E0", "ultimax-16k")]
    [InlineData(0x2000, "00E0 00E0 00D0", null)]
    [InlineData(0x2000, "FFFF 00E0 00E0", null)]
    [InlineData(0x2000, "00E0 01E0 00E0", null)]
    [InlineData(0x1000, "00E0 00E0 00E0", null)]
    [InlineData(0x8000, "00E0 00E0 00E0", null)]
    public void Vectors_alone_may_be_a_cartridge(int size, string vectors, string? variant)
    {
        var image = Noise(size, size - 6, vectors);
        image[size == 0x4000 ? 0x2000 : 0] = 0x78;
        image[size == 0x4000 ? 0x2001 : 1] = 0x00;
        Assert.Equal(variant is null ? default : (Certainty.Candidate, variant), Ask(image) is { } claim ? (claim.Certainty, claim.Variant) : default);
    }

    [Fact]
    public void Short_and_blank_files_are_not_recognised()
    {
        for (var length = 0; length < 0x60; length++)
        {
            byte[] file = [.. "C64 CARTRIDGE   "u8, .. TestBytes.All(0xFF, length)];
            Assert.Null(Ask(file));
            Assert.Null(Ask(new byte[length]));
            Assert.Null(Ask([0x00, 0x80, .. new byte[length]]));
        }

        Assert.Null(Ask("C64 CARTRIDGE   is how a container of such a cartridge begins, sixteen bytes in all."u8.ToArray()));
    }

    private static RecognitionClaim? Ask(byte[] file) => new C64Platform().Recognise(file);

    private static (int Prefix, string? Variant) Prefix(byte[] file) => (Ask(file)!.PrefixLength, Ask(file)!.Variant);
}
