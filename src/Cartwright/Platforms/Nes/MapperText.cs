using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>A mapper number: the name of a row of the table, or the plain number.</summary>
internal sealed class MapperText : ValueText
{
    /// <summary>The only one.</summary>
    public static MapperText Instance { get; } = new();

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names { get; } =
        [.. NesMappers.All.DistinctBy(static row => row.Name).Select(static row => new NamedValue((ulong)row.Number, row.Name, Meaning(row)))];

    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.Number;

    /// <inheritdoc/>
    public override string Expected => $"one of {string.Join(", ", Names.Select(static row => row.Name))}, or the mapper's number such as 30";

    /// <inheritdoc/>
    public override string Format(ulong value) =>
        Names.FirstOrDefault(row => row.Value == value)?.Name ?? value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        var named = NesMappers.Named(text);
        if (named is null && Number.TryParse(text, out long number))
        {
            value = (ulong)number;
            return true;
        }

        value = (ulong)(named?.Number ?? 0);
        return named is not null;
    }

    private static string Meaning(NesMapper row)
    {
        var chr = row.Chr switch
        {
            ChrKind.None => "no CHR chip",
            ChrKind.Ram => "CHR RAM",
            ChrKind.RomOrRam => "CHR ROM or RAM",
            ChrKind.RomAndRam => "CHR ROM and RAM",
            _ => "CHR ROM",
        };
        var most = row.ChrMax == 0 ? "" : $" to {ByteSize.Words(row.ChrMax)} (KiB: {row.ChrBanking})";
        return string.Create(CultureInfo.InvariantCulture,
            $"{row.Number}: {row.Board}; PRG to {ByteSize.Words(row.PrgMax)} (KiB: {row.PrgBanking}); {chr}{most}; RESET vector {row.Reset.Words}");
    }
}
