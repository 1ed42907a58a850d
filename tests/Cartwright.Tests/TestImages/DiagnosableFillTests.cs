using System.Text;
using Cartwright.Findings;
using Cartwright.TestImages;
using Xunit;

namespace Cartwright.Tests.TestImages;

public sealed class DiagnosableFillTests
{
    private static readonly FillRequest Request = new() { Shortest = 64 };

    [Fact]
    public void Long_stretches_are_found_in_whole_lines()
    {
        byte[] image = [.. TestBytes.All(1, 20), .. TestBytes.All(0xFF, 100), .. TestBytes.All(2, 8), .. TestBytes.All(0xFF, 60), .. TestBytes.All(3, 4), .. TestBytes.All(0xFF, 64)];
        Assert.Equal([new FilledStretch(32, 80), new FilledStretch(192, 64)], DiagnosableFill.Unused(image, 0xFF, 64));
        Assert.Equal([new FilledStretch(32, 80), new FilledStretch(128, 48), new FilledStretch(192, 64)], DiagnosableFill.Unused(image, 0xFF, 16));
        Assert.Empty(DiagnosableFill.Unused(image, 0, 16));
    }

    [Fact]
    public void Nothing_that_is_used_changes_and_each_stretch_says_its_address()
    {
        byte[] image = [.. TestBytes.L(1000), .. TestBytes.All(0xFF, 7192)];
        var stretches = DiagnosableFill.Unused(image, 0xFF, 1024);
        var filled = DiagnosableFill.Fill(image, stretches, 1);
        Assert.Equal([new FilledStretch(1008, 7184)], stretches);
        Assert.Equal(image[..1008], filled[..1008]);
        Assert.Equal("UNUSED 000003F0 ", Encoding.ASCII.GetString(filled, 1008, 16));
        Assert.Equal(filled[1008..].Chunk(16).Count(), filled[1008..].Chunk(16).Select(Convert.ToHexString).Distinct().Count());
    }

    [Fact]
    public void A_repeated_image_shows_its_top_line_again()
    {
        byte[] half = [.. TestBytes.L(1024), .. TestBytes.All(0xFF, 3072)];
        byte[] image = [.. half, .. half];
        Assert.Equal(image[..4096], image[4096..]);
        var filled = DiagnosableFill.Fill(image, DiagnosableFill.Unused(image, 0xFF, 64), 0);
        Assert.NotEqual(filled[..4096], filled[4096..]);
    }

    [Fact]
    public void A_game_has_its_checksum_put_right()
    {
        var rom = TestBytes.All(0xFF, 32 << 10);
        // A Game Boy ROM: the logo and header of the worked image are not needed, only that the platform is named.
        var log = new FindingLog();
        var filled = FilledImage.Of("game.gb", rom, Cartwright.Platforms.PlatformCatalog.BuiltIn.Find("gb"), Request, log)!;
        Assert.DoesNotContain(log.ToSorted(), finding => finding.Severity == FindingSeverity.Error);
        Assert.NotNull(filled.Rom);
        var bytes = filled.Bytes.Span;
        var sum = 0;
        for (var i = 0; i < bytes.Length; i++)
            sum += i is 0x14E or 0x14F ? 0 : bytes[i];

        // The checksum of the whole ROM, high byte first, without its own two bytes: Pan Docs, The Cartridge Header.
        Assert.Equal(sum & 0xFFFF, (bytes[0x14E] << 8) | bytes[0x14F]);
    }

    [Fact]
    public void A_file_of_no_platform_is_filled_as_it_is()
    {
        var log = new FindingLog();
        var filled = FilledImage.Of("chip.bin", [.. TestBytes.L(64), .. TestBytes.All(0xFF, 4032)], null, Request, log)!;
        Assert.Null(filled.Rom);
        Assert.Equal([TestImageFindings.NoChecksums.Code], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void An_image_without_unused_space_is_refused()
    {
        var log = new FindingLog();
        Assert.Null(FilledImage.Of("chip.bin", TestBytes.L(4096), null, Request, log));
        Assert.Equal([TestImageFindings.NothingUnused.Code], log.ToSorted().Select(finding => finding.Code));
    }
}
