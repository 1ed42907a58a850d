using System.Globalization;
using System.Text;

namespace Cartwright.Platforms.Vectrex;

/// <summary>Knows a Vectrex ROM by its copyright text.</summary>
internal static class VectrexRecognition
{
    public static RecognitionClaim? At(ReadOnlySpan<byte> file, int header, string variant)
    {
        var rom = file[Math.Min(header, file.Length)..];
        if (!rom.StartsWith(CopyrightCodec.Mark) || file.Length > 2 * VectrexHeader.Window)
        {
            return null;
        }

        var isWhole = CopyrightCodec.IsUsual(rom) && rom.Length > VectrexHeader.Titles && TitleTexts.Read(rom[VectrexHeader.Titles..], []) is not null;
        return new RecognitionClaim(isWhole ? Certainty.Exact : Certainty.Structural, string.Create(CultureInfo.InvariantCulture,
            $"`{Encoding.ASCII.GetString(CopyrightCodec.Mark)}` at 0x{header:X4}{(isWhole ? ", a year, and texts that end" : "")}"))
        {
            Variant = file.Length == 2 * VectrexHeader.Window || file.Length <= VectrexHeader.Window ? variant : null,
        };
    }
}
