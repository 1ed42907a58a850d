using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.PcEngine;

/// <summary>PC Engine and TurboGrafx-16: cards without header, title or checksum.</summary>
public sealed class PcEnginePlatform : Platform
{
    private const string Linear = "linear";
    private const string Pages = "pages";
    private const long K = 1 << 10;

    private static readonly PlatformOption Mapper = new("mapper",
        [
            new NamedValue(0, Linear, "up to 1 MiB, all of it in banks of its own"),
            new NamedValue(1, Pages, "2.5 MiB: 512 KiB in banks 00-3F, and one of four pages of 512 KiB in banks 40-7F, selected by a write to $1FF0-$1FF3 of the card"),
        ],
        Linear, "Whether the card switches pages.", "page select of one card, public programs (addresses not kept)");

    private static readonly SizeRule LinearSizes = new(
        [8 * K, 16 * K, 32 * K, 64 * K, 128 * K, 256 * K, 512 * K, 768 * K, 1024 * K], HuCard.Bank,
        "8, 16, 32, 64, 128, 256, 512 or 768 KiB or 1 MiB; stated, also 384 KiB and any multiple of 8 KiB up to 256 KiB")
    {
        Largest = 256 * K,
        OnlyStated = [HuCard.ThreeEighths],
    };

    private static readonly SizeRule PagedSizes = new([HuCard.Paged], 0, "exactly 2560 KiB");

    /// <inheritdoc/>
    public override PlatformFacts Facts => PcEngineFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => PcEngineFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapper];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Make(Linear, LinearSizes, pages: false), Make(Pages, PagedSizes, pages: true)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var word = Word(settings, Mapper);
        return Layouts.First(layout => layout.Variant == word);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "pce";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (segment.Offset == 0 && PcEngineRecognition.HasPrefix(segment.Bytes.Span))
            {
                log.Add(PcEngineFindings.CopierPrefix, segment.Place, $"{segment.Program} has {ByteSize.Describe(segment.Length)}, 512 bytes more than whole banks of 8 KiB.");
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new PcEngineChecks(cart, log).Run();

    /// <inheritdoc/>
    public override ImageOrder OrderOf(ReadOnlySpan<byte> program) =>
        PcEngineRecognition.Recognise(program) is { Certainty: >= Certainty.Structural, PrefixLength: 0 } claim ? claim.Order : ImageOrder.Console;

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => PcEngineRecognition.Recognise(file);

    private static PlatformLayout Make(string variant, SizeRule sizes, bool pages) => new(variant,
        [new RegionRule(HuCard.Region, sizes, "program and data; bank 0 ends with the vectors")], [], new PcEngineAddresses(pages))
    {
        Vectors = [HuCardVectors.Table],
    };
}
