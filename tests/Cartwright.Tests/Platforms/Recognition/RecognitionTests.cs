using Cartwright.Ordering;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Each platform knows its own images, in every order they are found in, and no others.</summary>
public sealed class RecognitionTests
{
    public static TheoryData<string> Examples => [.. ExampleCart.All.Values.Where(cart => cart.IsRecognised).Select(cart => cart.Name)];

    [Fact]
    public void There_are_examples_of_the_first_platforms() =>
        Assert.Superset(new HashSet<string> { "gb", "md", "nes", "snes" }, ExampleCart.All.Values.Where(cart => cart.IsRecognised).Select(cart => cart.Platform.Facts.Id).ToHashSet());

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_recognised_as_its_own_platform_and_no_other(string name)
    {
        var cart = ExampleCart.All[name];
        var claim = Ranked.Decided(cart.Platform.Facts.Id, cart.File);
        Assert.Equal(ImageOrder.Console, claim.Order);
        Assert.Equal(cart.RomStart, claim.PrefixLength);
        Assert.True(claim.Variant is null || claim.Variant == cart.Cart.Layout.Variant, $"{claim.Variant}, not {cart.Cart.Layout.Variant}");
        Assert.All(Ranked.Of(cart.File).Skip(1), other => Assert.Equal(Certainty.Candidate, other.Claim.Certainty));
    }

    [Theory]
    [InlineData("lantern-tide-gb", "gb")]
    [InlineData("lantern-tide-md", "linear")]
    [InlineData("lantern-tide-nes", "nes2")]
    [InlineData("lantern-tide-snes", "lorom")]
    public void The_layout_is_told_where_the_bytes_show_it(string name, string variant) =>
        Assert.Equal(variant, Ranked.Decided(ExampleCart.All[name].Platform.Facts.Id, ExampleCart.All[name].File).Variant);

    [Theory]
    [InlineData("lantern-tide-gb", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-gb", ImageOrder.ByteSwapped, 0x200)]
    [InlineData("lantern-tide-gb", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-gba", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.WordSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.HalfwordSwapped, 0)]
    [InlineData("lantern-tide-vb", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-md", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-md", ImageOrder.ByteSwapped, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.OddEvenBlocks, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.EvenOddBlocks, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.OddEvenBlocks, 0)]
    [InlineData("lantern-tide-md", ImageOrder.OddEvenHalves, 0)]
    [InlineData("lantern-tide-snes", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-sms", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-pce", ImageOrder.BitReversed, 0)]
    [InlineData("lantern-tide-pce", ImageOrder.BitReversed, 0x200)]
    [InlineData("lantern-tide-pce", ImageOrder.Console, 0x200)]
    public void Other_orders_and_prefixes_are_found(string name, ImageOrder order, int prefix)
    {
        var cart = ExampleCart.All[name];
        var file = Ranked.Arranged(cart.File, order, new byte[prefix]);
        var claim = Ranked.Decided(cart.Platform.Facts.Id, file);
        Assert.Equal((order, prefix), (claim.Order, claim.PrefixLength));
        var console = new byte[cart.File.Length];
        ImageOrders.ToConsole(claim.Order, file.AsSpan(claim.PrefixLength), console);
        Assert.Equal(cart.File, console);
    }

    // Over-read or cut files: nothing may break, and whatever is claimed must be something to act on.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Files_cut_anywhere_break_nothing(string name)
    {
        var file = ExampleCart.All[name].File;
        for (var length = 0; length <= Math.Min(0x420, file.Length); length++)
            Ranked.Of(file.AsSpan(0, length));

        foreach (var border in (int[])[0x2000, 0x4000, 0x7FB0, 0x8000, 0x8200, 0x10000, 0x10200, file.Length])
        {
            for (var length = border - 3; length <= border + 3; length++)
                Ranked.Of(file.AsSpan(0, Math.Clamp(length, 0, file.Length)));
        }
    }

    [Fact]
    public void Swapped_images_of_odd_length_are_found()
    {
        foreach (var name in (string[])["lantern-tide-gb", "lantern-tide-md"])
        {
            var cart = ExampleCart.All[name];
            Assert.Equal(ImageOrder.ByteSwapped, Ranked.Decided(cart.Platform.Facts.Id, Ranked.Arranged(cart.File, ImageOrder.ByteSwapped).AsSpan()[..^1]).Order);
        }
    }

    // Several claims of one certainty decide nothing.
    [Fact]
    public void Equal_claims_decide_nothing()
    {
        var gb = new RecognisedPlatform(PlatformCatalog.BuiltIn.Find("gb")!, new RecognitionClaim(Certainty.Exact, "a"));
        var md = new RecognisedPlatform(PlatformCatalog.BuiltIn.Find("md")!, new RecognitionClaim(Certainty.Exact, "b"));
        Assert.Null(Recogniser.Decide([gb, md]));
        Assert.Null(Recogniser.Decide([]));
        Assert.Same(gb, Recogniser.Decide([gb, md with { Claim = md.Claim with { Certainty = Certainty.Structural } }]));
    }

    // Two images in one file: each platform sees its own, and nothing is decided.
    [Fact]
    public void A_file_that_is_two_things_is_left_undecided()
    {
        var file = new byte[0x8000];
        ExampleCart.All["lantern-tide-gb"].File.AsSpan(0, 0x8000).CopyTo(file);
        "NES\x1A\x01"u8.CopyTo(file);
        var ranked = Ranked.Of(file);
        Assert.Equal(["gb", "nes"], ranked.Where(row => row.Claim.Certainty == Certainty.Exact).Select(row => row.Platform.Facts.Id));
        Assert.Null(Recogniser.Decide(ranked));
    }
}
