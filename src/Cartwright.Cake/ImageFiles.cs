using Cake.Core;
using Cake.Core.IO;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Cake;

/// <summary>Reads and writes the images an alias is given.</summary>
/// <param name="context">The script's context.</param>
/// <param name="platform">Id of the platform the user names; null for none.</param>
internal sealed class ImageFiles(ICakeContext context, string? platform)
{
    /// <summary>Receives what is wrong.</summary>
    public FindingLog Log { get; } = new();

    public static ImageOpener Opener { get; } = new(PlatformCatalog.BuiltIn);

    /// <summary>The platform the user names; null for none.</summary>
    /// <exception cref="CakeException">There is none of that name.</exception>
    public Platform? Named { get; } = platform is null ? null
        : PlatformCatalog.BuiltIn.Find(platform) ?? throw new CakeException($"There is no platform `{platform}`. {PlatformCatalog.BuiltIn.Question(platform)}");

    public string FullPath(FilePath file) => file.MakeAbsolute(context.Environment).FullPath;

    public byte[]? Read(FilePath file) => ImageFile.Read(FullPath(file), Log);

    public OpenedImage? Open(FilePath file) => Read(file) is { } bytes ? Opener.Open(FullPath(file), bytes, Named, Log) : null;

    /// <summary>Writes a result, unless it would take the place of one of the files it was made from.</summary>
    public void Write(FilePath output, ReadOnlyMemory<byte> bytes, params ReadOnlySpan<FilePath> inputs)
    {
        var target = output.MakeAbsolute(context.Environment);
        var path = target.FullPath;
        foreach (var input in inputs)
        {
            if (string.Equals(FullPath(input), path, StringComparison.OrdinalIgnoreCase))
            {
                Log.Add(OutputFindings.WouldReplaceInput, new SourcePlace(path), $"The result would be written over its own input {path}.");
                return;
            }
        }

        OutputFiles.Write(target.GetDirectory().FullPath, [new OutputFile(target.GetFilename().FullPath, OutputKind.Rom, ImageFormat.Raw, [bytes])], new SourcePlace(path), Log);
    }

    /// <summary>Logs what was found, and gives the result there is when none of it is an error.</summary>
    /// <exception cref="CakeException">Something is an error.</exception>
    public T Finish<T>(FilePath file, T? result)
        where T : class
    {
        FindingReport.Write(context, file.FullPath, Log.ToSorted());
        return result ?? throw new CakeException($"{file}: nothing came of it.");
    }
}
