using Cartwright.Platforms;
using Cartwright.Platforms.Vectrex;

namespace Cartwright.Tests.Platforms.Vectrex;

/// <summary>Programs for the tests: noise behind a header.</summary>
internal static class VectrexPrograms
{
    // A worked header: 1998, tune FD0D, F8 50 20 AA, TESTCART.
    public const string Header = "67204743452031393938" + "80" + "FD0D" + "F85020AA" + "5445535443415254" + "80" + "00";

    public const string Halves = "halves-from-upper";

    public static byte[] Whole(string header = Header, int length = 0x1000)
    {
        var bytes = TestBytes.L(length);
        Convert.FromHexString(header).CopyTo(bytes, 0);
        return bytes;
    }

    public static RomBench Bench(string header = Header, string? title = null) => new RomBench(new VectrexPlatform()) { Title = title }.Program("rom", 0, Whole(header));

    /// <summary>A program behind a header that the manifest gives.</summary>
    public static RomBench Behind(int offset, string? title) =>
        new RomBench(new VectrexPlatform()) { Title = title }.Program("rom", offset, TestBytes.L(0x800)).Header("year", "2026");

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();
}
