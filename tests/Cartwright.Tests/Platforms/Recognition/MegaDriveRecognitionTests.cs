using System.Text;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.MegaDrive;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Mega Drive images: SEGA in every order it is found in (ROM header reference; SMD file format information; Copier 512-byte header description).</summary>
public sealed class MegaDriveRecognitionTests
{
    private const int Length = 0x20000;

    private static readonly string[] Systems = ["SEGA MEGA DRIVE", " SEGA MEGA DRIVE", "SEGA GENESIS", "SEGA 32X", "SEGA SSF", "SEGA MEGAWIFI", "SEGA PICO"];

    // Halves have no prefix.
    public static TheoryData<string, ImageOrder, int> Orders => new(
        from system in Systems
        from order in (ImageOrder[])[ImageOrder.Console, ImageOrder.ByteSwapped, ImageOrder.OddEvenBlocks, ImageOrder.EvenOddBlocks, ImageOrder.OddEvenHalves]
        from prefix in (int[])[0, 0x200, -0x200]
        where order != ImageOrder.OddEvenHalves || prefix == 0
        select (system, order, prefix));

    // A prefix below zero has the copiers' mark.
    [Theory]
    [MemberData(nameof(Orders))]
    public void Every_order_of_every_system_type_is_found(string system, ImageOrder order, int prefix)
    {
        var image = Finished(system);
        var file = Ranked.Arranged(image, order, Prefix(prefix));
        var claim = Ranked.Decided("md", file);
        var isExact = order is ImageOrder.Console or ImageOrder.ByteSwapped || prefix < 0;
        Assert.Equal(
            (isExact ? Certainty.Exact : Certainty.Structural, order, Math.Abs(prefix), system == "SEGA SSF" ? "pages" : "linear"),
            (claim.Certainty, claim.Order, claim.PrefixLength, claim.Variant));
        Assert.Contains("SEGA` at 0x0100", claim.Reason, StringComparison.Ordinal);
        Assert.Equal(prefix < 0, claim.Reason.Contains("AA BB", StringComparison.Ordinal));
    }

    // The mark alone shows a prefix that the length does not.
    [Fact]
    public void A_marked_prefix_is_found_at_any_length()
    {
        byte[] file = [.. Prefix(-0x200), .. Finished("SEGA GENESIS"), 0, 0];
        Assert.Equal(0x200, Ranked.Decided("md", file).PrefixLength);
        file[8] = 0;
        Assert.Null(Ranked.By("md", file));
    }

    [Theory]
    [InlineData("SEGA MEGA DRIVE", "`SG EADIE`", "`EAMG RV `")]
    [InlineData("SEGA GENESIS", "`SG EEI  `", "`EAGNSS  `")]
    [InlineData("SEGA SSF", "`SG S    `", "`EASF    `")]
    [InlineData("SEGA MEGAWIFI", "`SG EAII `", "`EAMGWF  `")]
    public void One_chip_of_two_asks_for_the_other(string system, string even, string odd)
    {
        var image = Finished(system);
        var upper = new byte[image.Length / 2];
        var lower = new byte[image.Length / 2];
        Lanes.Split2(image, upper, lower);
        AssertAsks(Ranked.By("md", upper), even, "the file of the lower chip (D7-D0) is needed");
        AssertAsks(Ranked.By("md", lower), odd, "the file of the upper chip (D15-D8) is needed");
        // A larger chip repeats it.
        AssertAsks(Ranked.By("md", [.. upper, .. upper]), even, "lower chip");
        // Even before odd are two chips the wrong way round: nobody's order.
        Assert.Equal(Certainty.Candidate, Ranked.By("md", [.. upper, .. lower])?.Certainty);
    }

    [Fact]
    public void More_than_the_window_has_pages() =>
        Assert.Equal("pages", Ranked.Decided("md", [.. Finished("SEGA MEGA DRIVE"), .. new byte[5 << 20]]).Variant);

    [Theory]
    [InlineData("SAGE MEGA DRIVE ")]
    [InlineData("  SEGA MEGA DRIV")]
    [InlineData("SEG")]
    public void Other_texts_are_none(string system)
    {
        var image = MegaDriveBench.Program(Length);
        Encoding.ASCII.GetBytes(system).CopyTo(image, 0x100);
        Assert.Null(Ranked.By("md", image));
    }

    private static void AssertAsks(RecognitionClaim? claim, string letters, string other)
    {
        Assert.Equal(Certainty.Candidate, claim?.Certainty);
        Assert.Contains(letters, claim!.Reason, StringComparison.Ordinal);
        Assert.Contains(other, claim.Reason, StringComparison.Ordinal);
    }

    private static byte[] Finished(string system) =>
        MegaDriveBench.Bench(MegaDriveBench.Program(Length)).Header("systemType", system).Size("rom", Length).Assemble().Bytes("rom").ToArray();

    private static byte[] Prefix(int length)
    {
        var prefix = new byte[Math.Abs(length)];
        if (length < 0)
            ((ReadOnlySpan<byte>)[Length >> 14, 0x03, 0, 0, 0, 0, 0, 0, 0xAA, 0xBB, 0x06]).CopyTo(prefix);

        return prefix;
    }
}
