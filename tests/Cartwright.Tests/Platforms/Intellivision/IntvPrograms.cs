using Cartwright.Platforms;
using Cartwright.Platforms.Intellivision;

namespace Cartwright.Tests.Platforms.Intellivision;

/// <summary>Programs for the tests: noise of 10 bits a word behind a header with the title TEST of 2014.</summary>
internal static class IntvPrograms
{
    // The usual words, seen in images; 0072 is 2014.
    public const string Block = "000D0050" + "000D0050" + "001A0050" + "000D0050" + "000F0050" + "00140050" + "03C0" + "0000" + "0000" + "00010001000100010001";

    public const string Title = "0072" + "0054004500530054" + "0000";

    public static byte[] Whole(int length = 0x2000, string header = Block + Title)
    {
        var bytes = Noise(length);
        Convert.FromHexString(header).CopyTo(bytes, 0);
        return bytes;
    }

    public static byte[] Noise(int length)
    {
        var bytes = TestBytes.L(length);
        for (var i = 0; i < length; i += 2)
            bytes[i] &= 0x03;
        return bytes;
    }

    public static RomBench Bench(int at = 0, string digits = "")
    {
        var bytes = Whole();
        Convert.FromHexString(digits).CopyTo(bytes, at);
        return new RomBench(new IntvPlatform()) { Title = null }.Program("rom", 0, bytes);
    }

    /// <summary>A program behind a header that the manifest gives.</summary>
    public static RomBench Behind(int offset, string? title) =>
        new RomBench(new IntvPlatform()) { Title = title }.Program("rom", offset, Noise(0x800)).Header("year", "2014").Header("start", $"${0x5000 + (offset / 2):X4}");

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    public static byte[] File(this CartView cart) => [.. new IntvPlatform().Exchange(cart).SelectMany(part => part.ToArray())];
}
