using Cartwright.Platforms;
using Cartwright.Platforms.Atari2600;

namespace Cartwright.Tests.Platforms.Atari2600;

/// <summary>Programs for the tests: every bank starts at its $FF00, keeps the hot spots free and leaves the bytes under RAM blank.</summary>
internal static class Atari2600Programs
{
    public const int Start = 0xFF00;

    public static byte[] Whole(string name, int size)
    {
        var scheme = BankSchemes.Named(name);
        var bytes = TestBytes.All(0xEA, size);
        for (var bank = 0; bank < size; bank += scheme.Bank)
        {
            var part = bytes.AsSpan(bank, scheme.Bank);
            // Banks that begin alike would look like banks with RAM.
            part[0] = (byte)((bank / scheme.Bank) + 1);
            part[..scheme.HiddenInBanks].Fill(0xFF);
            Code(scheme).CopyTo(part[^0x100..]);
            part[^0xC0..^6].Fill(0xFF);
            for (var vector = 6; vector > 0; vector -= 2)
            {
                part[^vector] = Start & 0xFF;
                part[^(vector - 1)] = Start >> 8;
            }
        }

        bytes.AsSpan(size - scheme.FixedTop, scheme.HiddenInFixed).Fill(0xFF);
        return bytes;
    }

    public static RomBench Bench(string scheme, int size, int at = 0, string digits = "")
    {
        var bytes = Whole(scheme, size);
        Convert.FromHexString(digits).CopyTo(bytes, at);
        return Bench(scheme, bytes);
    }

    public static RomBench Bench(string scheme, byte[] rom)
    {
        var bench = new RomBench(new Atari2600Platform()).Header("scheme", scheme).Program("rom", 0, rom).Size("rom", rom.Length);
        return BankSchemes.Named(scheme).Data > 0 ? bench.Program("data", 0, TestBytes.L(BankSchemes.Named(scheme).Data)) : bench;
    }

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    // SEI, CLD, a write to $02; where every write below $40 switches, to its second place.
    private static byte[] Code(BankScheme scheme) =>
        Convert.FromHexString(scheme.Name is "3f" or "3e" ? "78D885424C00FF" : "78D885024C00FF");
}
