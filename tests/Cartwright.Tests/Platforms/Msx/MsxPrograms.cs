using Cartwright.Platforms;
using Cartwright.Platforms.Msx;

namespace Cartwright.Tests.Platforms.Msx;

/// <summary>Programs for the tests: noise behind a blank header, and INIT behind it.</summary>
internal static class MsxPrograms
{
    public const int Size = 0x4000;

    public static byte[] Whole(int size = Size, int header = 0, int init = 0x4010)
    {
        var bytes = TestBytes.L(size);
        bytes.AsSpan(header, MsxHeader.Length).Clear();
        bytes[header + MsxHeader.Init] = (byte)init;
        bytes[header + MsxHeader.Init + 1] = (byte)(init >> 8);
        // Out to the slot register, as a program of several pages does.
        Convert.FromHexString("D3A8").CopyTo(bytes, header + 0x20);
        return bytes;
    }

    public static RomBench Bench(string mapping = "page-1", int size = Size, int at = 0, string digits = "", int init = 0x4010)
    {
        var header = MsxMapping.Named(mapping).Header;
        var bytes = Whole(size, header, init);
        Convert.FromHexString(digits).CopyTo(bytes, header + at);
        return new RomBench(new MsxPlatform()).Header("mapping", mapping).Program("rom", 0, bytes).Size("rom", size);
    }

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();
}
