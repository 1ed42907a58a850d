using Cartwright.Platforms.Atari2600;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari2600;

public sealed class Atari2600CheckTests
{
    // Masked with 1FFF the vector must lie within $1000-$1FF9; all ones are an erased chip.
    [Theory]
    [InlineData("FFFF", "CW4455")]
    [InlineData("0000", "CW4455")]
    [InlineData("00E0", "CW4455")]
    [InlineData("FAFF", "CW4455")]
    [InlineData("FCFF", "CW4455")]
    [InlineData("F9FF", "CW4457")]
    [InlineData("00F1", null)]
    [InlineData("00D1", null)]
    [InlineData("0011", null)]
    public void The_only_vector(string vector, string? code) => Only(code, Atari2600Programs.Bench("4k", 0x1000, 0xFFC, vector));

    [Fact]
    public void A_vector_that_no_program_covers() =>
        Only("CW4455", new RomBench(new Atari2600Platform()).Header("scheme", "4k").Program("rom", 0, TestBytes.All(0xEA, 0x800)));

    [Fact]
    public void A_start_that_no_program_covers()
    {
        var bytes = Atari2600Programs.Whole("4k", 0x1000);
        bytes[0xFFD] = 0xF1;
        Only("CW4455", new RomBench(new Atari2600Platform()).Header("scheme", "4k").Program("rom", 0x800, bytes[0x800..]));
    }

    // Every bank that can show at power-on: all of them where the hardware leaves it open.
    [Theory]
    [InlineData("f8", 8, 0, "CW4456")]
    [InlineData("f8", 8, 1, "CW4456")]
    [InlineData("f8sc", 8, 0, "CW4456")]
    [InlineData("f6", 16, 2, "CW4456")]
    [InlineData("f4", 32, 5, "CW4456")]
    [InlineData("f0", 64, 9, "CW4456")]
    [InlineData("ef", 64, 15, "CW4456")]
    [InlineData("df", 128, 17, "CW4456")]
    [InlineData("bf", 256, 63, "CW4456")]
    [InlineData("dpc", 8, 0, "CW4456")]
    [InlineData("fa", 12, 0, null)]
    [InlineData("fa", 12, 2, "CW4456")]
    [InlineData("fe", 8, 0, "CW4456")]
    [InlineData("fe", 8, 1, null)]
    [InlineData("ua", 8, 0, "CW4456")]
    [InlineData("ua", 8, 1, null)]
    [InlineData("0840", 8, 0, "CW4456")]
    [InlineData("0840", 8, 1, null)]
    [InlineData("e0", 8, 3, null)]
    [InlineData("e0", 8, 7, "CW4456")]
    [InlineData("e7", 16, 7, "CW4456")]
    [InlineData("3f", 64, 0, null)]
    [InlineData("3f", 64, 31, "CW4456")]
    [InlineData("3e", 64, 31, "CW4456")]
    [InlineData("wd", 8, 3, "CW4456")]
    [InlineData("wd", 8, 2, null)]
    public void A_bank_without_a_start(string scheme, int kib, int bank, string? code) =>
        Only(code, Atari2600Programs.Bench(scheme, kib << 10, ((bank + 1) * BankSchemes.Named(scheme).Bank) - 4, "FFFF"));

    [Fact]
    public void No_bank_with_a_start()
    {
        var bytes = Atari2600Programs.Whole("f6", 0x4000);
        for (var bank = 0; bank < 4; bank++)
            bytes.AsSpan((bank * 0x1000) + 0xFFC, 2).Clear();
        Only("CW4455", Atari2600Programs.Bench("f6", bytes));
    }

    [Fact]
    public void Many_banks_without_a_start_are_counted()
    {
        var bytes = Atari2600Programs.Whole("ef", 0x10000);
        for (var bank = 0; bank < 15; bank++)
            bytes.AsSpan((bank * 0x1000) + 0xFFC, 2).Clear();
        var bench = Atari2600Programs.Bench("ef", bytes);
        bench.TryAssemble();
        Assert.Contains("and 11 more", Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("00", "CW4457")]
    [InlineData("FF", "CW4457")]
    [InlineData("4C", null)]
    public void The_first_instruction(string opcode, string? code) => Only(code, Atari2600Programs.Bench("f8", 0x2000, 0x1F00, opcode));

    [Theory]
    [InlineData("f8sc", 8, 0x1080, "CW4458")]
    [InlineData("f8sc", 8, 0x1100, null)]
    [InlineData("4ksc", 4, 0x00FF, "CW4458")]
    [InlineData("fa", 12, 0x01FF, "CW4458")]
    [InlineData("e7", 16, 0x3800, "CW4458")]
    [InlineData("e7", 16, 0x3A00, null)]
    public void Bytes_under_RAM(string scheme, int kib, int at, string? code) => Only(code, Atari2600Programs.Bench(scheme, kib << 10, at, "12"));

    [Fact]
    public void A_start_under_RAM() => Only("CW4455", Atari2600Programs.Bench("4ksc", 0x1000, 0xFFC, "80F0"));

    [Fact]
    public void Filler_under_RAM_that_differs()
    {
        var bytes = Atari2600Programs.Whole("f8sc", 0x2000);
        bytes.AsSpan(0x1000, 0x100).Clear();
        Only("CW4459", Atari2600Programs.Bench("f8sc", bytes));
    }

    [Theory]
    [InlineData("f8", 8, 0x0FF8, "CW4460")]
    [InlineData("f8", 8, 0x0FF7, null)]
    [InlineData("f6", 16, 0x1FF6, "CW4460")]
    [InlineData("f4", 32, 0x7FF4, "CW4460")]
    [InlineData("fa", 12, 0x2FF9, "CW4460")]
    [InlineData("f0", 64, 0x0FF0, "CW4460")]
    [InlineData("ef", 64, 0x0FE0, "CW4460")]
    [InlineData("df", 128, 0x0FDF, "CW4460")]
    [InlineData("bf", 256, 0x0F80, "CW4460")]
    public void Bytes_at_hot_spots(string scheme, int kib, int at, string? code) => Only(code, Atari2600Programs.Bench(scheme, kib << 10, at, "12"));

    [Theory]
    [InlineData("8DF8FF", "CW4461")]
    [InlineData("8DF9FF", "CW4461")]
    [InlineData("ADF81F", "CW4461")]
    [InlineData("2CF4FF", "CW4461")]
    [InlineData("ADFBFF", "CW4461")]
    [InlineData("ADF3FF", null)]
    [InlineData("ADFCFF", null)]
    [InlineData("ADF80F", null)]
    public void One_half_of_a_set(string digits, string? code) => Only(code, Atari2600Programs.Bench("4k", 0x1000, 0x200, digits));

    // Bank-Switching: size first, then signatures.
    [Theory]
    [InlineData("2k", 2, 0x100, "8D0014", "cv")]
    [InlineData("4k", 4, 0xFFA, "5343", null)]
    [InlineData("f8", 8, 0x100, "8DE01F", "e0")]
    [InlineData("f8", 8, 0x100, "853F853F", "3f")]
    [InlineData("f8", 8, 0x100, "853F", null)]
    [InlineData("f8", 8, 0x100, "2000D0C6C5", "fe")]
    [InlineData("f8", 8, 0x100, "8D4002", "ua")]
    [InlineData("f8", 8, 0x100, "AD4002", "ua")]
    [InlineData("f8", 8, 0x100, "AD0008AD4008", "0840")]
    [InlineData("f8", 8, 0x100, "0C00080C0008", "0840")]
    [InlineData("f8", 8, 0x100, "AD0008", null)]
    [InlineData("f6", 16, 0x100, "ADE0FF", "e7")]
    [InlineData("f4", 32, 0x100, "853F853F", "3f")]
    [InlineData("ef", 64, 0x100, "42464246", "bf")]
    [InlineData("ef", 64, 0x100, "853E853E853E853E", "3e")]
    [InlineData("ef", 64, 0x100, "853F853F853F853F", "3f")]
    [InlineData("3e", 64, 0x100, "853F853F853F853F", null)]
    public void The_look_of_another_scheme(string scheme, int kib, int at, string digits, string? other)
    {
        var bench = Atari2600Programs.Bench(scheme, kib << 10, at, digits);
        bench.TryAssemble();
        Assert.Equal(other is null ? [] : ["CW4462"], bench.Codes());
        Assert.All(bench.Log.ToSorted(), finding => Assert.Contains($"looks like {other}:", finding.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("f8", 8, "f8sc")]
    [InlineData("f6", 16, "f6sc")]
    [InlineData("f4", 32, "f4sc")]
    public void Banks_that_begin_alike_look_as_with_RAM(string scheme, int kib, string other)
    {
        var bench = Atari2600Programs.Bench(scheme, Atari2600Programs.Whole(other, kib << 10));
        bench.TryAssemble();
        Assert.Equal(["CW4462"], bench.Codes());
        Assert.Contains(other, bench.Log.ToSorted()[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_4_KiB_ROM_marked_SC_looks_as_with_RAM()
    {
        var bytes = Atari2600Programs.Whole("4ksc", 0x1000);
        "SC"u8.CopyTo(bytes.AsSpan(0xFFA));
        Only("CW4462", Atari2600Programs.Bench("4k", bytes));
        Only(null, Atari2600Programs.Bench("4ksc", bytes));
    }

    [Theory]
    [InlineData("3f", "8502", "CW4463")]
    [InlineData("3e", "8502", "CW4463")]
    [InlineData("3f", "8542", null)]
    public void Ordinary_writes_that_switch(string scheme, string digits, string? code) => Only(code, Atari2600Programs.Bench(scheme, 0x4000, 0x3900, digits));

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
