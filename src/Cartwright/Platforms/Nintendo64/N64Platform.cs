using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>Nintendo 64.</summary>
public sealed class N64Platform : Platform
{
    private const string Recognised = "auto";

    private readonly ImmutableArray<BootChip> _chips;
    private readonly PlatformOption _bootChip;

    /// <summary>The platform.</summary>
    public N64Platform()
        : this(BootChips.All)
    {
    }

    /// <summary>The platform with other lock chips, for tests: no invented boot code meets the values of the real ones.</summary>
    /// <param name="chips">The chips there are.</param>
    internal N64Platform(ImmutableArray<BootChip> chips)
    {
        _chips = chips;
        _bootChip = Option(chips);
        Layouts = N64Layouts.All(chips);
    }

    /// <inheritdoc/>
    public override PlatformFacts Facts => N64Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => N64Findings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options => [_bootChip];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; }

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var word = Word(settings, _bootChip);
        return word == Recognised
            ? Named(BootChips.Usual.Name) with { Variant = Recognised }
            : Named(_chips.FirstOrDefault(chip => chip.Is(word))?.Name ?? word) with { Variant = word };
    }

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        // Sizes and check words follow from the boot code, so that without one all else is noise.
        if (!segments.IsEmpty && !segments.Any(static segment => segment.Offset < BootCode.End && segment.End > BootCode.Start))
        {
            log.Add(N64Findings.NoBootCode, segments[0].Place, "No program covers 0x000040-0x000FFF.");
        }
    }

    /// <summary>Finds the layout by the boot code, where the manifest does not state the chip.</summary>
    /// <inheritdoc/>
    public override PlatformLayout Settle(PlatformLayout layout, ImmutableArray<PlacedSegment> segments)
    {
        if (layout.Variant != Recognised)
        {
            return layout;
        }

        var bytes = new byte[BootCode.Length];
        foreach (var segment in segments)
        {
            var first = Math.Max(segment.Offset, BootCode.Start);
            var end = Math.Min(segment.End, BootCode.End);
            if (first < end)
            {
                segment.Bytes.Span[(int)(first - segment.Offset)..(int)(end - segment.Offset)].CopyTo(bytes.AsSpan((int)first - BootCode.Start));
            }
        }

        return Variant(BootCode.Identify(bytes, _chips));
    }

    /// <inheritdoc/>
    public override long? SaveSize(CartView cart) => SizeIn(cart["saveMemory"]);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "z64";

    /// <inheritdoc/>
    public override ImageOrder OrderOf(ReadOnlySpan<byte> program) => new N64Recognition(_chips).OrderOf(program);

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => new N64Recognition(_chips).Recognise(file);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new N64Checks(cart, _chips, log).Run();

    private PlatformLayout Variant(BootCode? code) =>
        Named(code is null ? BootChips.Usual.Name : code.IsStock ? code.Chip.Name : N64Layouts.Open);

    private PlatformLayout Named(string variant) => Layouts.FirstOrDefault(layout => layout.Variant == variant) ?? Layouts[0];

    private static PlatformOption Option(ImmutableArray<BootChip> chips)
    {
        string[] words = [Recognised, .. chips.SelectMany(static chip => new[] { chip.Ntsc, chip.Pal }).OfType<string>().Order(StringComparer.Ordinal), N64Layouts.Open, N64Layouts.None];
        return new PlatformOption("bootChip", [.. words.Select(static (word, index) => new NamedValue((ulong)index, word, Meaning(word)))], Recognised,
            "The lock chip on the cartridge, which settles how the check words are made.", "Disassembly of the N64 boot stages IPL1/2/3");
    }

    private static string? Meaning(string word) => word switch
    {
        Recognised => "by the boot code itself",
        N64Layouts.Open => "an open boot code, which reads no header and no check words",
        N64Layouts.None => "no chip lets the boot code start; only loaders that skip the check do",
        _ => null,
    };
}
