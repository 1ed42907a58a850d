using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Platforms.Sega32X;

/// <summary>A 32X image bears the Mega Drive's marks as well: it must be known for what it is, and no other image for one of these.</summary>
public sealed class Sega32XRecognitionTests
{
    [Theory]
    [InlineData(ImageOrder.Console, 0, Certainty.Exact)]
    [InlineData(ImageOrder.Console, 0x200, Certainty.Exact)]
    [InlineData(ImageOrder.ByteSwapped, 0, Certainty.Exact)]
    [InlineData(ImageOrder.OddEvenBlocks, 0x200, Certainty.Structural)]
    [InlineData(ImageOrder.EvenOddBlocks, 0, Certainty.Structural)]
    [InlineData(ImageOrder.OddEvenHalves, 0, Certainty.Structural)]
    public void Its_own_images_are_its_own(ImageOrder order, int prefix, Certainty certainty)
    {
        var file = Ranked.Arranged(Sega32XPrograms.Bench().Assemble().Rom(), order, new byte[prefix]);
        var claim = Ranked.Decided("32x", file);
        Assert.Equal((certainty, order, prefix, "32x"), (claim.Certainty, claim.Order, claim.PrefixLength, claim.Variant));
        Assert.Null(Ranked.By("md", file));
    }

    [Theory]
    [InlineData("SEGA 32X", "MARS CHECK MODE ", 0x3F0, "32x", true)]
    [InlineData("SEGA 32X", "LANTERN TIDE    ", 0x3F0, "32x", true)]
    [InlineData("SEGA 32X", "MARS CHECK MODE ", 0x800, "32x", true)]
    [InlineData("SEGA GENESIS", "MARS CHECK MODE ", 0x3F0, "32x", true)]
    [InlineData("SEGA 32X", "LANTERN TIDE    ", 0x800, "md", true)]
    [InlineData("SEGA GENESIS", "MARS CHECK MODE ", 0x800, "md", true)]
    [InlineData("SEGA GENESIS", "LANTERN TIDE    ", 0x3F0, "md", false)]
    [InlineData("SEGA MEGA DRIVE", "LANTERN TIDE    ", 0x800, "md", false)]
    public void Two_signs_of_three_decide(string system, string name, int entry, string platform, bool isNamed)
    {
        var program = Sega32XPrograms.Changed((4, $"{entry:X8}"), (0x3C0, Convert.ToHexString(System.Text.Encoding.ASCII.GetBytes(name))));
        var file = Sega32XPrograms.Bench(program).Header("systemType", system).Assemble().Rom();
        Ranked.Decided(platform, file);
        Assert.Equal(isNamed, Ranked.By("32x", file) is not null);
    }

    [Fact]
    public void A_claim_that_includes_another_takes_its_place_only_where_it_is_as_sure()
    {
        var sure = new Recogniser(new([PlatformCatalog.BuiltIn.Find("md")!, PlatformCatalog.BuiltIn.Find("32x")!]));
        Assert.Equal(["32x"], sure.Rank(Sega32XPrograms.Bench().Assemble().Rom()).Select(row => row.Platform.Facts.Id));
        var doubtful = Sega32XPrograms.Bench(Sega32XPrograms.Changed((4, "00000800"), (0x3C0, "00"))).Assemble().Rom();
        Assert.Equal(["md", "32x"], sure.Rank(doubtful).Select(row => row.Platform.Facts.Id));
    }

    [Fact]
    public void Nothing_is_claimed_for_short_files()
    {
        var rom = Sega32XPrograms.Bench().Assemble().Rom();
        for (var length = 0; length < 0x400; length++)
            Assert.Equal(length < 0x3D0, PlatformCatalog.BuiltIn.Find("32x")!.Recognise(rom.AsSpan(0, length)) is null);
    }
}
