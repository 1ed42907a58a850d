using Cake.Core;
using Cake.Core.Annotations;
using Cake.Core.IO;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Patching;

namespace Cartwright.Cake;

/// <summary>Examines, mends and patches existing images.</summary>
[CakeAliasCategory("Cartwright")]
[CakeNamespaceImport("Cartwright.Cake")]
public static class ImageAliases
{
    /// <summary>Examines an image: platform, header, checksums, sizes, and what is wrong with it.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="image">The image.</param>
    /// <param name="settings">How it is read; null for nothing special.</param>
    /// <example><code>var title = CartExamine("game.gb").Image.Found.Platform.Facts.Name;</code></example>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log.</exception>
    [CakeMethodAlias]
    public static ExaminedImage CartExamine(this ICakeContext context, FilePath image, ImageSettings? settings = null)
    {
        var files = new ImageFiles(context, settings?.Platform);
        var opened = files.Open(image);
        if (opened is not null)
        {
            new ImageExamination(opened, files.Log).Run();
        }

        return new ExaminedImage(files.Finish(image, opened), files.Log.ToSorted());
    }

    /// <summary>Puts right the size codes, fixed marks and checksums of an image, and writes the result to another file.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="image">The image; not changed.</param>
    /// <param name="output">The file for the result; one that is there is replaced.</param>
    /// <param name="settings">What is mended; null for nothing special.</param>
    /// <example><code>CartMend("game.gb", "release/game.gb");</code></example>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log, and nothing was written.</exception>
    [CakeMethodAlias]
    public static MendedImage CartMend(this ICakeContext context, FilePath image, FilePath output, ImageSettings? settings = null)
    {
        var wanted = settings ?? new ImageSettings();
        var files = new ImageFiles(context, wanted.Platform);
        var opened = files.Open(image);
        var mended = opened is not null && MendChecks.CanMend(opened, files.Log) && MendChecks.KnowsNames(opened, wanted.Also, new SourcePlace(image.FullPath), files.Log)
            && new ImageFitter(ImageFiles.Opener, wanted.Strip, wanted.FillUp).Fit(opened, files.Log) is { } fitted
            ? ImageMender.Mend(fitted.Image, wanted.Also.ToHashSet(StringComparer.OrdinalIgnoreCase))
            : null;
        if (mended is not null && !files.Log.HasErrors)
        {
            files.Write(output, mended.Bytes, image);
        }

        return files.Finish(image, mended);
    }

    /// <summary>Applies an IPS, BPS or VCDIFF patch to an image, puts the result right, and writes it to another file.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="image">The image; not changed.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="output">The file for the result; one that is there is replaced.</param>
    /// <param name="settings">How it is read and put right; null for nothing special.</param>
    /// <example><code>CartPatch("game.gb", "spring.bps", "release/game.gb");</code></example>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log, and nothing was written.</exception>
    [CakeMethodAlias]
    public static PatchedImage CartPatch(this ICakeContext context, FilePath image, FilePath patch, FilePath output, ImageSettings? settings = null)
    {
        var wanted = settings ?? new ImageSettings();
        var files = new ImageFiles(context, wanted.Platform);
        var patcher = new ImagePatcher(ImageFiles.Opener, files.Named, wanted.MendPatched);
        var patched = files.Read(image) is { } bytes && files.Read(patch) is { } held
            ? patcher.Apply((files.FullPath(image), bytes), (files.FullPath(patch), held), files.Log)
            : null;
        if (patched is not null && !files.Log.HasErrors)
        {
            files.Write(output, patched.Bytes, image, patch);
        }

        return files.Finish(image, patched);
    }

    /// <summary>Makes a patch that leads from one image to another, and applies it to be sure.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="image">The image as it was.</param>
    /// <param name="changed">The image as it is to be.</param>
    /// <param name="output">The patch; the ending <c>.ips</c> makes an IPS patch, any other a BPS patch. One that is there is replaced.</param>
    /// <example><code>CartPatchMake("game.gb", "game-new.gb", "spring.bps");</code></example>
    /// <returns>The patch's bytes.</returns>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log, and nothing was written.</exception>
    [CakeMethodAlias]
    public static byte[] CartPatchMake(this ICakeContext context, FilePath image, FilePath changed, FilePath output)
    {
        var files = new ImageFiles(context, null);
        var format = PatchFormats.ByEnding(output.FullPath) is { CanMake: true } named ? named : PatchFormats.Bps;
        var made = files.Read(image) is { } from && files.Read(changed) is { } to ? Patch.Make(format, from, to, files.Log, new SourcePlace(output.FullPath)) : null;
        if (made is not null && !files.Log.HasErrors)
        {
            files.Write(output, made, image, changed);
        }

        return files.Finish(output, made);
    }
}
