using Cartwright.Headers;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>The numbers that were given to publishers, by the three letters on the label (ROM header, ws.nesdev.org). Homebrew may use any.</summary>
internal static class SwanDevelopers
{
    private const string Codes =
        "01 BAN 02 TAT 03 TMY 04 KEX 05 DTE 06 AAE 07 MDE 08 NHB 0A CCJ 0B SUM 0C SUN 0D PAW 0E BPR 10 JLC 11 MGA 12 KNM 16 KBS 17 BTM 18 KGT 19 SRV 1A CFT 1B MGH " +
        "1D BEC 1E NAP 1F BVL 20 ATN 21 KDX 22 HAL 23 YKE 24 OMN 25 LAY 26 KDK 27 SHL 28 SQR 2A SCC 2B TMC 2D NMC 2E SES 2F HTR 31 VGD 32 MGT 33 WIZ 35 TAN 36 CPC";

    /// <summary>The codes.</summary>
    public static NamedValues Names { get; } = new([new NamedValue(0x00, "none"), .. Rows()]);

    private static IEnumerable<NamedValue> Rows() =>
        Codes.Split(' ').Chunk(2).Select(static pair => new NamedValue(Convert.ToByte(pair[0], 16), pair[1]));
}
