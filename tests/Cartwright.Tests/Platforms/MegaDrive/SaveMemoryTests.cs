using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>The save memory block: worked blocks and ranges as in "ROM Cartridge Data", further ones as seen in images.</summary>
public sealed class SaveMemoryTests
{
    [Theory]
    [InlineData("8KiB battery odd", "5241F820 00200001 00203FFF")]
    [InlineData("32KiB battery odd", "5241F820 00200001 0020FFFF")]
    [InlineData("8KiB battery even", "5241F020 00200000 00203FFE")]
    [InlineData("64KiB battery word", "5241E020 00200000 0020FFFF")]
    [InlineData("8KiB volatile odd", "5241B820 00200001 00203FFF")]
    [InlineData("8KiB volatile even", "5241B020 00200000 00203FFE")]
    [InlineData("64KiB volatile word", "5241A020 00200000 0020FFFF")]
    [InlineData("512KiB battery word at $380000", "5241E020 00380000 003FFFFF")]
    [InlineData("256 battery odd", "5241F820 00200001 002001FF")]
    [InlineData("eeprom", "5241E840 00200001 00200001")]
    [InlineData("eeprom at $200003", "5241E840 00200003 00200003")]
    [InlineData("128KiB flash at $3D0000", "464C0020 003D0000 003EFFFF")]
    [InlineData("none", "202020202020202020202020")]
    public void Words_and_bytes_become_each_other(string words, string digits)
    {
        var (bytes, problem) = MegaDriveBench.Write("saveMemory", words);
        Assert.Null(problem);
        Assert.Equal(MegaDriveBench.Hex(digits), bytes);
        Assert.Equal(words, MegaDriveBench.Read("saveMemory", bytes));
    }

    [Theory]
    [InlineData("8KiB volatile odd at $200001", "8KiB volatile odd")]
    [InlineData("8KiB battery odd at $200000", "8KiB battery odd")]
    [InlineData("8KiB battery even at 0x200001", "8KiB battery even")]
    [InlineData("odd Battery 64Kbit", "8KiB battery odd")]
    [InlineData("eeprom at $200000", "eeprom")]
    [InlineData("NONE", "none")]
    public void Other_spellings_mean_the_same(string words, string canonical)
    {
        var (bytes, problem) = MegaDriveBench.Write("saveMemory", words);
        Assert.Null(problem);
        Assert.Equal(canonical, MegaDriveBench.Read("saveMemory", bytes));
    }

    // Blocks whose words would not give the same bytes back.
    [Theory]
    [InlineData("5241F8200020000000 20FFFF")]
    [InlineData("5241F82000200000002001FF")]
    [InlineData("20200000002000 00002001FF")]
    [InlineData("2020F8200020000100203FFF")]
    [InlineData("000000000000000000000000")]
    [InlineData("5241FFFF0020000100203FFF")]
    [InlineData("5241F8200040000100403FFF")]
    [InlineData("5241F820FFFFFFFF00000000")]
    [InlineData("5241E02000200001002000FF")]
    [InlineData("5241E84000200001002000FF")]
    [InlineData("464C0020003EFFFF003D0000")]
    public void Blocks_out_of_order_are_shown_as_bytes_and_kept_so(string digits)
    {
        var block = MegaDriveBench.Hex(digits);
        var text = MegaDriveBench.Read("saveMemory", block);
        Assert.StartsWith("hex ", text, StringComparison.Ordinal);
        Assert.Equal(block, MegaDriveBench.Write("saveMemory", text).Bytes);
    }

    [Theory]
    [InlineData("8KiB battery", "`odd`, `even` and `word`")]
    [InlineData("8KiB odd", "`battery`, `volatile`")]
    [InlineData("battery odd", "size")]
    [InlineData("0 battery odd", "size")]
    [InlineData("8KiB battery odd at", "behind `at`")]
    [InlineData("8KiB battery odd at $400000", "$400000")]
    [InlineData("8KiB battery odd at $3FF000", "$402FFF")]
    [InlineData("4MiB battery odd", "$9FFFFF")]
    [InlineData("8KiB battery odd even", "`even`")]
    [InlineData("8KiB 8KiB battery odd", "`8KiB`")]
    [InlineData("8KiB batery odd", "`batery`")]
    [InlineData("7 battery word", "even size")]
    [InlineData("8 battery word at $200001", "even address")]
    [InlineData("2KiB eeprom", "EEPROM's size")]
    [InlineData("eeprom odd", "lane")]
    [InlineData("eeprom at $400000", "$400000")]
    [InlineData("flash", "size")]
    [InlineData("", "missing")]
    [InlineData("hex 5241", "12 bytes")]
    public void What_cannot_be_is_said(string words, string part) =>
        Assert.Contains(part, MegaDriveBench.Write("saveMemory", words).Problem, StringComparison.Ordinal);
}
