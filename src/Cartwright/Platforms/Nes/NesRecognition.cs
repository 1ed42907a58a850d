using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>Knows NES files by the container's mark, and bare PRG by its vectors.</summary>
internal static class NesRecognition
{
    private const int SmallestPrg = 16 << 10;
    private const int LargestPrg = 1 << 20;
    private const int Bank = 8 << 10;

    // What programs commonly begin with: SEI, CLD, JMP, JSR, LDA, LDX, PHP, LDA and LDX from memory, STA.
    private static ReadOnlySpan<byte> FirstOpcodes => [0x78, 0xD8, 0x4C, 0x20, 0xA9, 0xA2, 0x08, 0xAD, 0xAE, 0x85];

    // A copier's prefix is believed only where the mark follows it.
    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        Contained(file, 0) ?? Contained(file, CopierPrefix.Length) ?? BarePrg(file);

    /// <summary>Where container, PRG and CHR lie: as far as the file goes, whatever the container says. Without a container all is PRG.</summary>
    public static ImmutableArray<ImagePart> Parts(ReadOnlySpan<byte> file)
    {
        var (start, map) = Map(file);
        return map is null
            ? [new ImagePart("prg", 0, 0, file.Length)]
            : [new ImagePart(null, 0, start, NesFields.Length), Part("prg", start + map.PrgStart, map.Prg, file.Length), Part("chr", start + map.ChrStart, map.Chr, file.Length)];
    }

    /// <summary>Where the container begins, and what it says; null where there is none.</summary>
    public static (int Start, NesImageMap? Map) Map(ReadOnlySpan<byte> file) =>
        NesImageMap.Read(file) is { } map ? (0, map)
        : file.Length > CopierPrefix.Length ? (CopierPrefix.Length, NesImageMap.Read(file[CopierPrefix.Length..]))
        : (0, null);

    private static ImagePart Part(string region, long start, long length, int end)
    {
        var first = Math.Min(start, end);
        return new ImagePart(region, 0, (int)first, (int)Math.Min(length, end - first));
    }

    private static RecognitionClaim? Contained(ReadOnlySpan<byte> file, int prefix)
    {
        var body = file[Math.Min(prefix, file.Length)..];
        return NesImageMap.Read(body) is not { } map
            ? null
            : new RecognitionClaim(Certainty.Exact, Told(map, prefix))
            {
                Variant = map.Generation == NesGeneration.Nes2 ? "nes2" : "ines",
                PrefixLength = Math.Min(prefix + (int)map.PrgStart, file.Length),
            };
    }

    private static string Told(NesImageMap map, int prefix)
    {
        var sizes = $"{ByteSize.Words(map.Prg)} of PRG and {(map.Chr == 0 ? "no CHR ROM" : $"{ByteSize.Words(map.Chr)} of CHR")}";
        var trainer = map.Trainer > 0 ? $" behind a trainer of {ByteSize.Words(map.Trainer)}" : "";
        var fits = map.Missing > NesFields.PrgUnit * 0xFFF ? "it claims more than any memory holds"
            : map.Missing > 0 ? $"it claims {sizes}{trainer}, and {ByteSize.Words(map.Missing)} of them are missing"
            : map.Trailing > 0 ? $"{sizes}{trainer}, and {ByteSize.Words(map.Trailing)} behind them"
            : $"{sizes}{trainer}";
        return string.Create(CultureInfo.InvariantCulture, $"the container's mark at 0x{prefix:X4}: {fits}{Trust(map.Generation)}");
    }

    private static string Trust(NesGeneration generation) => generation switch
    {
        NesGeneration.Nes2 => " (NES 2.0)",
        NesGeneration.INes => " (iNES)",
        _ => " (bytes 7 to 15 of the header cannot be trusted)",
    };

    private static RecognitionClaim? BarePrg(ReadOnlySpan<byte> file)
    {
        if (file.Length is < SmallestPrg or > LargestPrg || file.Length % Bank != 0)
        {
            return null;
        }

        var nmi = NesBanks.Nmi(file);
        var reset = NesBanks.Reset(file);
        if (reset is < 0x8000 or > 0xFFF9 || nmi is not (>= 0x8000 or (>= 0x0200 and <= 0x07FF)))
        {
            return null;
        }

        var start = file.Length - (0x10000 - reset);
        while (start < 0)
        {
            start += SmallestPrg;
        }

        return FirstOpcodes.Contains(file[start])
            ? new RecognitionClaim(Certainty.Candidate, string.Create(CultureInfo.InvariantCulture,
                $"vectors at the end as PRG without a container has them: NMI ${nmi:X4}, RESET ${reset:X4}, and the opcode {file[start]:X2} there, which programs begin with; the mapper does not show"))
            : null;
    }
}
