using System.Collections.Immutable;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.TestImages;

namespace Cartwright;

/// <summary>The files of a test image: each chip's, the whole cartridge's as a reader must show it, and the record.</summary>
public static class TestImageFiles
{
    /// <summary>Names the files of a test image.</summary>
    /// <param name="set">The images.</param>
    /// <param name="name">Stem of every file.</param>
    public static ImmutableArray<OutputFile> Plan(TestImageSet set, string name) => WithRecord(
        set,
        name,
        [
            .. set.Chips.Select(chip => new OutputFile($"{name}.{chip.Site.Name}.bin", OutputKind.Chip, ImageFormat.Raw, [chip.Bytes]) { Chip = chip }),
            // A single chip is read as its own file again.
            .. SingleChip.Is(set.Board) ? [] : set.Regions.Select(region => new OutputFile($"{name}.cartridge.{region.Name}.bin", OutputKind.Rom, ImageFormat.Raw, [region.Bytes])),
        ]);

    /// <summary>Names the files of an existing image that was filled and is not laid onto chips.</summary>
    /// <param name="set">The image.</param>
    /// <param name="name">Stem of every file.</param>
    /// <param name="ending">Ending of the image's file, with its dot.</param>
    public static ImmutableArray<OutputFile> PlanWhole(TestImageSet set, string name, string ending) =>
        WithRecord(set, name, [new OutputFile(name + ending, OutputKind.Rom, ImageFormat.Raw, [set.Regions[0].Bytes])]);

    private static ImmutableArray<OutputFile> WithRecord(TestImageSet set, string name, ImmutableArray<OutputFile> files)
    {
        var record = TestImageRecord.Write(set, [.. files.Select(static file => new WrittenFile(file, file.Digest()))]);
        return [.. files, new OutputFile($"{name}.record.json", OutputKind.Record, ImageFormat.Raw, [record])];
    }
}
