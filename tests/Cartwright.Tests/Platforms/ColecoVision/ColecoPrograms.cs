using Cartwright.Platforms;
using Cartwright.Platforms.ColecoVision;

namespace Cartwright.Tests.Platforms.ColecoVision;

/// <summary>Programs for the tests: noise behind a header that starts at $8100, with a handler for the video interrupt at $8200.</summary>
internal static class ColecoPrograms
{
    public const int Size = 0x4000;
    public const int BankedSize = 0x20000;

    /// <summary>The header with blank slots; what lies behind the title's place is noise.</summary>
    public static byte[] Whole(string mark = "55AA")
    {
        var bytes = TestBytes.L(Size);
        bytes.AsSpan(0, ColecoHeader.Title + TitleScreenCodec.Longest).Clear();
        Convert.FromHexString(mark).CopyTo(bytes, 0);
        Convert.FromHexString("0081").CopyTo(bytes, ColecoHeader.Start);
        Convert.FromHexString("C30082").CopyTo(bytes, ColecoHeader.NmiSlot);
        return bytes;
    }

    public static RomBench Bench(int at = 0, string digits = "", string mark = "55AA")
    {
        var bytes = Whole(mark);
        Convert.FromHexString(digits).CopyTo(bytes, at);
        return new RomBench(new ColecoPlatform()).Program("rom", 0, bytes);
    }

    /// <summary>A cart of 128 KiB whose last bank is the program and whose others are blank.</summary>
    public static RomBench Banked(int at = 0, string digits = "")
    {
        var bytes = Whole();
        Convert.FromHexString(digits).CopyTo(bytes, at);
        return new RomBench(new ColecoPlatform()).Header("mapper", "banked").Program("rom", -ColecoHeader.BankSize, bytes).Size("rom", BankedSize);
    }

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();
}
