using Cartwright.Platforms.Atari8Bit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

/// <summary>Programs for the tests of the 5200: no title, no year, and a start near the end.</summary>
internal static class ConsolePrograms
{
    public const int Start = 0xBE00;

    public static byte[] Whole(int size = 0x8000, int start = Start)
    {
        var bytes = TestBytes.All(0xEA, size);
        bytes.AsSpan(size - ConsoleTrailer.Length).Fill(0xFF);
        bytes[^2] = (byte)start;
        bytes[^1] = (byte)(start >> 8);
        return bytes;
    }

    public static RomBench Bench(string scheme, byte[] bytes, string? title = null) =>
        new RomBench(new Atari5200Platform()) { Title = title }.Header("scheme", scheme).Program("rom", 0, bytes).Size("rom", bytes.Length);

    public static RomBench Bench(int size = 0x8000, int at = 0, string digits = "", string? title = null, int start = Start)
    {
        var bytes = Whole(size, start);
        Convert.FromHexString(digits).CopyTo(bytes, at < 0 ? size + at : at);
        return Bench("plain", bytes, title);
    }
}
