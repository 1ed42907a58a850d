using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.Nes;

/// <summary>Knows NES files by the container's mark, and bare PRG by its vectors.</summary>
internal static class NesRecognition
{
    private const int SmallestPrg = 16 << 10;
    private const int LargestPrg = 1 << 20;
    private const int Bank = 8 << 10;

    // What programs commonly begin with: SEI, CLD, JMP, JSR, LDA, LDX, PHP, LDA and LDX from memory, STA.
    private static ReadOnlySpan<byte> FirstOpcodes => [0x78, 0xD8, 0x4C, 0x20, 0xA9, 0xA2, 0x08, 0xAD, 0xAE, 0x85];

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        NesImageMap.Read(file) is { } map
            ? new RecognitionClaim(Certainty.Exact, $"the container's mark; {Manifests.ByteSize.Words(map.Prg)} of PRG and {Manifests.ByteSize.Words(map.Chr)} of CHR claimed")
            {
                Variant = map.Generation == NesGeneration.Nes2 ? "nes2" : "ines",
                PrefixLength = (int)map.PrgStart,
            }
            : BarePrg(file);

    private static RecognitionClaim? BarePrg(ReadOnlySpan<byte> file)
    {
        if (file.Length is < SmallestPrg or > LargestPrg || file.Length % Bank != 0)
        {
            return null;
        }

        var nmi = BinaryPrimitives.ReadUInt16LittleEndian(file[^6..]);
        var reset = BinaryPrimitives.ReadUInt16LittleEndian(file[^4..]);
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
            ? new RecognitionClaim(Certainty.Candidate, string.Create(CultureInfo.InvariantCulture, $"vectors at the end as in PRG without a container: RESET ${reset:X4}, opcode {file[start]:X2} there; the mapper is not known"))
            : null;
    }
}
