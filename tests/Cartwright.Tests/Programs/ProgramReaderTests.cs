using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

public sealed class ProgramReaderTests
{
    private static readonly string Hex = Records.Lines(Records.Hex(0, 0, 1), Records.HexEnd);
    private static readonly string S = Records.Lines(Records.S(1, 0, 1), Records.S(9, 0));

    [Theory]
    [InlineData("game.out")]
    [InlineData("game.hex")]
    [InlineData("game.bin")]
    [InlineData("game")]
    public void Content_is_recognised_whatever_the_name(string file)
    {
        Assert.Equal(ProgramFormat.IntelHex, Reading.Of(file, "\r\n \n" + Hex).Program!.Format);
        Assert.Equal(ProgramFormat.SRecord, Reading.Of(file, S).Program!.Format);
        Assert.Equal(ProgramFormat.Elf, Reading.Of(file, new ElfBuilder().Load(0, 0, [1]).Build()).Program!.Format);
    }

    [Theory]
    [InlineData("game.bin")]
    [InlineData("game")]
    [InlineData("hex")]
    public void Anything_else_is_raw(string file)
    {
        byte[] bytes = [0x3A, 0, 1, 2];
        var program = Reading.Of(file, bytes).Program!;
        Assert.Equal(ProgramFormat.Raw, program.Format);
        Assert.False(program.HasAddresses);
        Assert.Equal("00000000: 3A000102", Reading.Show(program.Segments));
    }

    [Theory]
    [InlineData("game.hex")]
    [InlineData("game.IHX")]
    [InlineData("game.ihex")]
    [InlineData("game.srec")]
    [InlineData("game.s19")]
    [InlineData("game.s28")]
    [InlineData("game.s37")]
    [InlineData("game.mot")]
    [InlineData("game.elf")]
    public void A_file_that_is_not_what_its_name_claims_is_never_taken_as_raw(string file)
    {
        Assert.Null(Reading.Of(file, "\x1B[31mlisting\x1B[0m\n").Program);
        Assert.Null(Reading.Of(file, " \n").Program);
        Assert.Null(Reading.Of(file, new byte[] { 0, 1, 2, 3 }).Program);
    }

    [Fact]
    public void A_stated_format_wins_over_the_name() =>
        Assert.Equal(ProgramFormat.Raw, Reading.Of("game.hex", new byte[] { 1, 2 }, ProgramFormat.Raw).Program!.Format);

    [Fact]
    public void A_damaged_first_record_is_not_taken_as_raw() =>
        Assert.Equal([ProgramFindings.RecordChecksum.Code], Reading.Of("game.out", Records.Lines(":0100000055AB", Hex.TrimEnd())).Codes);

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Only_address_units_1_and_2_exist(int unit) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ProgramReadOptions { AddressUnit = unit });
}
