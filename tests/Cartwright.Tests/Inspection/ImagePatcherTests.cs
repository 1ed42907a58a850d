using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Ordering;
using Cartwright.Patching;
using Cartwright.Platforms;
using Cartwright.Tests.Oracles;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>A patch, and what follows from it.</summary>
public sealed class ImagePatcherTests
{
    public static TheoryData<string> Names => OpenedExample.Names;

    [Fact]
    public void Patched_and_mended_is_what_a_build_of_the_same_program_is()
    {
        var (before, after) = (Build(0x11), Build(0x12));
        byte[] patch = [.. "PATCH"u8, 0x00, 0x12, 0x34, 0x00, 0x01, 0x12, .. "EOF"u8];
        var log = new FindingLog();
        var result = Patcher(mend: true).Apply(("game.gg", before), ("spring.ips", patch), log)!;
        Assert.Equal(after, result.Bytes.ToArray());
        Assert.NotEqual(before, after);
        Assert.Equal(["checksum"], result.Mended.Select(change => change.Name));
        Assert.Equal(["CW8014"], log.ToSorted().Select(finding => finding.Code));
        Assert.Equal([0, 1], result.Banks.Select(change => change.Bank.Number));
    }

    [Fact]
    public void Without_mending_only_the_patch_counts()
    {
        var before = Build(0x11);
        byte[] patch = [.. "PATCH"u8, 0x00, 0x12, 0x34, 0x00, 0x01, 0x12, .. "EOF"u8];
        var result = Patcher(mend: false).Apply(("game.gg", before), ("spring.ips", patch), new FindingLog())!;
        before[0x1234] = 0x12;
        Assert.Equal(before, result.Bytes.ToArray());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_patch_made_of_two_images_leads_from_one_to_the_other(string name)
    {
        var before = ExampleCart.All[name].File;
        var after = before.ToArray();
        after[after.Length / 2] ^= 0x3C;
        var log = new FindingLog();
        var patch = Patch.Make(PatchFormats.Bps, before, after, log, new SourcePlace("a.bps"))!;
        Assert.Equal(after, Patcher(mend: false).Apply((name, before), ("a.bps", patch), log)!.Bytes.ToArray());
        Assert.Empty(log.ToSorted().Where(finding => finding.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void A_base_behind_a_prefix_in_another_order_is_brought_into_form()
    {
        var image = ExampleCart.All["lantern-tide-md"].File;
        var after = image.ToArray();
        after[0x300] ^= 1;
        var log = new FindingLog();
        var patch = Patch.Make(PatchFormats.Bps, image, after, log, new SourcePlace("a.bps"))!;
        var swapped = new byte[image.Length];
        WordSwap.Swap16(image, swapped);
        var result = Patcher(mend: false).Apply(("game.bin", (byte[])[.. new byte[CopierPrefix.Length], .. swapped]), ("a.bps", patch), log)!;
        Assert.Equal(after, result.Bytes.ToArray());
        Assert.Equal(["CW8013"], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void Another_base_is_refused()
    {
        var image = ExampleCart.All["lantern-tide-md"].File;
        var log = new FindingLog();
        var patch = Patch.Make(PatchFormats.Bps, image, image.AsSpan(0, 1024), log, new SourcePlace("a.bps"))!;
        Assert.Null(Patcher(mend: true).Apply(("game.bin", new byte[image.Length]), ("a.bps", patch), log));
        Assert.True(log.HasErrors);
    }

    [Fact]
    public void A_result_of_no_platform_is_not_mended()
    {
        var log = new FindingLog();
        byte[] patch = [.. "PATCH"u8, 0x00, 0x00, 0x00, 0x00, 0x01, 0x12, .. "EOF"u8];
        var result = Patcher(mend: true).Apply(("a.bin", new byte[1024]), ("a.ips", patch), log)!;
        Assert.Equal(0x12, result.Bytes.Span[0]);
        Assert.Contains("CW8015", log.ToSorted().Select(finding => finding.Code));
    }

    private static ImagePatcher Patcher(bool mend) => new(new ImageOpener(PlatformCatalog.BuiltIn), null, mend);

    // A Game Gear ROM with one byte to choose.
    private static byte[] Build(byte value)
    {
        using var folder = new TempFolder();
        var program = new byte[0x6000];
        program.AsSpan().Fill(0x76);
        program[0x1234] = value;
        File.WriteAllBytes(Path.Combine(folder.Path, "main.bin"), program);
        File.WriteAllText(Path.Combine(folder.Path, "cart.json"),
            """{ "cart": { "name": "game", "platform": "gg", "title": "LANTERN TIDE" }, "programs": [{ "file": "main.bin", "offset": "0" }], "header": { "productCode": "12345" } }""");
        var build = CartBuilder.Default.Build(new BuildRequest(Path.Combine(folder.Path, "cart.json")));
        Assert.False(build.HasErrors, string.Join('\n', build.Findings.Select(FindingText.Line)));
        return [.. build.Platform!.Exchange(build.Cart!).SelectMany(part => part.ToArray())];
    }
}
