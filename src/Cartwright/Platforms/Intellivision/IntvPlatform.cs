using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Intellivision;

/// <summary>The Intellivision.</summary>
public sealed class IntvPlatform : Platform
{
    private const string Words = "none";
    private const string Transfer = "transfer";

    private static readonly PlatformOption Container = new("container",
        [
            new NamedValue(0, Words, "the words alone, high byte first (.bin)"),
            new NamedValue(1, Transfer, "segments with addresses and checks (.rom)"),
        ],
        Words, "The form of the exchange file; the chips' files are the same.", "Transfer protocol summary (16kram.com)");

    private static readonly SizeRule Sizes = new([8 << 10, 16 << 10, 24 << 10, 32 << 10], TransferContainer.Page,
        "8, 16, 24 or 32 KiB, which are 4, 8, 12 or 16 K-words; stated, any number of pages of 512 bytes up to 32 KiB")
    {
        Smallest = TransferContainer.Page,
    };

    /// <inheritdoc/>
    public override PlatformFacts Facts => IntvFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => IntvFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Container];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Make(Words), Make(Transfer)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var word = Word(settings, Container);
        return Layouts.First(layout => layout.Variant == word);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart.Layout.Variant == Transfer ? "rom" : "bin";

    /// <inheritdoc/>
    public override ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartView cart) =>
        cart.Layout.Variant == Transfer ? TransferContainer.Parts(cart.Rom[IntvHeader.Region]!.Bytes) : base.Exchange(cart);

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments.Where(static segment => segment.Offset == 0))
        {
            var bytes = segment.Bytes.Span;
            if (TransferContainer.IsBegun(bytes) && TransferContainer.IsWhole(bytes))
            {
                log.Add(IntvFindings.ContainerProgram, segment.Place, $"{segment.Program} begins with {Convert.ToHexString(bytes[..3])}, and its checks are right.");
            }
            else if (IntvRecognition.IsSwapped(bytes))
            {
                log.Add(IntvFindings.SwappedProgram, segment.Place, $"{segment.Program} begins with a header whose words have the low byte first.");
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new IntvChecks(cart, log).Run();

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => IntvRecognition.Recognise(file, Words, Transfer);

    private static PlatformLayout Make(string variant) =>
        new(variant, [new RegionRule(IntvHeader.Region, Sizes, "header, program and data, in words of 16 bits")], [IntvHeader.Table], new IntvAddresses());
}
