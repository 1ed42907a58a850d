using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Plans;
using Cartwright.Platforms;

namespace Cartwright.Production;

/// <summary>Makes the files of a unit: whole chip files, or of each chip the sectors that differ from the common ones. Chips that no field reaches are common to all.</summary>
internal sealed class UnitFiles
{
    private readonly CartBuild _common;
    private readonly bool _onlySectors;
    private readonly ChipImageBuilder? _chips;

    // Of each chip whose file depends on the unit: the stretches that may differ.
    private readonly Dictionary<string, ImmutableArray<Range>> _stretches = new(StringComparer.Ordinal);

    public UnitFiles(CartBuild common, UnitCart cart, bool onlySectors)
    {
        _common = common;
        _onlySectors = onlySectors;
        if (common.Board is not { } board)
        {
            return;
        }

        // No byte is equal to both.
        ImmutableArray<ImmutableArray<ChipImage>> probes = [Builder(board).Build(cart.Probe(0x00)), Builder(board).Build(cart.Probe(0xFF))];
        foreach (var chip in common.Chips)
        {
            ImmutableArray<Range> stretches = [.. Sectors(chip).Where(sector => probes.Any(probe => !Of(probe, chip).Bytes.Span[sector].SequenceEqual(chip.Bytes.Span[sector])))];
            if (!stretches.IsEmpty)
            {
                _stretches[chip.Site.Name] = stretches;
            }
        }

        _chips = Builder(board with { Sites = [.. board.Sites.Where(site => _stretches.ContainsKey(site.Name))] });
    }

    /// <summary>The files of a unit.</summary>
    public IEnumerable<(OutputFile File, ChipImage? Chip, long Offset)> Of(string stem, CartView cart)
    {
        var platform = _common.Platform!;
        if (!_onlySectors || _chips is null)
        {
            yield return (new OutputFile($"{stem}.{platform.Extension(cart)}", OutputKind.Rom, ImageFormat.Raw, platform.Exchange(cart)), null, 0);
        }

        foreach (var chip in _chips?.Build(cart.Rom) ?? [])
        {
            foreach (var file in _onlySectors ? Parts(stem, chip) : [(new OutputFile($"{stem}.{chip.Site.Name}.bin", OutputKind.Chip, ImageFormat.Raw, [chip.Bytes]), chip, 0)])
            {
                yield return file;
            }
        }
    }

    private IEnumerable<(OutputFile File, ChipImage? Chip, long Offset)> Parts(string stem, ChipImage chip)
    {
        foreach (var sector in _stretches[chip.Site.Name])
        {
            var start = sector.Start.Value;
            yield return (new OutputFile(string.Create(CultureInfo.InvariantCulture, $"{stem}.{chip.Site.Name}.{start:X6}.bin"), OutputKind.Chip, ImageFormat.Raw, [chip.Bytes[sector]]), chip, start);
        }
    }

    private ChipImageBuilder Builder(Board board) => new(board, _common.Manifest!.Board, _common.Manifest.Images, new FindingLog());

    private static ChipImage Of(ImmutableArray<ChipImage> chips, ChipImage chip) => chips.First(other => other.Site.Name == chip.Site.Name);

    // What the chip erases at once; the whole chip where that is not known, or depends on an end that the name does not tell.
    private static IEnumerable<Range> Sectors(ChipImage chip)
    {
        ImmutableArray<SectorGroup> map = chip.Part is { } part ? WriteTarget.Of(part, PartVariant.MapOf(part, PartVariant.EndOf(part, chip.PartName ?? part.Name)), chip.Site.Width).Map : [];
        return SectorGroup.TotalOf(map) == chip.Capacity ? SectorGroup.SectorsOf(map).Select(static sector => sector.Start..(sector.Start + sector.Length)) : [0..chip.Capacity];
    }
}
