using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>Opens existing images: which platform, which order, which parts, which header.</summary>
/// <param name="catalog">The platforms to choose from.</param>
public sealed class ImageOpener(PlatformCatalog catalog)
{
    private const int Word = 2;

    private readonly Recogniser _recogniser = new(catalog);

    /// <summary>Opens an image.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="named">The platform the user names; null to recognise it.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when its platform is not clear or nothing of it can be read.</returns>
    public OpenedImage? Open(string file, ReadOnlyMemory<byte> bytes, Platform? named, FindingLog log)
    {
        var ranked = _recogniser.Rank(bytes.Span);
        return Choose(file, bytes.Length, ranked, named, log) is { } found ? Open(file, bytes, ranked, found, log) : null;
    }

    /// <summary>Opens an image of which only header bytes have changed since it was opened: what it is need not be found again.</summary>
    /// <param name="image">The image as it was.</param>
    /// <param name="bytes">The whole file as it is.</param>
    public static OpenedImage? Again(OpenedImage image, ReadOnlyMemory<byte> bytes) => Open(image.File, bytes, image.Ranked, image.Found, new FindingLog());

    private static RecognisedPlatform? Choose(string file, int length, ImmutableArray<RecognisedPlatform> ranked, Platform? named, FindingLog log)
    {
        if (named is not null)
        {
            return ranked.FirstOrDefault(row => row.Platform == named) ?? new RecognisedPlatform(named, new RecognitionClaim(Certainty.Candidate, "named by the user"));
        }

        var found = Recogniser.Decide(ranked);
        if (found is null)
        {
            log.Add(ranked.IsEmpty ? InspectionFindings.Unknown : InspectionFindings.Ambiguous, new SourcePlace(file), ranked.IsEmpty
                ? $"Nothing in its {ByteSize.Describe(length)} shows what platform it is for."
                : $"It may be for {string.Join(" or ", ranked.Where(row => row.Claim.Certainty == ranked[0].Claim.Certainty).Select(static row => $"{row.Platform.Facts.Id} ({row.Claim.Reason})"))}.");
        }

        return found;
    }

    private static OpenedImage? Open(string file, ReadOnlyMemory<byte> bytes, ImmutableArray<RecognisedPlatform> ranked, RecognisedPlatform found, FindingLog log)
    {
        var options = LayoutChoice.For(found.Platform, found.Claim, bytes.Length);
        var layout = found.Platform.Layout(options);
        var parts = found.Platform.Parts(bytes.Span, found.Claim, layout);
        var segments = Segments(file, bytes, parts, found.Claim.Order);
        layout = found.Platform.Settle(layout, segments);
        var rom = new Rom([.. layout.Regions.Select(rule => Region(rule, segments)).OfType<RegionImage>()]);
        if (rom.Regions.IsEmpty)
        {
            log.Add(InspectionFindings.CutShort, new SourcePlace(file), $"Nothing is left of its {ByteSize.Describe(bytes.Length)} for a ROM.");
            return null;
        }

        var headers = ReadHeaders(file, bytes, layout, parts, rom, options, log);
        return new OpenedImage(file, bytes, ranked, found)
        {
            Options = options,
            Parts = parts,
            Vectors = ReadVectors(layout, rom),
            Cart = new CartView(Refine(found.Platform, layout, options, headers), rom, headers, Place(file, headers)),
        };
    }

    // Sizes and addresses may depend on what the header says of the board.
    private static PlatformLayout Refine(Platform platform, PlatformLayout layout, HeaderSettings options, ImmutableArray<HeaderImage> headers)
    {
        var values = options.Values.ToBuilder();
        foreach (var entry in headers.SelectMany(static header => header.Entries).Where(entry => !values.ContainsKey(entry.Field.Name)))
        {
            values[entry.Field.Name] = new ManifestValue(entry.Text, SourcePlace.None);
        }

        var said = platform.Layout(options with { Values = values.ToImmutable() });
        return said.Variant == layout.Variant ? layout with { Regions = said.Regions, Addresses = said.Addresses } : layout;
    }

    private static ImmutableArray<PlacedSegment> Segments(string file, ReadOnlyMemory<byte> bytes, ImmutableArray<ImagePart> parts, ImageOrder order) =>
    [
        .. parts.Where(static part => part is { Region: not null, Length: > 0 }).Select(part =>
            new PlacedSegment(part.Region!, part.Offset, InOrder(bytes.Slice(part.Start, part.Length), order), file, SourcePlace.At(file, part.Start))),
    ];

    // The rest of an image whose length does not fit its order stays as it is.
    private static ReadOnlyMemory<byte> InOrder(ReadOnlyMemory<byte> bytes, ImageOrder order)
    {
        if (order == ImageOrder.Console)
        {
            return bytes;
        }

        var console = bytes.ToArray();
        var whole = console.Length - (console.Length % ImageOrders.Unit(order));
        ImageOrders.ToConsole(order, bytes.Span[..whole], console.AsSpan(0, whole));
        return console;
    }

    private static RegionImage? Region(RegionRule rule, ImmutableArray<PlacedSegment> segments)
    {
        var own = segments.Where(segment => segment.Region == rule.Name).OrderBy(static segment => segment.Offset).ToImmutableArray();
        if (own.IsEmpty)
        {
            return null;
        }

        var bytes = Whole(own) ?? Placed(own, rule.Fill);
        // Fill at the end is what a build puts where no program is; but a program may end in such a byte, and never in half a word.
        var content = (bytes.AsSpan().LastIndexOfAnyExcept(rule.Fill) + Word) / Word * Word;
        return new RegionImage(rule.Name, bytes, rule.Fill,
        [
            .. own.Where(segment => segment.Offset < content || content == 0)
                .Select(segment => segment.End <= content || content == 0 ? segment : segment with { Bytes = segment.Bytes[..(int)(content - segment.Offset)] }),
        ]);
    }

    // A file that is one region and nothing else is not copied: nobody writes into a region that was read.
    private static byte[]? Whole(ImmutableArray<PlacedSegment> segments) =>
        segments is [{ Offset: 0 } only] && MemoryMarshal.TryGetArray(only.Bytes, out var held) && held.Count == held.Array!.Length ? held.Array : null;

    private static byte[] Placed(ImmutableArray<PlacedSegment> segments, byte fill)
    {
        var bytes = new byte[segments.Max(static segment => segment.End)];
        bytes.AsSpan().Fill(fill);
        foreach (var segment in segments)
        {
            segment.Bytes.Span.CopyTo(bytes.AsSpan((int)segment.Offset));
        }

        return bytes;
    }

    private static ImmutableArray<HeaderImage> ReadHeaders(
        string file, ReadOnlyMemory<byte> bytes, PlatformLayout layout, ImmutableArray<ImagePart> parts, Rom rom, HeaderSettings options, FindingLog log)
    {
        var context = new HeaderContext(null, null, rom.LengthOf) { RegionBytes = name => rom[name]?.Bytes ?? default };
        context.SetAll(options);

        var containers = new Queue<ImagePart>(parts.Where(static part => part.Region is null));
        var headers = ImmutableArray.CreateBuilder<HeaderImage>();
        foreach (var table in layout.Headers)
        {
            var source = table.Region is { } region ? rom[region]?.Bytes
                : containers.TryDequeue(out var part) ? bytes.Slice(part.Start, part.Length)
                : (ReadOnlyMemory<byte>?)null;
            if (source is { } held && HeaderReader.Read(table, held.Span, context) is { } header)
            {
                headers.Add(header);
            }
            else if (source is { } rest)
            {
                log.Add(InspectionFindings.CutShort, new SourcePlace(file), $"The {table.Title} needs {ByteSize.Describe(table.Anchor.Needs(table.Length))} or more, and there are {ByteSize.Describe(rest.Length)}.");
            }
        }

        return headers.ToImmutable();
    }

    private static ImmutableArray<HeaderImage> ReadVectors(PlatformLayout layout, Rom rom) =>
    [
        .. layout.Vectors
            .Select(table => rom[table.Region!] is { } region ? HeaderReader.Read(table, region.Bytes.Span, new HeaderContext(null, null, rom.LengthOf)) : null)
            .OfType<HeaderImage>(),
    ];

    // Checks ask for the manifest's place of a field; here it is the field's offset.
    private static Func<string, SourcePlace> Place(string file, ImmutableArray<HeaderImage> headers) => key =>
    {
        var name = key[(key.LastIndexOf(':') + 1)..];
        var places = headers.SelectMany(static header => header.Entries.Select(static entry => (entry.Field.Name, entry.Offset)).Concat(header.Checksums.Select(static entry => (entry.Row.Name, entry.Offset))));
        var (found, offset) = places.FirstOrDefault(row => row.Name == name);
        return found is null ? new SourcePlace(file) : SourcePlace.At(file, offset);
    };
}
