using Cartwright.Findings;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.PcEngine;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.PcEngine.HuCards;

namespace Cartwright.Tests.Platforms.PcEngine;

public sealed class HuCardCheckTests
{
    [Fact]
    public void A_clean_cart_has_nothing_to_say()
    {
        foreach (var size in (int[])[8 * K, 128 * K, 512 * K, 1024 * K])
        {
            var bench = Bench(Program(size));
            Assert.Equal(Program(size), bench.Assemble().Bytes("rom"));
            Assert.Empty(bench.Codes());
        }
    }

    [Fact]
    public void Codes_are_in_order_and_in_range()
    {
        var codes = PcEngineFindings.All.Select(rule => rule.Code);
        Assert.Equal(Enumerable.Range(4400, PcEngineFindings.All.Length).Select(number => $"CW{number}"), codes);
        Assert.True(PcEngineFindings.All.Length <= 15);
    }

    // The high byte of the reset vector is E0-FF, and the target the vector less E000 (seen in images).
    [Theory]
    [InlineData(0xDFFF, "CW4403")]
    [InlineData(0x4000, "CW4403")]
    [InlineData(0x0000, "CW4403")]
    [InlineData(0xE000, null)]
    [InlineData(0xFFF0, null)]
    public void Reset_vectors(int reset, string? code) => AssertOnly(code, Bench(Program(8 * K, reset)));

    [Fact]
    public void A_reset_vector_that_leads_to_fill() =>
        AssertOnly("CW4404", new RomBench(Machine).Program("rom", 0, Program(8 * K)[..0x100]).Program("rom", 0x1FF0, Program(8 * K)[0x1FF0..]));

    [Theory]
    [InlineData(0x1FFF)]
    [InlineData(0x1FFE)]
    [InlineData(0x0800)]
    public void No_reset_vector(int length) => AssertOnly("CW4402", Bench(Program(8 * K)[..length]));

    [Fact]
    public void Programs_that_leave_bank_0_empty() => AssertOnly("CW4402", new RomBench(Machine).Program("rom", 0x2000, TestBytes.L(0x2000)));

    // Places of these vectors: from memory, so never an error.
    [Theory]
    [InlineData(0x1FF6, 0xE800, "CW4405")]
    [InlineData(0x1FF8, 0xE800, "CW4405")]
    [InlineData(0x1FFA, 0xE800, "CW4405")]
    [InlineData(0x1FFC, 0xE800, "CW4405")]
    [InlineData(0x1FF8, 0xFFFF, null)]
    [InlineData(0x1FF8, 0x4000, null)]
    [InlineData(0x1FF8, 0xE100, null)]
    public void Interrupt_vectors(int at, int vector, string? code)
    {
        var program = Program(8 * K);
        (program[at], program[at + 1]) = ((byte)vector, (byte)(vector >> 8));
        AssertOnly(code, new RomBench(Machine).Program("rom", 0, program[..0x200]).Program("rom", 0x1FF0, program[0x1FF0..]));
        Assert.Equal(FindingSeverity.Warning, PcEngineFindings.InterruptNowhere.Severity);
    }

    [Theory]
    [InlineData(24 * K, "CW4406")]
    [InlineData(96 * K, "CW4406")]
    [InlineData(64 * K, null)]
    [InlineData(384 * K, null)]
    [InlineData(768 * K, null)]
    public void Sizes_that_are_completed(int size, string? code) => AssertOnly(code, Bench(Program(size)).Size("rom", size));

    [Fact]
    public void A_program_of_384_KiB_in_a_larger_ROM()
    {
        AssertOnly("CW4407", Bench(Program(384 * K)));
        AssertOnly(null, Bench(Program(384 * K)).Size("rom", 384 * K));
        AssertOnly(null, Bench(Program(376 * K)));
    }

    // As copiers write it, as homebrew tools do (0C, then 511 zeros for 96 KiB), and one that only the length shows.
    [Theory]
    [InlineData("0C00", 0)]
    [InlineData("AABB02", 8)]
    [InlineData("123456", 0)]
    public void A_copier_prefix(string bytes, int at)
    {
        var prefix = new byte[0x200];
        Convert.FromHexString(bytes).CopyTo(prefix, at);
        AssertOnly("CW4400", Bench([.. prefix, .. Program(96 * K)]));
        // Without a start that is known the prefix itself must show what it is.
        var isMarked = bytes != "123456";
        AssertOnly(isMarked ? "CW4400" : "CW4403", Bench([.. prefix, .. new byte[96 * K]]));
    }

    [Fact]
    public void Reversed_bits_that_somebody_insists_on()
    {
        var program = Program(8 * K);
        BitReverse.Reverse8(program);
        AssertOnly("CW4401", Bench(program));
    }

    [Fact]
    public void A_raw_program_is_turned_round_when_its_start_says_so()
    {
        var program = Program(8 * K);
        Assert.Equal(ImageOrder.Console, Machine.OrderOf(program));
        BitReverse.Reverse8(program);
        Assert.Equal(ImageOrder.BitReversed, Machine.OrderOf(program));
        Assert.Equal(ImageOrder.Console, Machine.OrderOf(TestBytes.L(8 * K)));
        Assert.Equal(ImageOrder.Console, Machine.OrderOf([]));
    }

    // Starts as seen in images: SEI with CSH near, with TAM near, CSH alone, LDA and TAM.
    [Theory]
    [InlineData("78D4D8A9FF5301", Certainty.Exact)]
    [InlineData("78D8D4000000", Certainty.Structural)]
    [InlineData("78A9FF5301", Certainty.Structural)]
    [InlineData("D4A9FF5301", Certainty.Structural)]
    [InlineData("A9FF5301", Certainty.Structural)]
    [InlineData("78EA5303", Certainty.Candidate)]
    [InlineData("D4EAEAEA", Certainty.Candidate)]
    [InlineData("A9FF5303", Certainty.Candidate)]
    [InlineData("A2FF9A", null)]
    [InlineData("4C00E0", null)]
    public void Starts_that_are_known(string code, Certainty? certainty)
    {
        foreach (var (size, prefix, order) in ((int, int, ImageOrder)[])[(8 * K, 0, ImageOrder.Console), (24 * K, 0x200, ImageOrder.Console), (8 * K, 0, ImageOrder.BitReversed), (128 * K, 0x200, ImageOrder.BitReversed)])
        {
            var image = Program(size);
            image.AsSpan(0x100, 24).Fill(0xEA);
            Convert.FromHexString(code).CopyTo(image, 0x100);
            if (order == ImageOrder.BitReversed)
                BitReverse.Reverse8(image);

            var claim = Machine.Recognise([.. new byte[prefix], .. image]);
            Assert.Equal(certainty, claim?.Certainty);
            if (claim is not null)
                Assert.Equal((order, prefix), (claim.Order, claim.PrefixLength));
        }
    }

    // A value with both the high and the low three bits set fits both orders: the opcodes decide.
    [Fact]
    public void An_ambiguous_vector_is_decided_by_the_opcodes()
    {
        var image = Program(8 * K, 0xFF00);
        ((byte[])[0x78, 0xD4, 0xD8, 0xA9, 0xFF, 0x53, 0x01]).CopyTo(image, 0x1F00);
        Assert.Equal(ImageOrder.Console, Machine.Recognise(image)!.Order);
        BitReverse.Reverse8(image);
        Assert.Equal(ImageOrder.BitReversed, Machine.Recognise(image)!.Order);
    }

    [Property]
    public void Nothing_sure_is_said_of_random_data(int seed)
    {
        var image = new byte[8 * K];
        new Random(seed).NextBytes(image);
        Assert.False(Machine.Recognise(image)?.Certainty > Certainty.Candidate);
        Assert.Null(Machine.Recognise(image.AsSpan(1)));
    }

    [Fact]
    public void Short_and_blank_files_match_nothing()
    {
        for (var length = 0; length < 0x800; length += 0x40)
            Assert.Null(Machine.Recognise(new byte[length]));

        foreach (var length in (int[])[0x200, 0x2000, 0x2200, 0x20000])
        {
            Assert.Null(Machine.Recognise(new byte[length]));
            Assert.Null(Machine.Recognise(TestBytes.All(0xFF, length)));
        }
    }

    private static void AssertOnly(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
        Assert.All(bench.Log.ToSorted(), finding => Assert.NotEqual(SourcePlace.None, finding.Place));
    }
}
