using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Master System or Game Gear, or the SG-1000 before them: they share processor, connector and most of the memory map.</summary>
public sealed class SegaPlatform : Platform
{
    private const string Without = "none";

    private static readonly PlatformOption InternalHeader = new("internalHeader",
        [new NamedValue(0, "present", "header at the end of the first 32 KiB"), new NamedValue(1, Without, "no header: all bytes are the program's")],
        "present", "Whether the ROM has a header.", "ROM Header (smspower.org)");

    private SegaPlatform(PlatformFacts facts, ImmutableArray<PlatformOption> options, ImmutableArray<PlatformLayout> layouts)
    {
        Facts = facts;
        Options = options;
        Layouts = layouts;
    }

    /// <inheritdoc/>
    public override PlatformFacts Facts { get; }

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => SegaFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; }

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; }

    private bool HasHeaders => Facts != SegaFacts.Sg1000;

    /// <summary>The Master System.</summary>
    public static SegaPlatform MasterSystem() => Make(SegaFacts.MasterSystem, SegaHeader.Table("sms-export", enforced: true),
        [SegaMapper.Sega, SegaMapper.Linear, SegaMapper.ThreeRegister, SegaMapper.OneRegister, SegaMapper.FourRegister]);

    /// <summary>The Game Gear.</summary>
    public static SegaPlatform GameGear() => Make(SegaFacts.GameGear, SegaHeader.Table("gg-international", enforced: false),
        [SegaMapper.Sega, SegaMapper.Linear, SegaMapper.ThreeRegister]);

    /// <summary>The SG-1000, which has no header.</summary>
    public static SegaPlatform Sg1000() => new(SegaFacts.Sg1000, [CartridgeRam.Option], CartridgeRam.Layouts);

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Options[0]);
        var variant = HasHeaders && Word(settings, InternalHeader) == Without ? Headless(name) : name;
        return Layouts.First(layout => layout.Variant == variant);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => HasHeaders ? Facts.Id : "sg";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        HasHeaders ? SegaRecognition.Marked(file, Facts.Id) : SegaRecognition.Unmarked(file);

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) => SegaPrefix.Check(segments, log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        StartChecks.Check(cart, hasPauseButton: Facts != SegaFacts.GameGear, log);
        if (!HasHeaders)
        {
            CartridgeRam.Check(cart, log);
        }
        else if (cart.Headers.IsEmpty)
        {
            log.Add(SegaFindings.NoHeader, cart.Place("header:" + InternalHeader.Name), "The ROM is built without a header.");
        }
        else
        {
            new SegaChecks(cart, Facts.Id, log).Run();
        }
    }

    private static SegaPlatform Make(PlatformFacts facts, HeaderTable table, ImmutableArray<SegaMapper> mappers)
    {
        var option = new PlatformOption("mapper", [.. mappers.Select(static (mapper, index) => new NamedValue((ulong)index, mapper.Name, mapper.Meaning))],
            mappers[0].Name, "How the board switches banks: it settles addresses and sizes.", "Mappers (smspower.org)");
        return new(facts, [option, InternalHeader],
        [
            .. mappers.Select(mapper => Layout(mapper, mapper.Name, [table])),
            .. mappers.Select(static mapper => Layout(mapper, Headless(mapper.Name), [])),
        ]);
    }

    private static PlatformLayout Layout(SegaMapper mapper, string variant, ImmutableArray<HeaderTable> headers) =>
        new(variant, [new RegionRule(SegaHeader.Region, mapper.Sizes, "program and data")], headers, mapper.Addresses);

    private static string Headless(string mapper) => mapper + "-headless";
}
