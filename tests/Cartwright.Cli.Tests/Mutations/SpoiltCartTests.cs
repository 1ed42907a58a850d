using System.Text;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Mutations;

/// <summary>Whatever a cart folder holds, the command says what is wrong with it and leaves no half of an output.</summary>
public sealed class SpoiltCartTests
{
    private const int CartsASeed = 40;

    private static readonly string[] Settings =
        ["cart:name=x", "cart:platform=gb", "rom:size=1MiB", "rom=5", "programs:0:offset=0x10", "programs:1:file=main.bin", "programs:7=", "header:keep=true", "board:use=md-single-16bit", "images:formats:0=s-record", "images:folder=.", ":=", "cart:=x"];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_spoilt_cart_is_built_whole_or_refused_in_words(int seed)
    {
        var random = new Random(seed);
        var built = 0;
        for (var i = 0; i < CartsASeed; i++)
        {
            built += Try(random, $"seed {seed}, cart {i}");
        }

        // Were all refused, or none, the carts would not be spoilt as they should be.
        Assert.InRange(built, 1, CartsASeed - 1);
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    private static int Try(Random random, string which)
    {
        using var temp = new TempFolder();
        var cart = SoundCart.All[random.Next(SoundCart.All.Count)];
        var manifest = random.Next(5) == 0 ? cart.Manifest : ManifestMutation.Spoil(cart.Manifest, random);
        temp.Write("cart.json", Encoding.UTF8.GetBytes(manifest));
        foreach (var (name, bytes) in cart.Programs)
        {
            temp.Write(name, random.Next(3) == 0 ? ProgramMutation.Spoil(bytes, random) : bytes);
        }

        var before = Snapshot.Of(temp.Path);
        string[] setting = random.Next(4) == 0 ? ["--set", Settings[random.Next(Settings.Length)]] : [];
        var result = CommandRun.Here(["build", temp.Path, .. setting]);
        var about = $"{which}: {manifest} {string.Join(' ', setting)}\n{result.Errors}";
        Assert.True(result.ExitCode is 0 or 2, about);
        var after = Snapshot.Of(temp.Path);
        if (result.ExitCode == 2)
        {
            Assert.True(after.Differences(before, new Redaction(temp.Path)).Length == 0, about + after.Differences(before, new Redaction(temp.Path)));
            Assert.Contains("error", result.Errors, StringComparison.Ordinal);
            return 0;
        }

        var changed = after.ChangedSince(before);
        Assert.True(changed.Any(static file => file.EndsWith(".record.json", StringComparison.Ordinal)), about);
        Assert.DoesNotContain(changed, static file => file.Contains(".cartwright", StringComparison.Ordinal));
        return 1;
    }
}
