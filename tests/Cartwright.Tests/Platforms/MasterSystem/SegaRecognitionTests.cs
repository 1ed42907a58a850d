using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.MasterSystem;

public sealed class SegaRecognitionTests
{
    private static readonly string[] Ids = ["sms", "gg", "sg1000"];

    [Theory]
    [InlineData("F3ED56", 3)]
    [InlineData("F331F0C3", 3)]
    [InlineData("F3C30001", 3)]
    [InlineData("31F0DFF3", 3)]
    public void A_customary_start_is_a_candidate(string digits, int score)
    {
        var rom = SegaPrograms.Whole(0x4000);
        Convert.FromHexString(digits).CopyTo(rom, 0);
        "SC-3000"u8.CopyTo(rom.AsSpan(0x80));
        Assert.Null(Ask("sms", rom));
        Assert.Equal((Certainty.Candidate, score), (Ask("sg1000", rom)!.Certainty, Ask("sg1000", rom)!.Score));
        Assert.Null(Ask("gg", rom));
    }

    [Theory]
    [InlineData("C30001")]
    [InlineData("F331F0B0")]
    [InlineData("F3ED5E")]
    public void Other_starts_are_not(string digits)
    {
        var rom = SegaPrograms.Whole(0x4000);
        Convert.FromHexString(digits).CopyTo(rom, 0);
        Assert.All(Ids, id => Assert.Null(Ask(id, rom)));
    }

    [Fact]
    public void Nothing_is_claimed_for_short_and_blank_files()
    {
        for (var length = 0; length < 0x120; length++)
            Assert.All(Ids, id => Assert.True(Ask(id, new byte[length]) is null && Ask(id, TestBytes.All(0xFF, length)) is null));

        Assert.All(Ids, id => Assert.Null(Ask(id, new byte[0x8000])));
        Assert.All(Ids, id => Assert.Null(Ask(id, TestBytes.All(0xFF, 0x8200))));
        Assert.All(Ids, id => Assert.Null(Ask(id, TestBytes.All(0x20, 0x8000))));
    }

    [Fact]
    public void Nothing_more_than_a_candidate_is_claimed_for_random_files()
    {
        var random = new Random(1);
        for (var i = 0; i < 500; i++)
        {
            var bytes = new byte[random.Next(1, 0x9000)];
            random.NextBytes(bytes);
            Assert.All(Ids, id => Assert.True(Ask(id, bytes) is null or { Certainty: Certainty.Candidate }));
        }
    }

    private static RecognitionClaim? Ask(string id, byte[] file) => PlatformCatalog.BuiltIn.Find(id)!.Recognise(file);
}
