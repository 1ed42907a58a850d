using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Patching;
using Cartwright.Platforms;

namespace Cartwright.Inspection;

/// <summary>Applies a patch to an existing image and puts the result right.</summary>
/// <param name="opener">Reads the images.</param>
/// <param name="named">The platform the user names; null to recognise it.</param>
/// <param name="mend">True to put size codes and checksums right after the patch.</param>
public sealed class ImagePatcher(ImageOpener opener, Platform? named, bool mend)
{
    /// <summary>Applies a patch in memory.</summary>
    /// <param name="file">The image as the user named it, and its bytes.</param>
    /// <param name="patch">The patch as the user named it, and its bytes.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when the patch cannot be applied.</returns>
    public PatchedImage? Apply((string Name, ReadOnlyMemory<byte> Bytes) file, (string Name, ReadOnlyMemory<byte> Bytes) patch, FindingLog log)
    {
        if (ApplyToBase(file, patch, log) is not { } result)
        {
            return null;
        }

        if (!result.Checked.HasFlag(PatchChecks.Base))
        {
            log.Add(InspectionFindings.BaseUnchecked, new SourcePlace(patch.Name), $"{patch.Name} does not say what image it is for: that {file.Name} is the right one was not checked.");
        }

        var before = opener.Open(file.Name, file.Bytes, named, new FindingLog());
        var after = opener.Open(file.Name, result.Output, named ?? before?.Found.Platform, new FindingLog());
        if (after is null)
        {
            log.Add(InspectionFindings.NotMended, new SourcePlace(file.Name), "What came out of the patch is of no clear platform.");
            return new PatchedImage(result.Output, null, [], []);
        }

        var mended = mend ? ImageMender.Mend(after, ImmutableHashSet<string>.Empty) : new MendedImage(result.Output, []);
        var final = mended.IsChanged ? ImageOpener.Again(after, mended.Bytes) ?? after : after;
        return new PatchedImage(mended.Bytes, final, mended.Changes, before is null ? [] : BankChange.Between(before, final)) { Before = before };
    }

    // The wrong base may be the right one behind a prefix or in another order; its CRC-32 then says so beyond doubt.
    private static PatchResult? ApplyToBase((string Name, ReadOnlyMemory<byte> Bytes) file, (string Name, ReadOnlyMemory<byte> Bytes) patch, FindingLog log)
    {
        var own = new FindingLog();
        var place = new SourcePlace(patch.Name);
        var result = Patch.Apply(file.Bytes.Span, patch.Bytes.Span, own, place);
        if (result is null && Patch.Describe(patch.Bytes.Span) is { } statement
            && PatchBase.Try(file.Bytes.Span, statement, [CopierPrefix.Length]) is [.., { Fits: true } way]
            && (way.PrefixLength > 0 || way.From != way.To))
        {
            own = new FindingLog();
            own.Add(InspectionFindings.BaseBrought, new SourcePlace(file.Name), $"The patch is for this image{Told(way)}; that is what it was applied to.");
            result = Patch.Apply(PatchBase.Bring(file.Bytes.Span, way), patch.Bytes.Span, own, place);
        }

        log.AddAll(own.ToSorted());

        return result;
    }

    private static string Told(PatchBaseTry way) =>
        (way.PrefixLength > 0 ? $" without the {ByteSize.Describe(way.PrefixLength)} in front of it" : "")
        + (way.From != ImageOrder.Console ? $" brought from the order `{ManifestWords.Word(way.From)}` to `{ManifestWords.Word(ImageOrder.Console)}`"
            : way.To != ImageOrder.Console ? $" in the order `{ManifestWords.Word(way.To)}`"
            : "");
}
