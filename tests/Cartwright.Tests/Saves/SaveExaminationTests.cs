using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Platforms;
using Cartwright.Saves;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveExaminationTests
{
    private static readonly ImmutableArray<string> All = [.. PlatformCatalog.BuiltIn.All.Select(platform => platform.Facts.Id)];

    // A save as games write it: a signature, names, and long rows of nothing.
    private static byte[] Save(int size)
    {
        var bytes = new byte[size];
        for (var at = 0; at < size; at += 64)
            TestBytes.L(20).CopyTo(bytes.AsSpan(at));

        "LANTERN TIDE"u8.CopyTo(bytes.AsSpan(size - 20));
        return bytes;
    }

    [Fact]
    public void Every_file_of_every_kind_is_among_what_it_can_be()
    {
        foreach (var kind in SaveKinds.All)
        {
            foreach (var (size, word) in kind.Sizes.SelectMany(size => kind.Layouts.Select(word => (size, word))))
            {
                var found = SaveCandidates.Of(SaveLayouts.Find(word)!.ToFile(Save(size)), kind.Platforms);
                Assert.Contains(found, row => row.Kind.Id == kind.Id && row.Size == size && row.Form.ToString() == word && row.Strength > 0);
            }
        }
    }

    [Theory]
    [InlineData("odd-ff", "odd-ff")]
    [InlineData("odd-00", "odd-00")]
    public void Filler_in_one_lane_is_what_only_one_layout_has(string layout, string form)
    {
        var best = Examine(SaveLayouts.Find(layout)!.ToFile(Save(8192)), ["md"])!.Candidates[0];
        Assert.Equal(("sram-odd", form, 8192, 2), (best.Kind.Id, best.Form.ToString(), best.Size, best.Strength));
    }

    [Fact]
    public void A_clock_behind_the_memory_is_seen()
    {
        var best = Examine([.. Save(32768), .. new byte[48]], All)!.Candidates[0];
        Assert.Equal(("gb", "packed+clock48", 32768), (best.Platform, best.Form.ToString(), best.Size));
    }

    [Theory]
    [InlineData(0xFF)]
    [InlineData(0x00)]
    public void Filler_behind_a_smaller_memory_is_seen(byte filler)
    {
        var found = Examine([.. Save(512), .. TestBytes.All(filler, 1536)], ["gb"], "CW9501")!.Candidates;
        Assert.Equal((512, 0), (found[0].Size, found[0].Strength));
    }

    [Fact]
    public void What_decides_is_said_where_several_fit()
    {
        var examined = Examine(Save(32768), ["n64"], "CW9510")!;
        Assert.Equal(["controller-pak", "sram"], examined.Candidates.Select(row => row.Kind.Id).Distinct().Order());
        Assert.Equal(2, examined.Deciding.Length);
        Assert.Empty(Examine(Save(2048), ["snes"])!.Deciding);
    }

    [Theory]
    [InlineData("blank", "CW9511")]
    [InlineData("low", "CW9512")]
    [InlineData("high", "CW9512")]
    [InlineData("words", "CW9512")]
    [InlineData("noise", "CW9513")]
    [InlineData("half", "CW9514")]
    [InlineData("text", "CW9509")]
    public void Bytes_that_are_no_save_are_told(string what, string code) => Examine(Bytes(what), ["snes"], code);

    [Fact]
    public void A_save_as_games_write_it_is_not_taken_for_anything_else() => Examine(Save(8192), ["snes"]);

    [Theory]
    [InlineData(0, "CW9500")]
    [InlineData(16 << 20, "CW9503")]
    public void What_can_be_no_save_is_refused(int length, string code)
    {
        var log = new FindingLog();
        Assert.Null(SaveExamination.Of("game.sav", new byte[length], All, null, log));
        Assert.Equal(code, Assert.Single(log.ToSorted()).Code);
    }

    [Fact]
    public void An_odd_size_is_told() => Assert.Empty(Examine(Save(8191), All, "CW9501")!.Candidates);

    [Theory]
    [InlineData(8192, 8192, null)]
    [InlineData(8192, 2048, "CW9515")]
    [InlineData(8190, null, "CW9515")]
    public void A_cart_is_asked(int length, int? size, string? code)
    {
        var log = new FindingLog();
        Assert.NotNull(SaveExamination.Of("game.sav", Save(length), ["snes"], new SaveDemand("snes", size), log));
        Assert.Equal(code, log.ToSorted().Select(finding => finding.Code).SingleOrDefault());
    }

    private static byte[] Bytes(string what) => what switch
    {
        "blank" => TestBytes.All(0xFF, 8192),
        "low" => [.. Enumerable.Range(0, 8192).Select(at => (byte)at)],
        "high" => [.. Enumerable.Range(0, 8192).Select(at => (byte)(at >> 8))],
        "words" => [.. Enumerable.Range(0, 4096).SelectMany(word => new[] { (byte)(word >> 8), (byte)word })],
        "noise" => TestBytes.L(8192),
        "half" => [.. Save(4096)[..4095], 1, .. TestBytes.All(0xFF, 4096)],
        _ => [.. Enumerable.Range(0, 8192).Select(at => (byte)('a' + (at % 26)))],
    };

    private static SaveExamination? Examine(byte[] bytes, ImmutableArray<string> platforms, params string[] codes)
    {
        var log = new FindingLog();
        var examined = SaveExamination.Of("game.sav", bytes, platforms, null, log);
        Assert.Equal(codes, log.ToSorted().Select(finding => finding.Code).Where(code => codes.Length > 0 || code != "CW9510").ToArray());
        return examined;
    }
}
