using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.Commodore;

/// <summary>Knows a C64 cartridge by its bytes.</summary>
internal static class C64Recognition
{
    private const int LoadAddressLength = 2;
    private const int Vectors = 6;
    private const int Top = 0xE000;
    private const int Last = 0xFFF9;

    // What programs commonly begin with: SEI, CLD, LDX, LDA, JMP.
    private static ReadOnlySpan<byte> FirstOpcodes => [0x78, 0xD8, 0xA2, 0xA9, 0x4C];

    /// <summary>Whether a load address of $8000 stands before the header.</summary>
    public static bool HasLoadAddress(ReadOnlySpan<byte> file) => file.StartsWith((ReadOnlySpan<byte>)[0x00, 0x80]) && HasMark(file[LoadAddressLength..]);

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        CrtFile.Read(file, C64Platform.Signature) is { } container
            ? new RecognitionClaim(Certainty.Exact, container.Words) { PrefixLength = Math.Min(container.PrefixLength, file.Length), Variant = Variant(container) }
            : HasLoadAddress(file) ? Raw(file[LoadAddressLength..]) with { PrefixLength = LoadAddressLength }
            : HasMark(file) ? Raw(file)
            : Ultimax(file);

    private static bool HasMark(ReadOnlySpan<byte> image) => image.Length > StartHeader.Length && image[StartHeader.MarkAt..].StartsWith(StartHeader.C64Mark);

    private static RecognitionClaim Raw(ReadOnlySpan<byte> image) =>
        new(Certainty.Exact, "CBM80, the first three letters with bit 7 set, at 4")
        {
            Variant = image.Length <= CommodoreMapping.WindowSize ? "8k" : image.Length <= 2 * CommodoreMapping.WindowSize ? "16k" : null,
        };

    private static string? Variant(CrtFile container)
    {
        if (container.Hardware != 0)
        {
            return C64Mappings.All.FirstOrDefault(mapping => mapping.Hardware == container.Hardware)?.Name;
        }

        return container.Lines == CrtLines.OneWindow ? "8k"
            : container.Lines == CrtLines.TwoWindows ? "16k"
            : container.Lines != CrtLines.Ultimax ? null
            : container.Runs.Any(static run => run.Packet.Address < Top) ? "ultimax-16k" : "ultimax";
    }

    private static RecognitionClaim? Ultimax(ReadOnlySpan<byte> file)
    {
        if (file.Length is not (CommodoreMapping.WindowSize / 2 or CommodoreMapping.WindowSize or 2 * CommodoreMapping.WindowSize))
        {
            return null;
        }

        for (var at = file.Length - Vectors; at < file.Length; at += 2)
        {
            if (BinaryPrimitives.ReadUInt16LittleEndian(file[at..]) is < Top or > Last)
            {
                return null;
            }
        }

        var reset = BinaryPrimitives.ReadUInt16LittleEndian(file[^4..]);
        var start = file.Length - (0x10000 - reset);
        return start >= 0 && FirstOpcodes.Contains(file[start])
            ? new RecognitionClaim(Certainty.Candidate, string.Create(CultureInfo.InvariantCulture, $"all three vectors at the end lead to $E000-$FFF9, and at {StartChecks.Hex(reset)} programs could begin"))
            {
                Variant = file.Length > CommodoreMapping.WindowSize ? "ultimax-16k" : "ultimax",
            }
            : null;
    }
}
