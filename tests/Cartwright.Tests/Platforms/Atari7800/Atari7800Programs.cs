using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Atari7800;

namespace Cartwright.Tests.Platforms.Atari7800;

/// <summary>Programs for the tests: SEI at the reset vector, and a footer with or without something like a signature.</summary>
internal static class Atari7800Programs
{
    public const int Reset = 0xF000;

    /// <summary>A program of a size; the footer lies where the scheme has it.</summary>
    public static byte[] Whole(string scheme = "linear", int size = 0x4000, int page = 0xF, int reset = Reset, bool signed = true)
    {
        var bytes = TestBytes.All(0xEA, size);
        var footer = Atari7800Scheme.Named(scheme).Footer.In(size);
        if (scheme != "linear")
            bytes.AsSpan(size - Atari7800Footer.Length).Fill(0xEA);
        // SEI at $F000 is SEI at $E000 too: the footer ends 16 KiB or 8.
        bytes[footer + Atari7800Footer.Length - 0x1000] = 0x78;
        bytes.AsSpan(footer, Atari7800Footer.SignatureLength).Fill(0xFF);
        if (signed)
            TestBytes.L(Atari7800Footer.SignatureLength).CopyTo(bytes, footer);
        byte[] rest = [0xFF, (byte)((page << 4) | 7), 0x10, 0xF0, (byte)reset, (byte)(reset >> 8), 0x20, 0xF0];
        rest.CopyTo(bytes, footer + 0x78);
        return bytes;
    }

    public static RomBench Bench(string scheme, byte[] bytes, string? title = "TESTCART") =>
        new RomBench(new Atari7800Platform()) { Title = title }.Header("scheme", scheme).Program("rom", 0, bytes).Size("rom", bytes.Length);

    public static RomBench Bench(string scheme = "linear", int size = 0x4000, int at = 0, string digits = "", int page = 0xF, int reset = Reset, bool signed = true)
    {
        var bytes = Whole(scheme, size, page, reset, signed);
        Convert.FromHexString(digits).CopyTo(bytes, at < 0 ? size + at : at);
        return Bench(scheme, bytes);
    }

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    public static byte[] Container(this CartView cart) => [.. cart.Headers.Single(header => header.Table.Region is null).Container];

    /// <summary>Reads a cart's headers again, from their bytes.</summary>
    public static IEnumerable<HeaderEntry> Read(CartView cart)
    {
        var context = new HeaderContext(null, null, cart.Rom.LengthOf);
        return cart.Headers.SelectMany(header => HeaderReader.Read(header.Table, header.Table.Region is null ? cart.Container() : cart.Rom(), context)!.Entries);
    }
}
