using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.TestImages;

/// <summary>An existing image whose unused stretches were filled, its checksums right again.</summary>
/// <param name="Bytes">The whole file.</param>
/// <param name="Rom">Its regions; null when no platform claims it.</param>
/// <param name="Filled">The stretches, in the file.</param>
public sealed record FilledImage(ReadOnlyMemory<byte> Bytes, Rom? Rom, ImmutableArray<FilledStretch> Filled)
{
    /// <summary>Fills an image.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="platform">The platform the user named; null for the one that claims it.</param>
    /// <param name="request">Which stretches, and with what.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>The image; null when there is a finding that says why not.</returns>
    public static FilledImage? Of(string file, byte[] bytes, Platform? platform, FillRequest request, FindingLog log)
    {
        var place = new SourcePlace(file);
        var own = new FindingLog();
        var opened = new ImageOpener(PlatformCatalog.BuiltIn).Open(file, bytes, platform, own);
        if (opened is null && platform is not null)
        {
            Tell(own, log);
            return null;
        }

        var unused = DiagnosableFill.Unused(bytes, request.Value, request.Shortest);
        if (unused.IsEmpty)
        {
            log.Add(TestImageFindings.NothingUnused, place, $"{file} has no stretch of at least {ByteSize.Describe(request.Shortest)} that holds nothing but {Number.Hex(request.Value, 2)}.");
            return null;
        }

        var filled = DiagnosableFill.Fill(bytes, unused, request.Seed);
        if (opened is not null && ImageOpener.Again(opened, filled) is { } again)
        {
            var mended = ImageMender.Mend(again, ImmutableHashSet<string>.Empty).Bytes;
            return new FilledImage(mended, ImageOpener.Again(again, mended)?.Cart.Rom, unused);
        }

        log.Add(TestImageFindings.NoChecksums, place, $"{file} is not recognised as the image of any platform; no checksum was touched.");
        return new FilledImage(filled, null, unused);
    }

    private static void Tell(FindingLog from, FindingLog to)
    {
        foreach (var finding in from.ToSorted())
        {
            to.Add(finding);
        }
    }
}
