using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.MasterSystem;

namespace Cartwright.Tests.Platforms.MasterSystem;

/// <summary>Programs for the tests: noise that starts and handles interrupts as it should, with room for tag and header.</summary>
internal static class SegaPrograms
{
    public const int Size = 0x8000;

    public static byte[] Whole(int size = Size)
    {
        var bytes = TestBytes.L(size);
        Convert.FromHexString("F3ED56C30001").CopyTo(bytes, 0);
        Convert.FromHexString("FBC9").CopyTo(bytes, 0x38);
        Convert.FromHexString("ED45").CopyTo(bytes, 0x66);
        bytes.AsSpan(SegaHeader.Anchor.In(size), SegaHeader.Length).Clear();
        return bytes;
    }

    public static RomBench Bench(int size = Size, Platform? platform = null, int at = 0, string digits = "")
    {
        var bytes = Whole(size);
        Convert.FromHexString(digits).CopyTo(bytes, at);
        return new RomBench(platform ?? SegaPlatform.MasterSystem()).Program("rom", 0, bytes);
    }

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    public static HeaderImage Read(byte[] rom) =>
        HeaderReader.Read(SegaPlatform.MasterSystem().Layouts[0].Headers[0], rom, new HeaderContext(null, null, _ => rom.Length))!;
}
