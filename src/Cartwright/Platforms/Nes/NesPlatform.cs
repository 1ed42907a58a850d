using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nes;

/// <summary>The Nintendo Entertainment System and the Famicom.</summary>
public sealed class NesPlatform : Platform
{
    private const string Older = "ines";

    /// <summary>The option that chooses the container's generation.</summary>
    public static PlatformOption Container { get; } = new("container",
        [new NamedValue(0, "nes2", "NES 2.0, which can say everything"), new NamedValue(1, Older, "iNES, the older one; an error where it cannot say a value")],
        "nes2", "The generation of the 16-byte header that stands before PRG and CHR in the exchange file.", "NESdev Wiki, NES 2.0");

    /// <inheritdoc/>
    public override PlatformFacts Facts => NesFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => NesFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Container];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Settle(null, Container.Default), Settle(null, Older)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Settle(Mapper(settings), Word(settings, Container));

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => NesRecognition.Recognise(file);

    /// <inheritdoc/>
    public override ImmutableArray<ImagePart> Parts(ReadOnlySpan<byte> file, RecognitionClaim claim, PlatformLayout layout) => NesRecognition.Parts(file);

    /// <inheritdoc/>
    public override void CheckFile(ReadOnlySpan<byte> file, SourcePlace place, FindingLog log)
    {
        var (start, map) = NesRecognition.Map(file);
        map?.Check(file[start..], place with { Offset = start }, log);
    }

    /// <inheritdoc/>
    public override long? SaveSize(CartView cart) => SizeIn(cart["prgSaveRam"]);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "nes";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (segment.Bytes.Span.StartsWith(NesFields.Magic))
            {
                log.Add(NesFindings.ContainerInside, segment.Place, $"{segment.Program} begins with a container header (4E 45 53 1A).", remedy: Remedy(segment));
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new NesCartCheck(cart, log).Run();

    private static PlatformLayout Settle(NesMapper? mapper, string container)
    {
        var older = container == Older;
        return new PlatformLayout(container, NesSizes.Regions(mapper, older), [older ? OlderNesHeader.Table : NesHeader.Table], new NesAddressMap(mapper)) { Vectors = [NesVectors.Table] };
    }

    private static NesMapper? Mapper(HeaderSettings settings)
    {
        if (settings["mapper"]?.Text is not { } text || !MapperText.Instance.TryParse(text, out var number) || number > 0xFFF)
        {
            return null;
        }

        var submapper = settings["submapper"]?.Text is { } stated && Number.TryParse(stated, out long given) ? given : NesMappers.Named(text)?.Submapper ?? 0;
        return NesMappers.Find((int)number, submapper is >= 0 and <= 15 ? (int)submapper : 0);
    }

    // A whole exchange file can be taken apart where it stands.
    private static string? Remedy(PlacedSegment segment) =>
        NesImageMap.Read(segment.Bytes.Span) is { Chr: > 0, Missing: 0 } map
            ? string.Create(CultureInfo.InvariantCulture, $"Name it twice: for `prg` with `\"skip\": {map.PrgStart}` and `\"length\": {map.Prg}`, for `chr` with `\"skip\": {map.ChrStart}` and `\"length\": {map.Chr}`.")
            : null;
}
