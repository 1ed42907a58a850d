using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Platforms;
using Cartwright.Roms;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary><c>cartwright pattern fill</c></summary>
internal static class PatternFill
{
    private const string Word = ".diagnosable";

    public static PatternFiles? Make(PatternRequest request, string? file, Platform? platform, FillRequest fill, string? name, TextWriter errors, FindingLog log)
    {
        if (file is null)
        {
            errors.WriteLine("cartwright: `pattern fill` takes an image, as in `cartwright pattern fill game.sfc`.");
            return null;
        }

        if (ImageInput.Read(file, log) is not { } bytes || FilledImage.Of(file, bytes, platform, fill, log) is not { } filled)
        {
            return null;
        }

        var stem = name ?? Path.GetFileNameWithoutExtension(file) + Word;
        return request.Board is { } board
            ? BoardInput.TryFind(board, errors, out var found) && request.Builder(found, log).Lay(filled.Rom ?? Plain(filled, found.Sites[0].Region), request.Settings, filled.Filled) is { } laid
                ? new PatternFiles(laid, TestImageFiles.Plan(laid, stem))
                : null
            : Whole(request, filled, stem, Path.GetExtension(file));
    }

    private static PatternFiles Whole(PatternRequest request, FilledImage filled, string stem, string ending)
    {
        var set = new TestImageSet(TestImageKinds.Fill, request.Settings, SingleChip.Of(request.Width ?? 8), [], Plain(filled, SingleChip.Region).Regions) { Filled = filled.Filled };
        return new PatternFiles(set, TestImageFiles.PlanWhole(set, stem, ending));
    }

    private static Rom Plain(FilledImage filled, string region) => new([new RegionImage(region, filled.Bytes.ToArray(), byte.MaxValue, ImmutableArray<PlacedSegment>.Empty)]);
}
