using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>images</c> says.</summary>
/// <param name="Folder">Output folder, relative to the manifest.</param>
/// <param name="FolderPlace">Where the folder stands.</param>
/// <param name="Formats">Formats of the chip files, each once, in the manifest's order.</param>
/// <param name="WordOrder">Word order of files for 16-bit chips.</param>
public sealed record ImageSettings(string Folder, SourcePlace FolderPlace, ImmutableArray<ImageFormat> Formats, WordOrder WordOrder)
{
    /// <summary>Bytes of the exchange file where it ends before the ROM does; null where it has all of it.</summary>
    public long? RomLength { get; init; }

    /// <summary>Where that length stands.</summary>
    public SourcePlace RomLengthPlace { get; init; }
}
