using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Nes;
using Xunit;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>Programs and carts that the tests of this platform start from.</summary>
internal static class NesCart
{
    public const int K = 1 << 10;

    /// <summary>PRG of a size, not blank, with good vectors at the end of every bank of a length and none elsewhere.</summary>
    public static byte[] Prg(int size, int bank = 0, int reset = 0xFF00)
    {
        var bytes = TestBytes.L(size);
        for (var end = 4 * K; end <= size; end += 4 * K)
            Vectors(bytes, end, 0, 0, 0);

        for (var end = bank == 0 ? size : bank; end <= size; end += bank == 0 ? size : bank)
            Vectors(bytes, end, 0xFF80, reset, 0xFF90);

        return bytes;
    }

    public static void Vectors(byte[] bytes, int end, int nmi, int reset, int irq)
    {
        foreach (var (at, value) in new[] { (end - 6, nmi), (end - 4, reset), (end - 2, irq) })
        {
            bytes[at] = (byte)value;
            bytes[at + 1] = (byte)(value >> 8);
        }
    }

    /// <summary>A bench with a mapper and mirroring stated, and PRG that starts in whatever bank.</summary>
    public static RomBench Bench(string mapper, int prg = 32 * K, int chr = 8 * K, int bank = 16 * K)
    {
        var bench = new RomBench(new NesPlatform()).Header("mapper", mapper).Header("mirroring", "horizontal-mirroring").Program("prg", 0, Prg(prg, Math.Min(bank, prg)));
        return chr == 0 ? bench : bench.Program("chr", 0, TestBytes.L(chr));
    }

    /// <summary>A cart about which there is nothing to say.</summary>
    public static RomBench Clean() => Bench("nrom");

    public static byte[] Exchange(CartView cart) =>
        [.. cart.Headers.SelectMany(header => header.Container), .. cart.Rom.Regions.SelectMany(region => region.Bytes.ToArray())];

    public static string Header(CartView cart) => string.Join(' ', Assert.Single(cart.Headers).Container.Select(value => value.ToString("X2")));

    public static byte[] Bytes(string hex) => Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal));

    /// <summary>The findings of one rule.</summary>
    public static IEnumerable<Finding> Of(this RomBench bench, FindingRule rule)
    {
        bench.TryAssemble();
        return bench.Log.ToSorted().Where(finding => finding.Rule == rule);
    }

    /// <summary>Reads a container header from bytes.</summary>
    public static HeaderImage Read(HeaderTable table, ReadOnlySpan<byte> bytes) =>
        HeaderReader.Read(table, bytes, new HeaderContext(null, null, _ => 0))!;
}
