using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Roms;
using Cartwright.Tests.Manifests;
using Xunit;

namespace Cartwright.Tests.Boards;

/// <summary>A board as a manifest has it, and the chips it makes of regions in memory.</summary>
internal sealed class BoardBench
{
    private readonly CartManifest _manifest;

    /// <param name="members">The members of the manifest's <c>board</c>.</param>
    /// <param name="images">The members of its <c>images</c>.</param>
    public BoardBench(string members, string images = "")
    {
        var read = ManifestText.With($$"""
            "board": { {{members}} }, "images": { {{images}} }
            """);
        Assert.Empty(read.Findings.Select(FindingText.Line));
        _manifest = read.Manifest!;
        Board = BoardChoice.Find(_manifest.Board, "own-board", Log);
    }

    public FindingLog Log { get; } = new();

    public Board? Board { get; }

    public ImmutableArray<Finding> Findings => Log.ToSorted();

    public IEnumerable<string> Codes => Findings.Select(finding => finding.Code);

    public void Check(string platform, Func<string, string?> header) => BoardChoice.Check(Board!, _manifest.Board, [platform, "alias"], header, Log);

    public ImmutableArray<ChipImage> Chips(params RegionImage[] regions) =>
        new ChipImageBuilder(Board!, _manifest.Board, _manifest.Images, Log).Build(new Rom([.. regions]));

    public static RegionImage Region(byte[] bytes, string name = "rom") => new(name, bytes, 0xFF, []);

    /// <summary>A board of one site on an 8-bit bus.</summary>
    public static BoardBench One(string site = "", string chips = "") =>
        new($$"""
            "sites": [ { "site": "U1"{{site}} } ], "chips": { {{chips}} }
            """);
}
