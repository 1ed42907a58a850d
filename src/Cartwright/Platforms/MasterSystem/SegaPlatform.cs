using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What Master System and Game Gear have in common: a header that may be left out, and mappers.</summary>
/// <param name="table">The header.</param>
/// <param name="mappers">The mappers of the console's boards, the customary one first.</param>
public abstract class SegaPlatform(HeaderTable table, ImmutableArray<SegaMapper> mappers) : Platform
{
    private const string Without = "none";

    private static readonly PlatformOption InternalHeader = new("internalHeader",
        [new NamedValue(0, "present", "header at the end of the first 32 KiB"), new NamedValue(1, Without, "no header: all bytes are the program's")],
        "present", "Whether the ROM has a header.", "ROM Header, smspower.org");

    private readonly PlatformOption _mapper = new("mapper",
        [.. mappers.Select(static (mapper, index) => new NamedValue((ulong)index, mapper.Name, mapper.Meaning))],
        mappers[0].Name, "How the board switches banks: it settles addresses and sizes.", "Mappers, smspower.org");

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => SegaFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options => [_mapper, InternalHeader];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
        [.. mappers.Select(mapper => Make(mapper, [table])), .. mappers.Select(static mapper => Make(mapper, []))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Variant(Word(settings, _mapper), Word(settings, InternalHeader) != Without);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) => SegaPrefix.Check(segments, log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        StartChecks.Check(cart, HasPauseButton, log);
        HeaderChecks.Check(cart, this, log);
        TagChecks.Check(cart, log);
    }

    /// <summary>Whether an export console refuses a cart whose header is wrong.</summary>
    public bool ChecksSum => table.Checksums[0].Enforced;

    /// <summary>Whether the console has a button that interrupts the program.</summary>
    protected internal abstract bool HasPauseButton { get; }

    /// <summary>Whether a region's value is for this console.</summary>
    /// <param name="region">The value.</param>
    protected internal abstract bool Owns(int region);

    private static PlatformLayout Make(SegaMapper mapper, ImmutableArray<HeaderTable> headers) => new(
        Variant(mapper.Name, !headers.IsEmpty),
        [new RegionRule(SegaHeader.Region, mapper.Sizes, "program and data")],
        headers,
        mapper.Addresses);

    private static string Variant(string mapper, bool hasHeader) => hasHeader ? mapper : mapper + "-without-header";
}
