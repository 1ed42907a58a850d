using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Packages.Tests;

public sealed class CakePackageTests
{
    private static readonly string Script = $$"""
        #addin nuget:?package=Cartwright.Cake&version={{Bench.Version}}

        Task("Carts").Does(() =>
        {
            var cart = CartBuild("game/cart.json", new CartSettings { OutputFolder = "release", Settings = new Dictionary<string, string> { ["images:formats:1"] = "intel-hex" } });
            Information("chips {0}, files {1}", cart.Build.Chips.Length, cart.Output.Files.Length);
            Information("again {0}", CartBuild("game/cart.json", new CartSettings { OutputFolder = "release", Settings = new Dictionary<string, string> { ["images:formats:1"] = "intel-hex" } }).Output.WasThere);
            var plain = CartBuild(File("game/cart.json"));

            CopyFile("game/dist/lantern-tide-gb.U1.bin", "read.bin");
            Information("proved {0}", CartProve("game/dist/lantern-tide-gb.record.json", GetFiles("read.bin")).IsEqual);

            var rom = File("game/dist/lantern-tide-gb.gb");
            var examined = CartExamine(rom);
            Information("examined {0}", examined.Image.Found.Platform.Facts.Id);

            var bytes = System.IO.File.ReadAllBytes(rom.Path.FullPath);
            bytes[0x4000] ^= 0x5A;
            System.IO.File.WriteAllBytes("hacked.gb", bytes);
            var mended = CartMend("hacked.gb", "mended.gb");
            Information("mended {0}", string.Join(" ", mended.Changes.Select(change => change.Name)));
            CartPatchMake(rom, "mended.gb", "spring.bps");
            Information("patched {0}", CartPatch(rom, "spring.bps", "patched.gb").Banks.Length);
        });

        Task("Own").Does(() => CartMend("hacked.gb", "./hacked.gb"));

        Task("Failing").Does(() => CartBuild("game/cart.json", new CartSettings { Settings = new Dictionary<string, string> { ["header:destination"] = "nowhere" } }));

        TaskTeardown(about => { if (!about.Successful) Information("not done: {0}", about.Task.Name); });

        RunTarget("Carts");
        try { RunTarget("Own"); } catch (Exception fault) { Information("refused {0}", fault.Message); }
        RunTarget("Failing");
        """;

    [Fact]
    public void A_script_builds_proves_examines_mends_and_patches_and_fails_with_what_is_wrong()
    {
        using var bench = new Bench();
        var manifest = bench.CopyCart("lantern-tide-gb", "game");
        bench.Write("build.cake", Script);

        var result = bench.DotNet(Bench.Cake, "build.cake");

        Assert.True(result.Output.Contains("patched ", StringComparison.Ordinal), result.Output + result.Error);
        OwnBuild.Equal(manifest, bench.At("game", "dist"));
        Assert.Contains("chips 1, files 4", result.Output, StringComparison.Ordinal);
        Assert.Contains("again True", result.Output, StringComparison.Ordinal);
        Assert.Contains("proved True", result.Output, StringComparison.Ordinal);
        Assert.Contains("examined gb", result.Output, StringComparison.Ordinal);
        Assert.Contains("mended globalChecksum", result.Output, StringComparison.Ordinal);
        Assert.Contains("refused ", result.Output, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(bench.At("mended.gb")), File.ReadAllBytes(bench.At("patched.gb")));
        AssertFailed(result);
    }

    [Fact]
    public void The_aliases_are_compiled_against_the_cake_the_own_build_uses() =>
        Assert.Contains($"\"version\": \"{Bench.CakeVersion}\"", File.ReadAllText(Path.Combine(Approved.Root, ".config", "dotnet-tools.json")), StringComparison.Ordinal);

    private static void AssertFailed(ToolResult result)
    {
        Assert.NotEqual(0, result.ExitCode);
        Assert.Contains("not done: Failing", result.Output, StringComparison.Ordinal);
        Assert.Matches(@"error CW\d{4}: .*nowhere", result.Error + result.Output);
    }
}
