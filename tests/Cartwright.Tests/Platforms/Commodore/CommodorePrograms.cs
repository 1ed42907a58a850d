using Cartwright.Platforms;
using Cartwright.Platforms.Commodore;
using Xunit;

namespace Cartwright.Tests.Platforms.Commodore;

/// <summary>Programs for the tests: noise with a header, or with vectors, and with nothing that is a mark by chance.</summary>
internal static class CommodorePrograms
{
    public const string C64Mark = "C3C2CD3830";
    public const string Vic20Mark = "4130C3C2CD";

    /// <summary>Noise with digits laid over it.</summary>
    public static byte[] Noise(int size, int at = 0, string digits = "")
    {
        var bytes = TestBytes.L(size);
        Convert.FromHexString(digits.Replace(" ", "", StringComparison.Ordinal)).CopyTo(bytes, at);
        return bytes;
    }

    /// <summary>A C64 cart with a blank header but for the cold start, at $8000.</summary>
    public static RomBench C64(string mapping = "8k", int size = 0x2000, string header = "0980 0000 0000000000") =>
        new RomBench(new C64Platform()).Header("mapping", mapping).Program("rom", 0, Noise(size, 0, header));

    /// <summary>A C64 cart that starts by the processor's vectors.</summary>
    public static RomBench Ultimax(string mapping = "ultimax", int size = 0x2000, string vectors = "10E0 20E0 30E0") =>
        new RomBench(new C64Platform()).Header("mapping", mapping).Program("rom", 0, Noise(size, (mapping == "type-32" ? 0x4000 : size) - 6, vectors));

    public static RomBench C128(int size = 0x4000, int at = 0, string digits = "00 1080 00 2080 00 000000")
    {
        var program = Noise(size, 0, "00 1080 00 2080 00 000000");
        Convert.FromHexString(digits.Replace(" ", "", StringComparison.Ordinal)).CopyTo(program, at);
        program.AsSpan(Math.Min(size, 0x7F00)).Fill(0xFF);
        return new RomBench(new C128Platform()).Program("rom", 0, program);
    }

    public static RomBench Vic20(string mapping = "block-5", int size = 0x2000, int header = 0, string digits = "09A0 0000 0000000000") =>
        new RomBench(new Vic20Platform()).Header("mapping", mapping).Program("rom", 0, Noise(size, header, digits));

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    public static byte[] File(this CartView cart, Platform platform) => [.. platform.Exchange(cart).SelectMany(part => part.ToArray())];

    /// <summary>Fails unless exactly these findings come.</summary>
    public static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
