using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Atari8Bit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

/// <summary>Programs for the tests: a trailer at the end of every bank, or of the whole.</summary>
internal static class ComputerPrograms
{
    public const int Run = 0xBF00;
    private const int RightRun = 0x9F00;

    public static byte[] Whole(string scheme = "standard", int size = 0x2000)
    {
        var bytes = TestBytes.All(0xEA, size);
        var run = scheme == "right-slot" ? RightRun : Run;
        var step = scheme is "megacart" or "williams" ? ComputerScheme.Named(scheme).Bank : size;
        for (var end = step; end <= size; end += step)
            bytes.PutTrailer(end, run, 0x04, run + 0x10);
        return bytes;
    }

    public static byte[] PutTrailer(this byte[] bytes, int end, int run, byte options, int init, byte present = 0)
    {
        byte[] trailer = [(byte)run, (byte)(run >> 8), present, options, (byte)init, (byte)(init >> 8)];
        trailer.CopyTo(bytes, end - trailer.Length);
        return bytes;
    }

    public static RomBench Bench(string scheme = "standard", int size = 0x2000, int at = 0, string digits = "")
    {
        var bytes = Whole(scheme, size);
        Convert.FromHexString(digits).CopyTo(bytes, at < 0 ? size + at : at);
        return Bench(scheme, bytes);
    }

    public static RomBench Bench(string scheme, byte[] bytes) =>
        new RomBench(new Atari8BitPlatform()).Header("scheme", scheme).Program("rom", 0, bytes).Size("rom", bytes.Length);

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    public static byte[] Container(this CartView cart) => [.. cart.Headers.Single(header => header.Table.Region is null).Container];

    /// <summary>Reads a header of a cart again, from bytes.</summary>
    public static HeaderImage Read(HeaderImage header, byte[] rom, byte[] container) =>
        HeaderReader.Read(header.Table, header.Table.Region is null ? container : rom, new HeaderContext(null, null, _ => rom.Length) { RegionBytes = _ => rom })!;
}
