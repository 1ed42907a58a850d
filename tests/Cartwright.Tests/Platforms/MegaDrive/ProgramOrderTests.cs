using Cartwright.Findings;
using Cartwright.Ordering;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>Programs that are not in bus order, each made from a finished ROM.</summary>
public sealed class ProgramOrderTests
{
    [Theory]
    [InlineData("SEGA MEGA DRIVE")]
    [InlineData(" SEGA MEGA DRIVE")]
    [InlineData("SEGA SSF")]
    [InlineData("SEGA MEGAWIFI")]
    public void A_swapped_program(string system)
    {
        var program = Finished(system);
        WordSwap.Swap16(program);
        AssertFound("CW4254", program);
    }

    // Prefix as in "Copier 512-byte header description"; many are all zero.
    [Theory]
    [InlineData("SEGA MEGA DRIVE", true)]
    [InlineData(" SEGA MEGA DRIVE", false)]
    public void A_program_behind_a_prefix(string system, bool marked) =>
        AssertFound("CW4255", [.. Prefix(marked), .. Finished(system)]);

    [Fact]
    public void A_marked_prefix_shows_at_any_length() => AssertFound("CW4255", [.. Prefix(true), .. Finished("SEGA GENESIS"), 0, 0]);

    [Theory]
    [InlineData("SEGA MEGA DRIVE", true)]
    [InlineData(" SEGA MEGA DRIVE", true)]
    [InlineData("SEGA SSF", false)]
    public void A_program_in_a_copiers_block_order(string system, bool prefixed)
    {
        var body = Interleave(Finished(system));
        AssertFound("CW4256", prefixed ? [.. Prefix(true), .. body] : body);
    }

    // Worked digests of L(0x20000), computed by two independent programs: the order these tests make is the copier's.
    [Fact]
    public void The_block_order_is_the_copiers()
    {
        var body = Interleave(TestBytes.L(0x20000));
        Assert.Equal("7C594F63", TestBytes.Crc(body));
        Assert.Equal("AECE6D7F", TestBytes.Crc([.. Prefix(true), .. body]));
    }

    [Theory]
    [InlineData("SEGA GENESIS")]
    [InlineData(" SEGA GENESIS")]
    public void A_program_of_two_halves(string system)
    {
        var (even, odd) = Halves(Finished(system));
        AssertFound("CW4257", [.. odd, .. even]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_program_for_one_of_two_chips(bool upper)
    {
        var (even, odd) = Halves(Finished("SEGA MEGA DRIVE"));
        AssertFound("CW4257", upper ? even : odd);
    }

    [Fact]
    public void A_half_is_refused_for_its_system_type_too()
    {
        var bench = MegaDriveBench.Bench(Halves(Finished("SEGA MEGA DRIVE")).Even).Keep(true);
        bench.TryAssemble();
        Assert.Contains("CW4234", bench.Codes());
    }

    [Fact]
    public void A_swapped_program_is_found_even_when_the_header_is_written_over_it()
    {
        var program = Finished("SEGA MEGA DRIVE");
        WordSwap.Swap16(program);
        var bench = MegaDriveBench.Bench(program).Keep(false);
        bench.TryAssemble();
        Assert.Contains("CW4254", bench.Codes());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(0x85)]
    [InlineData(0x105)]
    public void Short_programs_are_taken_as_they_are(int length)
    {
        var bench = MegaDriveBench.Bench(MegaDriveBench.Finished(0x4000)[..length]);
        bench.TryAssemble();
        Assert.DoesNotContain(bench.Log.ToSorted(), finding => IsOrder(finding.Code));
    }

    private static void AssertFound(string code, byte[] program)
    {
        var bench = MegaDriveBench.Bench(program).Keep(true);
        bench.TryAssemble();
        var found = Assert.Single(bench.Log.ToSorted(), finding => IsOrder(finding.Code));
        Assert.Equal(code, found.Code);
        if (found.Severity == FindingSeverity.Error)
            Assert.DoesNotContain("CW4234", bench.Codes());
    }

    private static bool IsOrder(string code) => code is "CW4254" or "CW4255" or "CW4256" or "CW4257";

    private static byte[] Finished(string system) =>
        MegaDriveBench.Bench(MegaDriveBench.Program(0x10000)).Header("systemType", system).Size("rom", 0x10000).Assemble().Bytes("rom").ToArray();

    // The number of 16 KiB blocks of a 128 KiB image, 3, then the marks and the type of a Mega Drive program.
    private static byte[] Prefix(bool marked)
    {
        var prefix = new byte[0x200];
        if (marked)
            ((ReadOnlySpan<byte>)[0x08, 0x03, 0, 0, 0, 0, 0, 0, 0xAA, 0xBB, 0x06]).CopyTo(prefix);

        return prefix;
    }

    private static byte[] Interleave(byte[] image)
    {
        var body = new byte[image.Length];
        for (var block = 0; block < image.Length; block += 0x4000)
            Lanes.Split2(image.AsSpan(block, 0x4000), body.AsSpan(block + 0x2000, 0x2000), body.AsSpan(block, 0x2000));

        return body;
    }

    private static (byte[] Even, byte[] Odd) Halves(byte[] image)
    {
        var even = new byte[image.Length / 2];
        var odd = new byte[image.Length / 2];
        Lanes.Split2(image, even, odd);
        return (even, odd);
    }
}
