using System.Collections.Immutable;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Each platform knows its own images, in every order they are found in, and nothing else.</summary>
public sealed class RecognitionTests
{
    private static readonly Recogniser Recogniser = new(PlatformCatalog.BuiltIn);
    private static readonly Dictionary<string, (string Platform, byte[] File)> Built = BuildAll();

    public static TheoryData<string> Examples => [.. Built.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_recognised_as_its_own_platform_and_no_other(string name)
    {
        var ranked = Recogniser.Rank(Built[name].File);
        Assert.Equal(Built[name].Platform, Recogniser.Decide(ranked)?.Platform.Facts.Id);
        Assert.All(ranked.Skip(1), other => Assert.Equal(Certainty.Candidate, other.Claim.Certainty));
    }

    [Theory]
    [InlineData("lantern-tide-gb", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-gb", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-gba", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.WordSwapped, 0)]
    [InlineData("lantern-tide-n64", ImageOrder.HalfwordSwapped, 0)]
    [InlineData("lantern-tide-vb", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-md", ImageOrder.ByteSwapped, 0)]
    [InlineData("lantern-tide-md", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.OddEvenBlocks, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.EvenOddBlocks, 0x200)]
    [InlineData("lantern-tide-md", ImageOrder.OddEvenHalves, 0)]
    [InlineData("lantern-tide-snes", ImageOrder.Console, 0x200)]
    [InlineData("lantern-tide-sms", ImageOrder.Console, 0x200)]
    public void Other_orders_and_prefixes_are_found(string name, ImageOrder order, int prefix)
    {
        var (platform, image) = Built[name];
        var file = new byte[prefix + image.Length];
        ImageOrders.FromConsole(order, image, file.AsSpan(prefix));
        var best = Recogniser.Decide(Recogniser.Rank(file));
        Assert.NotNull(best);
        Assert.Equal((platform, order, prefix), (best.Platform.Facts.Id, best.Claim.Order, best.Claim.PrefixLength));
    }

    // fullsnes: a HiROM image whose halves were taken apart shows its header at the LoROM place with a HiROM mode.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Interleaved_HiROM_is_told_from_LoROM(bool isSummed)
    {
        var program = TestBytes.L(256 << 10);
        program.AsSpan(0xFFB0, 0x50).Clear();
        program.AsSpan(0xFFE0, 0x20).Fill(0x80);
        program[0x8080] = 0x78;
        var bench = new RomBench(PlatformCatalog.BuiltIn.Find("snes")!).Program("rom", 0, program).Header("mapping", "hirom");
        var image = bench.TryAssemble()!.Bytes("rom").ToArray();
        if (!isSummed)
            image.AsSpan(0xFFDC, 4).Clear();

        Assert.Equal("hirom", Recogniser.Decide(Recogniser.Rank(image))!.Claim.Variant);
        var file = new byte[image.Length];
        ImageOrders.FromConsole(ImageOrder.UpperLowerHalves, image, file);
        var best = Recogniser.Decide(Recogniser.Rank(file))!;
        Assert.Equal(("snes", ImageOrder.UpperLowerHalves, "hirom"), (best.Platform.Facts.Id, best.Claim.Order, best.Claim.Variant));
    }

    [Fact]
    public void One_chip_of_two_asks_for_the_other()
    {
        var even = new byte[Built["lantern-tide-md"].File.Length / 2];
        Lanes.Split(Built["lantern-tide-md"].File, 0, 2, even);
        var claim = Assert.Single(Recogniser.Rank(even)).Claim;
        Assert.Equal(Certainty.Candidate, claim.Certainty);
        Assert.Contains("the other is needed", claim.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void PRG_without_its_container_is_a_candidate()
    {
        var file = Built["lantern-tide-nes"].File;
        Assert.Contains(Recogniser.Rank(file.AsSpan(16, 16 << 10)), row => row is { Platform.Facts.Id: "nes", Claim.Certainty: Certainty.Candidate });
    }

    [Fact]
    public void Short_and_blank_files_match_nothing()
    {
        for (var length = 0; length <= 0x60; length++)
        {
            Assert.Empty(Recogniser.Rank(new byte[length]));
            Assert.Empty(Recogniser.Rank(TestBytes.All(0xFF, length)));
        }

        foreach (var size in (int[])[0x2000, 0x8000, 0x8200, 0x20000, 0x100000])
        {
            Assert.Empty(Recogniser.Rank(new byte[size]));
            Assert.Empty(Recogniser.Rank(TestBytes.All(0xFF, size)));
            // A beginning of other data and a blank tail.
            Assert.DoesNotContain(Recogniser.Rank([.. TestBytes.L(0x100), .. new byte[size - 0x100]]), row => row.Claim.Certainty > Certainty.Candidate);
        }
    }

    [Fact]
    public void Nothing_sure_is_said_of_random_data()
    {
        var random = new Random(20261125);
        var candidates = 0;
        const int Blocks = 6000;
        for (var i = 0; i < Blocks; i++)
        {
            var block = new byte[random.Next(1, 65) << 10];
            random.NextBytes(block);
            var ranked = Recogniser.Rank(block);
            Assert.DoesNotContain(ranked, row => row.Claim.Certainty > Certainty.Candidate);
            candidates += ranked.IsEmpty ? 0 : 1;
        }

        // Bare PRG has no mark: its vectors fit about one random block in a hundred.
        Assert.InRange(candidates, 0, Blocks / 50);
    }

    [Fact]
    public void Nothing_sure_is_said_of_ordinary_files()
    {
        string[] folders = ["/usr/bin", "/usr/lib/x86_64-linux-gnu", "/usr/share/doc", "/usr/share/perl"];
        var files = folders.Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint }).Order(StringComparer.Ordinal).Take(600))
            .Where(file => new FileInfo(file).Length < 1 << 20)
            .ToImmutableArray();
        Assert.SkipWhen(files.Length < 100, "There are too few ordinary files on this system.");
        Assert.All(files, file => Assert.DoesNotContain(Recogniser.Rank(File.ReadAllBytes(file)), row => row.Claim.Certainty > Certainty.Candidate));
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

    private static Dictionary<string, (string Platform, byte[] File)> BuildAll() =>
        Directory.EnumerateFiles(Path.Combine(Approved.Root, "examples"), "cart.json", SearchOption.AllDirectories)
            .Select(static manifest => CartBuilder.Default.Build(new BuildRequest(manifest)))
            .ToDictionary(
                static build => build.Manifest!.Cart.Name.Text,
                static build => (build.Platform!.Facts.Id, (byte[])[.. build.Files[0].Parts.SelectMany(static part => part.ToArray())]));
}
