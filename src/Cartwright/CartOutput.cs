using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright;

/// <summary>Plans a build's files, and writes all of them or none.</summary>
public static class CartOutput
{
    /// <summary>The files a build puts out, without the record.</summary>
    /// <param name="build">A build with its ROM and chips.</param>
    /// <param name="log">Receives what is wrong.</param>
    internal static ImmutableArray<OutputFile> Plan(CartBuild build, FindingLog log)
    {
        var manifest = build.Manifest!;
        var name = manifest.Cart.Name.Text;
        var ending = build.Slots is { HasMenu: false } ? "bin" : build.Platform!.Extension(build.Cart!);
        var rom = new OutputFile($"{name}.{ending}", OutputKind.Rom, ImageFormat.Raw, Exchange(build, log));
        var chips = build.Chips.SelectMany(chip => manifest.Images.Formats.Select(format =>
            new OutputFile($"{name}.{chip.Site.Name}.{Ending(format)}", OutputKind.Chip, format, [chip.Bytes]) { Chip = chip }));
        ImmutableArray<OutputFile> files = [rom, .. chips];
        CheckNames(build, files, log);
        return files;
    }

    private static ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartBuild build, FindingLog log)
    {
        var parts = build.Slots is { HasMenu: false } ? [.. build.Cart!.Rom.Regions.Select(static region => region.Bytes)] : build.Platform!.Exchange(build.Cart!);
        if (build.Manifest!.Images is not { RomLength: { } length, RomLengthPlace: var place })
        {
            return parts;
        }

        var rule = build.Cart!.Layout.Regions[0];
        var fill = build.Cart.Rom[rule.Name]!.Fill;
        if (parts is not [var only])
        {
            log.Add(OutputFindings.CutTooShort, place, "The exchange file has a container or several regions, and is never cut.");
            return parts;
        }

        if (length <= 0 || length > only.Length)
        {
            log.Add(OutputFindings.CutTooShort, place, $"The ROM has {ByteSize.Describe(only.Length)}, and {ByteSize.Describe(length)} are asked for.");
            return parts;
        }

        var (kept, cut) = rule.Align == RegionAlign.End ? (only[^(int)length..], only[..^(int)length]) : (only[..(int)length], only[(int)length..]);
        if (cut.Span.ContainsAnyExcept(fill))
        {
            log.Add(OutputFindings.CutTooShort, place, $"Of the {ByteSize.Describe(cut.Length)} that would be missing, some are not the fill {Number.Hex(fill, 2)}.");
        }

        return [kept];
    }

    /// <summary>Writes the files and the record of a build that has no errors.</summary>
    /// <param name="build">The build.</param>
    /// <param name="dryRun">True to do everything but touch the disk.</param>
    /// <returns>The files with their digests, the record last, and whatever went wrong; with an error, or where all of them are there already, nothing was written.</returns>
    /// <exception cref="ArgumentException">The build has errors.</exception>
    public static CartOutputResult Write(CartBuild build, bool dryRun = false)
    {
        if (build.HasErrors || build.Cart is null)
        {
            throw new ArgumentException("A build with errors puts out nothing.", nameof(build));
        }

        var log = new FindingLog();
        var files = WithDigests(build.Files);
        var record = new OutputFile(build.Manifest!.Cart.Name.Text + ".record.json", OutputKind.Record, ImageFormat.Raw, [BuildRecord.Write(build, files)]);
        ImmutableArray<WrittenFile> all = [.. files, new WrittenFile(record, FileDigest.Of(record.Parts[0].Span))];
        var wasThere = all.AsEnumerable().Reverse().All(written => written.IsIn(build.OutputFolder));
        var rewrites = wasThere ? [] : LastBuild.Changes(build, files);
        if (!dryRun && !wasThere)
        {
            OutputFiles.Write(build.OutputFolder, [.. all.Select(static written => written.File)], build.OutputPlace, log);
        }

        return new CartOutputResult(all, log.ToSorted()) { WasThere = wasThere, Rewrites = rewrites };
    }

    // Files that share their bytes share their digest: it is the slowest thing a build computes.
    private static ImmutableArray<WrittenFile> WithDigests(ImmutableArray<OutputFile> files)
    {
        var known = new Dictionary<ReadOnlyMemory<byte>, FileDigest>();
        var written = ImmutableArray.CreateBuilder<WrittenFile>(files.Length);
        foreach (var file in files)
        {
            var plain = file is { Format: ImageFormat.Raw, Parts.Length: 1 };
            if (!plain || !known.TryGetValue(file.Parts[0], out var digest))
            {
                digest = file.Digest();
                if (plain)
                {
                    known[file.Parts[0]] = digest;
                }
            }

            written.Add(new WrittenFile(file, digest));
        }

        return written.ToImmutable();
    }

    private static void CheckNames(CartBuild build, ImmutableArray<OutputFile> files, FindingLog log)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { build.Manifest!.Cart.Name.Text + ".record.json" };
        foreach (var file in files.Where(file => !names.Add(file.Name)))
        {
            log.Add(OutputFindings.SameName, build.Manifest.Cart.Name.Place, $"There are two output files {file.Name} (letter case does not count).");
        }

        var games = build.Manifest.Slots?.Games.Select(static game => game.File) ?? [];
        var inputs = build.Manifest.Programs.Select(static entry => entry.File).Concat(games).Prepend(new ManifestValue(Path.GetFileName(build.Manifest.File), new SourcePlace(build.Manifest.File)));
        CheckInputs(build, names, inputs, log);
    }

    private static void CheckInputs(CartBuild build, HashSet<string> names, IEnumerable<ManifestValue> inputs, FindingLog log)
    {
        var home = Path.GetDirectoryName(Path.GetFullPath(build.Manifest!.File))!;
        var target = RealPath.Of(build.OutputFolder);
        foreach (var input in inputs)
        {
            var path = RealPath.Of(Path.Combine(home, input.Text));
            if (names.Any(name => string.Equals(Path.Combine(target, name), path, StringComparison.OrdinalIgnoreCase)))
            {
                log.Add(OutputFindings.WouldReplaceInput, input.Place, $"The build would write over its own input {input}.");
            }
        }
    }

    private static string Ending(ImageFormat format) => format switch
    {
        ImageFormat.IntelHex => "hex",
        ImageFormat.SRecord => "srec",
        _ => "bin",
    };
}
