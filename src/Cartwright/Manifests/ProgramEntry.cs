using Cartwright.Findings;
using Cartwright.Ordering;
using Cartwright.Programs;

namespace Cartwright.Manifests;

/// <summary>One item of the manifest's <c>programs</c>: a file and where its bytes go.</summary>
/// <param name="File">The file as written, relative to the manifest.</param>
/// <param name="Place">Where the item stands.</param>
public sealed record ProgramEntry(ManifestValue File, SourcePlace Place)
{
    /// <summary>The file's name for messages and records: as written with forward slashes, and only the last part of an absolute path.</summary>
    public string ShownName => NameOf(File);

    /// <summary>A file's name for messages and records: as written with forward slashes, and only the last part of an absolute path.</summary>
    /// <param name="file">The file as written.</param>
    internal static string NameOf(ManifestValue file) => Path.IsPathRooted(file.Text) ? Path.GetFileName(file.Text) : file.Text.Replace('\\', '/');

    /// <summary>The format, or null to recognise it.</summary>
    public ProgramFormat? Format { get; init; }

    /// <summary>The region, or null for the platform's only one.</summary>
    public ManifestValue? Region { get; init; }

    /// <summary>Offset into the region of the file's first byte or address 0; null when absent.</summary>
    public ManifestValue? Offset { get; init; }

    /// <summary>The console's address of the file's first byte or address 0; null when absent.</summary>
    public ManifestValue? Address { get; init; }

    /// <summary>A place of the platform by name; null when absent.</summary>
    public ManifestValue? As { get; init; }

    /// <summary>Order of a raw file's bytes; null to recognise it.</summary>
    public ImageOrder? Order { get; init; }

    /// <summary>Bytes left out at the start of a raw file.</summary>
    public long Skip { get; init; }

    /// <summary>Bytes taken of a raw file; null for all.</summary>
    public long? Length { get; init; }

    /// <summary>How text formats and ELF are read.</summary>
    public int AddressUnit { get; init; } = 1;

    /// <summary>True when an ELF segment is placed by its virtual address.</summary>
    public bool LoadVirtual { get; init; }
}
