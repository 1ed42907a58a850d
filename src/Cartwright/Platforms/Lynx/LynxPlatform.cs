using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Lynx;

/// <summary>Atari Lynx: a cartridge read block by block, whose encrypted start is the program's own.</summary>
public sealed class LynxPlatform : Platform
{
    private const string BySize = "by-size";
    private const int SmallestContainerBlock = 0x100;

    private static readonly PlatformOption BlockSize = new("blockSize",
        [new NamedValue(0, BySize, "as the ROM's size has it: a 256th"), .. LynxBlocks.Sizes.Select(static size => new NamedValue((ulong)size, Name(size)))],
        BySize, "Bytes of a block. A program is made for one block size, which settles the ROM's size: state it, so that `fit` cannot choose another.",
        "Lynx cartridge port pinouts");

    /// <inheritdoc/>
    public override PlatformFacts Facts => LynxFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => LynxFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [BlockSize];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Make(null), .. LynxBlocks.Sizes.Select(static size => Make(size))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var word = Word(settings, BlockSize);
        return Layouts.First(layout => layout.Variant == word);
    }

    /// <inheritdoc/>
    public override long? SaveSize(CartView cart) => cart["eeprom"] switch
    {
        "93C46" => 128,
        "93C56" => 256,
        "93C66" => 512,
        "93C76" => 1024,
        "93C86" => 2048,
        _ => null,
    };

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "lnx";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (IsContainer(segment.Bytes.Span))
            {
                log.Add(LynxFindings.ContainerInside, segment.Place, $"{segment.Program} begins with a container (4C 59 4E 58).");
            }
            else if (segment.Bytes.Span is [0x80, 0x08, _, _, _, _, (byte)'B', (byte)'S', (byte)'9', (byte)'3', ..])
            {
                log.Add(LynxFindings.RamProgram, segment.Place, $"{segment.Program} begins with 80 08 and has BS93 at 0x000006.");
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new LynxChecks(cart, log).Run();

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (IsContainer(file))
        {
            return new RecognitionClaim(Certainty.Exact, "a LYNX container with a possible block size") { PrefixLength = LynxHeader.Length, Variant = Variant(BlockOf(file)) };
        }

        return LynxBlocks.Rule(null).Allows(file.Length) && LynxBoot.Directory(file) is not null
            ? new RecognitionClaim(Certainty.Candidate, "it begins with the counts of a boot header, and has a cartridge's size") { Variant = Variant(LynxBlocks.SizeFor(file.Length)) }
            : null;
    }

    private static bool IsContainer(ReadOnlySpan<byte> file) =>
        file.Length > LynxHeader.Length && file.StartsWith(LynxHeader.Magic) && BlockOf(file) is SmallestContainerBlock or 0x200 or 0x400 or LynxBlocks.Largest;

    private static int BlockOf(ReadOnlySpan<byte> container) => BinaryPrimitives.ReadUInt16LittleEndian(container[4..]);

    private static string? Variant(int blockSize) => LynxBlocks.Sizes.Contains(blockSize) ? Name(blockSize) : null;

    private static string Name(int blockSize) => blockSize.ToString(CultureInfo.InvariantCulture);

    private static PlatformLayout Make(int? blockSize) => new(blockSize is { } size ? Name(size) : BySize,
        [new RegionRule(LynxHeader.Region, LynxBlocks.Rule(blockSize), "boot header, loader, directory and files")], [LynxHeader.Table], new LynxAddresses(blockSize));
}
