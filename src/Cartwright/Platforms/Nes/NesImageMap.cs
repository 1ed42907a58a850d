using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>What an exchange file holds, by its container header.</summary>
/// <param name="Generation">The header's generation.</param>
/// <param name="Trainer">Bytes of a trainer: 0 or 512.</param>
/// <param name="Prg">Bytes of PRG the header claims.</param>
/// <param name="Chr">Bytes of CHR ROM the header claims.</param>
/// <param name="Further">Bytes behind CHR that belong to further ROMs.</param>
/// <param name="Trailing">Bytes behind everything the header claims; below 0 when the file ends before.</param>
public sealed record NesImageMap(NesGeneration Generation, int Trainer, long Prg, long Chr, long Further, long Trailing)
{
    private const int HintRom = 8 << 10;
    private const int HintKey = 32;
    private const int LongestTitle = 128;

    /// <summary>First byte of PRG in the file.</summary>
    public long PrgStart => NesFields.Length + Trainer;

    /// <summary>First byte of CHR in the file.</summary>
    public long ChrStart => PrgStart + Prg;

    /// <summary>Bytes the header claims and the file does not hold.</summary>
    public long Missing => Math.Max(0, -Trailing);

    /// <summary>The table that reads the header.</summary>
    public HeaderTable Table => Generation switch
    {
        NesGeneration.Nes2 => NesHeader.Table,
        NesGeneration.INes => OlderNesHeader.Table,
        _ => OlderNesHeader.Untrusted,
    };

    /// <summary>Reads the header of a file; null when it does not begin with one.</summary>
    /// <param name="file">The whole file.</param>
    public static NesImageMap? Read(ReadOnlySpan<byte> file) => Read(file, file.Length);

    /// <summary>Reads the header of a file; null when it is none.</summary>
    /// <param name="start">The file's first 16 bytes, or more of it.</param>
    /// <param name="length">The file's length in bytes.</param>
    public static NesImageMap? Read(ReadOnlySpan<byte> start, long length)
    {
        if (start.Length < NesFields.Length || !start.StartsWith(NesFields.Magic))
        {
            return null;
        }

        var header = start[..NesFields.Length];
        var generation = Judge(header, length);
        var (trainer, prg, chr) = Sizes(header, generation == NesGeneration.Nes2);
        var rest = length - NesFields.Length - trainer - prg - chr;
        var further = Math.Min(Math.Max(rest, 0), FurtherRoms(header, generation, rest));
        return new NesImageMap(generation, trainer, prg, chr, further, rest - further);
    }

    /// <summary>Tells what is wrong with the file.</summary>
    /// <param name="header">The header, 16 bytes, and what follows.</param>
    /// <param name="place">Where it is.</param>
    /// <param name="log">Receives the findings.</param>
    public void Check(ReadOnlySpan<byte> header, SourcePlace place, FindingLog log)
    {
        if (Generation is NesGeneration.Archaic or NesGeneration.Damaged)
        {
            log.Add(NesFindings.Untrusted, place, $"The header's bytes 7 to 15 are {Convert.ToHexString(header[7..16])}, which may be somebody's name: loaders then trust only the sizes of PRG and CHR, the flags and the low four bits of the mapper.");
        }

        if (Generation == NesGeneration.INes && header[8..12].ContainsAnyExcept((byte)0))
        {
            log.Add(NesFindings.MarkMissing, place, $"The header's bytes 8 to 11 are {Convert.ToHexString(header[8..12])}, and it is not marked as NES 2.0.");
        }

        if (Trailing < 0)
        {
            log.Add(NesFindings.Truncated, place, $"The file is {ByteSize.Describe(-Trailing)} shorter than its header says.");
        }
        else if (Trailing > 0)
        {
            var title = Trailing <= LongestTitle;
            var end = ChrStart + Chr + Further;
            log.Add(title ? NesFindings.TrailingTitle : NesFindings.Trailing, place with { Offset = (place.Offset ?? 0) + end },
                string.Create(CultureInfo.InvariantCulture, $"From 0x{end:X6} on there are {ByteSize.Describe(Trailing)} that no size in the header covers."));
        }
    }

    // The order of the tests is that of the source: NESdev Wiki, INES, "Variant comparison".
    private static NesGeneration Judge(ReadOnlySpan<byte> header, long length)
    {
        var (trainer, prg, chr) = Sizes(header, extended: true);
        return (header[7] & 0x0C) switch
        {
            0x08 when NesFields.Length + trainer + prg + chr <= length => NesGeneration.Nes2,
            0x04 => NesGeneration.Archaic,
            0x00 when !header[12..].ContainsAnyExcept((byte)0) && Letters(header[8..12]) < 2 => NesGeneration.INes,
            _ => NesGeneration.Damaged,
        };
    }

    private static (int Trainer, long Prg, long Chr) Sizes(ReadOnlySpan<byte> header, bool extended)
    {
        var prg = header[4] | (extended ? (header[9] & 0x0F) << 8 : 0);
        var chr = header[5] | (extended ? (header[9] & 0xF0) << 4 : 0);
        // A size past any memory is past any file as well.
        return ((header[6] & 4) << 7, RomSize.Bytes(prg, NesFields.PrgUnit) ?? long.MaxValue / 4, RomSize.Bytes(chr, NesFields.ChrUnit) ?? long.MaxValue / 4);
    }

    // Nobody states the size of miscellaneous ROMs: where there are some, the rest is theirs.
    private static long FurtherRoms(ReadOnlySpan<byte> header, NesGeneration generation, long rest) => generation switch
    {
        NesGeneration.Nes2 when (header[14] & 3) != 0 => rest,
        NesGeneration.Nes2 or NesGeneration.INes when (header[7] & 3) == 2 => rest == HintRom + HintKey ? HintRom + HintKey : HintRom,
        _ => 0,
    };

    private static int Letters(ReadOnlySpan<byte> bytes)
    {
        var letters = 0;
        foreach (var value in bytes)
        {
            letters += char.IsAsciiLetter((char)value) ? 1 : 0;
        }

        return letters;
    }
}
