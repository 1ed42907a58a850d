using System.Buffers.Binary;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>NES files: the container (NESdev Wiki, INES and NES 2.0), and PRG without one.</summary>
public sealed class NesRecognitionTests
{
    private const int Kib = 1 << 10;

    [Theory]
    [InlineData("02 01 00 08", "nes2", 16, "32 KiB of PRG and 8 KiB of CHR (NES 2.0)")]
    [InlineData("02 01 00 00", "ines", 16, "32 KiB of PRG and 8 KiB of CHR (iNES)")]
    [InlineData("02 01 04 00", "ines", 528, "behind a trainer of 512 bytes, and 512 bytes of them are missing")]
    [InlineData("01 00 00 00", "ines", 16, "16 KiB of PRG and no CHR ROM, and 24 KiB behind them")]
    [InlineData("04 01 00 00", "ines", 16, "it claims 64 KiB of PRG and 8 KiB of CHR, and 32 KiB of them are missing")]
    [InlineData("FC 00 00 08 00 0F", "ines", 16, "cannot be trusted")]
    [InlineData("02 01 00 04", "ines", 16, "cannot be trusted")]
    public void A_container_is_exact_whatever_its_sizes(string header, string variant, int prefix, string told)
    {
        var file = new byte[16 + (40 * Kib)];
        Convert.FromHexString("4E45531A" + header.Replace(" ", "", StringComparison.Ordinal)).CopyTo(file, 0);
        var claim = Ranked.Decided("nes", file);
        Assert.Equal((Certainty.Exact, variant, prefix), (claim.Certainty, claim.Variant, claim.PrefixLength));
        Assert.Contains(told, claim.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_container_alone_claims_no_bytes_it_has_not()
    {
        byte[] file = [.. "NES\x1A"u8, 2, 1, 4, 0, 0, 0, 0, 0, 0, 0, 0, 0];
        Assert.Equal(16, Ranked.Decided("nes", file).PrefixLength);
    }

    [Fact]
    public void A_prefix_is_believed_only_before_the_mark()
    {
        var image = ExampleCart.All["lantern-tide-nes"].File;
        var claim = Ranked.Decided("nes", [.. new byte[0x200], .. image]);
        Assert.Equal((0x210, "nes2"), (claim.PrefixLength, claim.Variant));
        Assert.Contains("at 0x0200", claim.Reason, StringComparison.Ordinal);
        Assert.Null(Ranked.By("nes", [.. new byte[0x200], .. Prg(32 * Kib)]));
        Assert.NotEqual(Certainty.Exact, Ranked.By("nes", [.. new byte[0x201], .. image])?.Certainty);
    }

    [Theory]
    [InlineData(16 * Kib)]
    [InlineData(24 * Kib)]
    [InlineData(40 * Kib)]
    [InlineData(128 * Kib)]
    [InlineData(1024 * Kib)]
    public void PRG_without_a_container_is_a_candidate(int length)
    {
        var claim = Ranked.By("nes", Prg(length))!;
        Assert.Equal((Certainty.Candidate, (string?)null, 0), (claim.Certainty, claim.Variant, claim.PrefixLength));
        Assert.Contains("RESET $C000, and the opcode 78", claim.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(8 * Kib)]
    [InlineData(20 * Kib)]
    [InlineData(2048 * Kib)]
    [InlineData((16 * Kib) + 1)]
    public void Other_sizes_are_not(int length) => Assert.Null(Ranked.By("nes", Prg(length)));

    // RESET may lead below a bank of 16 KiB: it is seen twice.
    [Theory]
    [InlineData(0xC000, 0x8000, 0x78, true)]
    [InlineData(0x8000, 0x8000, 0xD8, true)]
    [InlineData(0xFFF9, 0x0200, 0x4C, true)]
    [InlineData(0xC000, 0x07FF, 0x20, true)]
    [InlineData(0xC000, 0xFFFF, 0xA9, true)]
    [InlineData(0xC000, 0x8000, 0xA2, true)]
    [InlineData(0xC000, 0x8000, 0x08, true)]
    [InlineData(0xC000, 0x8000, 0xAD, true)]
    [InlineData(0xC000, 0x8000, 0xAE, true)]
    [InlineData(0xC000, 0x8000, 0x85, true)]
    [InlineData(0xC000, 0x8000, 0x00, false)]
    [InlineData(0xC000, 0x8000, 0xFF, false)]
    [InlineData(0xC000, 0x0000, 0x78, false)]
    [InlineData(0xC000, 0x01FF, 0x78, false)]
    [InlineData(0xC000, 0x0800, 0x78, false)]
    [InlineData(0x7FFF, 0x8000, 0x78, false)]
    [InlineData(0xFFFA, 0x8000, 0x78, false)]
    public void Vectors_and_first_opcode_decide(ushort reset, ushort nmi, byte opcode, bool found) =>
        Assert.Equal(found, Ranked.By("nes", Prg(16 * Kib, reset, nmi, opcode)) is not null);

    [Fact]
    public void CHR_behind_PRG_hides_it() => Assert.Null(Ranked.By("nes", [.. Prg(32 * Kib), .. new byte[8 * Kib]]));

    private static byte[] Prg(int length, ushort reset = 0xC000, ushort nmi = 0x8000, byte opcode = 0x78)
    {
        var prg = new byte[length];
        // The CPU sees the end of PRG at the end of its addresses, and 16 KiB twice.
        var start = length - (0x10000 - reset);
        while (start < 0)
            start += 16 * Kib;

        if (start < length)
            prg[start] = opcode;

        BinaryPrimitives.WriteUInt16LittleEndian(prg.AsSpan(length - 6), nmi);
        BinaryPrimitives.WriteUInt16LittleEndian(prg.AsSpan(length - 4), reset);
        return prg;
    }
}
