using Cartwright.Findings;
using Cartwright.Platforms;
using Cartwright.Platforms.Lynx;
using Xunit;
using static Cartwright.Tests.Platforms.Lynx.LynxCarts;

namespace Cartwright.Tests.Platforms.Lynx;

public sealed class LynxCheckTests
{
    [Fact]
    public void A_clean_cart_has_nothing_to_say_and_its_start_is_left_alone()
    {
        var bench = Bench(Program());
        Assert.Equal(Program(), bench.Assemble().Bytes("rom")[..0x1000]);
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void Codes_are_in_order_and_in_range()
    {
        Assert.Equal(Enumerable.Range(4440, LynxFindings.All.Length).Select(number => $"CW{number}"), LynxFindings.All.Select(rule => rule.Code));
        Assert.True(LynxFindings.All.Length <= 15);
    }

    [Fact]
    public void A_container_or_an_object_left_in_a_program()
    {
        AssertOnly("CW4440", Bench([.. Bench(Program()).Assemble().Headers[0].Container, .. Program()]));
        AssertOnly("CW4441", Bench([0x80, 0x08, 0x02, 0x00, 0x10, 0x00, .. "BS93"u8, .. new byte[0x100]]));
    }

    // Frames: 0x100 less the number of blocks of 51 bytes; a count of one byte in front (confirmed on images).
    [Theory]
    [InlineData(0xFF, 52)]
    [InlineData(0xFE, 103)]
    [InlineData(0xFD, 154)]
    [InlineData(0xFC, 205)]
    [InlineData(0xFB, 256)]
    [InlineData(0xF8, 409)]
    public void A_frame_is_as_long_as_its_count_says(byte count, int length)
    {
        Assert.Equal(length, LynxBoot.FrameLength(count));
        var program = TestBytes.L(length);
        program[0] = count;
        AssertOnly(null, Bench(program));
        AssertOnly("CW4444", Bench(program[..^1]));
    }

    [Theory]
    [InlineData(0x00, "CW4442")]
    [InlineData(0x01, "CW4443")]
    [InlineData(0xF7, "CW4443")]
    public void Starts_that_are_no_count(byte first, string code)
    {
        var program = TestBytes.L(0x1000);
        program[0] = first;
        AssertOnly(code, Bench(program));
    }

    [Fact]
    public void Starts_without_anything_to_decrypt()
    {
        AssertOnly("CW4442", Bench(TestBytes.All(0xFF, 0x100)));
        AssertOnly("CW4442", new RomBench(Machine).Program("rom", 0x400, TestBytes.L(0x100)));
    }

    // Cartridge information (The Atari Lynx Book): data at 19A + 10, blocks of 1024 bytes, flag 88, load 0400, length 1234.
    [Fact]
    public void An_entry_reads_as_worked()
    {
        var entry = LynxEntry.Read(Convert.FromHexString("00AA018800043412"));
        Assert.Equal(new LynxEntry(0, 0x1AA, 0x88, 0x0400, 0x1234), entry);
        Assert.Equal(0x19A + 0x10, entry.Position(0x400));
        Assert.Equal((3 * 0x200) + 0x11, new LynxEntry(3, 0x11, 0, 0, 0).Position(0x200));
    }

    // Frames of 3 and 5 blocks, or 5 and 5: the directory stands behind them. Others keep theirs to themselves.
    [Theory]
    [InlineData(0xFD, 0x9A, 0xFB, 0x19A)]
    [InlineData(0xFB, 0x100, 0xFB, 0x200)]
    [InlineData(0xFD, 0x9A, 0xFC, null)]
    [InlineData(0xFF, 0x34, 0xFB, null)]
    public void Where_the_directory_is(byte first, int at, byte second, int? directory)
    {
        var rom = TestBytes.L(0x400);
        (rom[0], rom[at]) = (first, second);
        Assert.Equal(directory, LynxBoot.Directory(rom));
        Assert.Null(LynxBoot.Directory(rom.AsSpan(0, 1)));
        Assert.Null(LynxBoot.Directory([]));
    }

    [Theory]
    [InlineData("000002880004000C", null)]
    [InlineData("0000028800040100", null)]
    [InlineData("0000028800040000", "CW4445")] // no length
    [InlineData("00000288000401F0", "CW4445")] // beyond the program
    [InlineData("FF00028800040100", "CW4445")]
    [InlineData("0000048800040100", "CW4446")] // offset of a larger block
    [InlineData("00000788000400F0", "CW4446")]
    [InlineData("000002880FFF000C", "CW4447")]
    public void First_entries(string entry, string? code) => AssertOnly(code, Bench(Program(0x1000, entry)));

    [Fact]
    public void A_directory_that_was_left_out() => AssertOnly("CW4445", Bench(Program()[..0x19A]));

    // One in twelve images has a directory at 19A: none is demanded.
    [Fact]
    public void No_directory_is_demanded_of_other_loaders()
    {
        var program = TestBytes.L(0x100);
        program[0] = 0xFF;
        AssertOnly(null, Bench(program));
    }

    [Fact]
    public void A_second_bank_that_nothing_switches()
    {
        var program = Program(0x1000, "0001028800040002");
        var large = new RomBench(Machine).Program("rom", 0, program).Size("rom", 1024 * K);
        AssertOnly(null, large);
        AssertOnly("CW4448", new RomBench(Machine).Program("rom", 0, program).Size("rom", 1024 * K).Header("audin", "false"));
        AssertOnly(null, new RomBench(Machine).Program("rom", 0, program).Size("rom", 1024 * K).Header("audin", "false").Header("bank1BlockSize", "2048"));
    }

    [Fact]
    public void Containers_are_recognised_by_their_mark_and_block_size()
    {
        var cart = Bench(Program()).Assemble();
        var file = Machine.Exchange(cart).SelectMany(part => part.ToArray()).ToArray();
        var claim = Machine.Recognise(file)!;
        Assert.Equal((Certainty.Exact, LynxHeader.Length, "1024"), (claim.Certainty, claim.PrefixLength, claim.Variant));
        file[5] = 0x01;
        Assert.Equal((Certainty.Exact, null), (Machine.Recognise(file)!.Certainty, Machine.Recognise(file)!.Variant));
        file[5] = 0x03;
        Assert.Null(Machine.Recognise(file));
        Assert.Null(Machine.Recognise("LYNX"u8));
        Assert.Null(Machine.Recognise(file.AsSpan(0, 0x40)));
    }

    [Fact]
    public void Bare_images_are_candidates_by_their_frames_and_size()
    {
        var rom = Bench(Program()).Assemble().Bytes("rom").ToArray();
        Assert.Equal((Certainty.Candidate, "1024"), (Machine.Recognise(rom)!.Certainty, Machine.Recognise(rom)!.Variant));
        Assert.Null(Machine.Recognise(rom.AsSpan(0, 0x1000)));
        rom[0x9A] = 0;
        Assert.Null(Machine.Recognise(rom));
        Assert.Null(Machine.Recognise([]));
    }

    private static void AssertOnly(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
        Assert.All(bench.Log.ToSorted(), finding => Assert.NotEqual(SourcePlace.None, finding.Place));
    }
}
