using System.Text;
using Cartwright.Platforms;
using Cartwright.Saves;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveLayoutsTests
{
    private const string Four = "SAVE";

    // ROM Cartridge Data (Mega Drive): a byte-wide memory at the odd addresses; the even ones are not driven.
    [Theory]
    [InlineData("packed", "53 41 56 45")]
    [InlineData("odd-ff", "FF 53 FF 41 FF 56 FF 45")]
    [InlineData("odd-5a", "5A 53 5A 41 5A 56 5A 45")]
    [InlineData("odd-doubled", "53 53 41 41 56 56 45 45")]
    [InlineData("even-00", "53 00 41 00 56 00 45 00")]
    [InlineData("even-doubled", "53 53 41 41 56 56 45 45")]
    [InlineData("swap16", "41 53 45 56")]
    [InlineData("swap32", "45 56 41 53")]
    public void Four_bytes_in_each_layout(string layout, string file) =>
        Assert.Equal(Convert.FromHexString(file.Replace(" ", "", StringComparison.Ordinal)), SaveLayouts.Find(layout)!.ToFile(Encoding.ASCII.GetBytes(Four)));

    [Fact]
    public void A_block_of_eight_is_reversed() =>
        Assert.Equal(new byte[] { 8, 7, 6, 5, 4, 3, 2, 1, 16, 15, 14, 13, 12, 11, 10, 9 }, SaveLayouts.Find("reversed8")!.ToFile([.. Enumerable.Range(1, 16).Select(value => (byte)value)]));

    [Theory]
    [InlineData("nibbles-low", 0x21)]
    [InlineData("nibbles-high", 0x12)]
    public void Two_half_bytes_go_into_one(string layout, byte packed)
    {
        Assert.Equal([packed], SaveLayouts.Find(layout)!.ToFile([0xF1, 0xF2]));
        Assert.Equal([0xF1, 0xF2], SaveLayouts.Find(layout)!.ToMemory([packed]));
    }

    [Fact]
    public void Every_layout_of_every_kind_is_there_and_no_layout_is_of_no_kind()
    {
        Assert.All(SaveKinds.All.SelectMany(kind => kind.Layouts), word => Assert.Equal(word, SaveLayouts.Find(word)?.Id));
        Assert.All(SaveLayouts.All, layout => Assert.Contains(SaveKinds.All, kind => SaveLayouts.IsOf(kind, layout)));
    }

    [Fact]
    public void Every_memory_of_every_platform_comes_back_from_every_layout()
    {
        foreach (var kind in PlatformCatalog.BuiltIn.All.SelectMany(platform => SaveKinds.Of(platform.Facts.Id)))
        {
            foreach (var (size, layout) in kind.Sizes.SelectMany(size => kind.Layouts.Select(word => (size, SaveLayouts.Find(word)!))))
            {
                var memory = TestBytes.L(size);
                if (layout.FileUnit < layout.MemoryUnit)
                    memory = [.. memory.Select(value => (byte)(value | 0xF0))];

                var file = layout.ToFile(memory);
                Assert.Equal(layout.FileSize(size), file.Length);
                Assert.Equal(size, layout.MemorySize(file.Length));
                Assert.Equal(-1, layout.FirstForeign(file));
                Assert.Equal(memory, layout.ToMemory(file));
            }
        }
    }

    [Property]
    public void What_a_layout_writes_it_reads(byte[] bytes, byte filler)
    {
        var memory = new byte[bytes.Length / 8 * 8];
        bytes.AsSpan(0, memory.Length).CopyTo(memory);
        foreach (var layout in SaveLayouts.All.Append(SaveLayouts.Find($"odd-{filler:x2}")!).Append(SaveLayouts.Find($"even-{filler:x2}")!))
        {
            var halves = layout.FileUnit < layout.MemoryUnit ? [.. memory.Select(value => (byte)(value | 0xF0))] : memory;
            Assert.Equal(halves, layout.ToMemory(layout.ToFile(halves)));
        }
    }

    [Theory]
    [InlineData("odd-ff", 8)]
    [InlineData("even-00", 9)]
    [InlineData("odd-doubled", 8)]
    public void A_byte_where_the_filler_belongs_is_found(string word, int offset)
    {
        var layout = SaveLayouts.Find(word)!;
        var file = layout.ToFile(TestBytes.L(16));
        file[offset] ^= 0x10;
        Assert.Equal(offset, layout.FirstForeign(file));
    }

    // GNU objcopy takes every second byte out of a file.
    [Theory]
    [InlineData("odd-ff", 1, 0xFF)]
    [InlineData("even-00", 0, 0x00)]
    public void An_expanded_save_gives_objcopy_the_memory_in_one_lane_and_filler_in_the_other(string word, int lane, byte filler)
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        var memory = TestBytes.L(0x2000);
        folder.Write("save.bin", SaveLayouts.Find(word)!.ToFile(memory));
        byte[] Lane(int number)
        {
            Tool.Succeed("objcopy", folder.Path, "-I", "binary", "-O", "binary", "--interleave=2", $"--byte={number}", "save.bin", "lane.bin");
            return folder.Read("lane.bin");
        }

        Assert.Equal(memory, Lane(lane));
        Assert.Equal(TestBytes.All(filler, 0x2000), Lane(1 - lane));
    }

    // GNU objcopy reverses the bytes of words.
    [Theory]
    [InlineData("swap16", 2)]
    [InlineData("swap32", 4)]
    [InlineData("reversed8", 8)]
    public void Words_are_reversed_as_objcopy_does(string word, int bytes)
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        var memory = TestBytes.L(0x800);
        folder.Write("save.bin", memory);
        Tool.Succeed("objcopy", folder.Path, "-I", "binary", "-O", "binary", $"--reverse-bytes={bytes}", "save.bin", "swapped.bin");
        Assert.Equal(folder.Read("swapped.bin"), SaveLayouts.Find(word)!.ToFile(memory));
    }

    [Theory]
    [InlineData("odd")]
    [InlineData("odd-f")]
    [InlineData("odd-gg")]
    [InlineData("side-ff")]
    [InlineData("")]
    public void Another_word_is_no_layout(string word) => Assert.Null(SaveLayouts.Find(word));

    [Fact]
    public void A_part_of_a_unit_has_no_layout()
    {
        Assert.Null(SaveLayouts.Find("swap32")!.FileSize(6));
        Assert.Null(SaveLayouts.Find("odd-ff")!.MemorySize(7));
        Assert.Throws<ArgumentException>(() => SaveLayouts.Find("swap16")!.ToFile(new byte[3]));
    }
}
