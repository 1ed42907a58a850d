using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>Function ROMs of the Commodore 128: in the cartridge port or the socket inside.</summary>
public sealed class C128Platform : Platform
{
    /// <summary>The container's signature.</summary>
    public const string Signature = "C128 CARTRIDGE";

    private const int Start = 0x8000;
    private const int Half = 0x4000;
    private const int Hidden = 0xFF00;

    private static readonly CommodoreMapping Mapping = new("c128", SizeRule.PowersOfTwo(Half, 2 * Half),
        new WindowedAddresses(CommodoreMapping.Region, [new AddressWindow(Start, Start + Half, 0), new AddressWindow(Start + Half, Hidden, Half)], null,
            [(0x7FFF, "RAM or BASIC"), (0xFFFF, "the machine's registers and vectors (from memory)")]),
        [new CrtWindow(Start, Half), new CrtWindow(Start + Half, Half)], "$8000-$BFFF, then $C000-$FEFF");

    /// <inheritdoc/>
    public override PlatformFacts Facts => C128Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => CommodoreFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
        [new PlatformLayout(Mapping.Name, [new RegionRule(CommodoreMapping.Region, Mapping.Sizes, Mapping.Holds)], [CrtHeader.For(Signature), C128Header.Table], Mapping.Addresses)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Layouts[0];

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "crt";

    /// <inheritdoc/>
    public override ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartView cart) => CrtWriter.Parts(cart, Mapping);

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) =>
        ProgramChecks.Check(segments.AsSpan(), Signature, static bytes => C128Recognition.HasLoadAddress(bytes.Span), log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var checks = new StartChecks(cart, log);
        CheckMark(checks);
        foreach (var name in new[] { "coldJump", "warmJump" })
        {
            if (checks.Entry(name) is { Text: not "jmp" } jump)
            {
                checks.Add(CommodoreFindings.NoJump, name, $"`{name}` is {jump.Text}.", "4C, a jump");
            }
        }

        // What is seen above is from memory, and no build fails on that.
        if (checks.Address("coldStart") < Start + Half)
        {
            checks.CheckColdStart(Start, C128Header.Length);
        }

        checks.CheckWarmStart();
        if (cart.Rom[CommodoreMapping.Region]!.CoveringSegment(Hidden - Start, 0x10000 - Hidden) is { } covering
            && cart.Bytes(CommodoreMapping.Region)[(Hidden - Start)..].ContainsAnyExcept(cart.Rom[CommodoreMapping.Region]!.Fill))
        {
            log.Add(CommodoreFindings.Hidden, covering.Place, string.Create(CultureInfo.InvariantCulture, $"{covering.Program} has bytes at 0x{Hidden - Start:X4}-0x7FFF, which would be $FF00-$FFFF."));
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => C128Recognition.Recognise(file);

    private static void CheckMark(StartChecks checks)
    {
        var mark = checks.Entry("mark");
        if (!C128Recognition.IsMark(mark.Raw.AsSpan()))
        {
            var digits = Convert.ToHexString(mark.Raw.AsSpan());
            checks.Add(mark.Origin == Headers.EntryOrigin.Manifest ? CommodoreFindings.ByHand : CommodoreFindings.NoMark, "mark", $"At 0x0007, where the mark belongs, there is {digits}.", "43424D");
        }
        else if (checks.Entry("identifier").Text == C128Header.Never)
        {
            checks.Add(CommodoreFindings.ByHand, "identifier", "The identifier is 00, with which the machine does not start the ROM.");
        }
    }
}
