using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Images;

/// <summary>A file a build puts out: its name, and how its bytes come about.</summary>
/// <param name="Name">File name without a folder, safe on FAT.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Format">Its format.</param>
/// <param name="Parts">The bytes in order: those of a raw file, or those a text format encodes.</param>
public sealed record OutputFile(string Name, OutputKind Kind, ImageFormat Format, ImmutableArray<ReadOnlyMemory<byte>> Parts)
{
    /// <summary>The chip whose image this is; null for other files.</summary>
    public ChipImage? Chip { get; init; }

    /// <summary>Writes the file's bytes.</summary>
    /// <param name="stream">Where they go.</param>
    public void WriteTo(Stream stream)
    {
        foreach (var part in Parts)
        {
            switch (Format)
            {
                case ImageFormat.IntelHex:
                    IntelHexWriter.Write(stream, part.Span);
                    break;
                case ImageFormat.SRecord:
                    SRecordWriter.Write(stream, part.Span, Name);
                    break;
                default:
                    stream.Write(part.Span);
                    break;
            }
        }
    }

    /// <summary>Computes the file's digest without writing it anywhere.</summary>
    public FileDigest Digest()
    {
        if (Format == ImageFormat.Raw && Parts.Length == 1)
        {
            return FileDigest.Of(Parts[0].Span);
        }

        using var digest = new DigestStream(Stream.Null);
        WriteTo(digest);
        return digest.Digest;
    }
}
