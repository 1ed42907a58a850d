using System.Collections.Immutable;
using System.Text;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Files that are no images: nobody may be sure of them.</summary>
public sealed class ForeignFileTests
{
    private const int LargestFile = 2 << 20;
    private const int FilesAFolder = 1500;

    [Fact]
    public void Short_files_match_nothing()
    {
        var random = new Random(20261126);
        for (var length = 0; length <= 64; length++)
        {
            Assert.Empty(Ranked.Of(new byte[length]));
            Assert.Empty(Ranked.Of(TestBytes.All(0xFF, length)));
            for (var i = 0; i < 100; i++)
            {
                var file = new byte[length];
                random.NextBytes(file);
                Ranked.AssertUnsure(file, $"{length} random bytes");
            }
        }

        for (var value = 0; value <= 0xFF; value++)
            Assert.Empty(Ranked.Of([(byte)value]));
    }

    [Fact]
    public void Blank_files_match_nothing()
    {
        int[] odd = [0x0FF, 0x151, 0x7FFF, 0x8001, 0x80C3];
        foreach (var size in odd.Concat(Enumerable.Range(4, 19).SelectMany(static power => (int[])[1 << power, (1 << power) + 0x200])))
        {
            Assert.Empty(Ranked.Of(new byte[size]));
            Assert.Empty(Ranked.Of(TestBytes.All(0xFF, size)));
        }
    }

    // "Padded" data: something at the start, and nothing where headers and vectors would be.
    [Theory]
    [InlineData(0x00)]
    [InlineData(0xFF)]
    public void Blank_tails_prove_nothing(byte fill)
    {
        foreach (var head in (int[])[1, 0x10, 0x80, 0x101, 0x400, 0x2000, 0x6000])
        {
            for (var power = 10; power <= 21; power++)
            {
                var file = TestBytes.All(fill, 1 << power);
                TestBytes.L(Math.Min(head, file.Length / 2)).CopyTo(file, 0);
                Assert.Empty(Ranked.Of(file));
            }
        }
    }

    [Fact]
    public void Nothing_sure_is_said_of_random_data()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 6000; i++)
        {
            var block = new byte[random.Next(1, 65) << 10];
            random.NextBytes(block);
            Ranked.AssertUnsure(block, $"block {i}");
        }
    }

    // RESET fits half of all blocks, NMI (0x8000 + 0x600) in 0x10000, the opcode 10 in 256: about 1 in 100 together.
    [Fact]
    public void About_one_random_block_in_a_hundred_could_be_PRG()
    {
        const int Blocks = 6000;
        var random = new Random(20261127);
        var nes = PlatformCatalog.BuiltIn.Find("nes")!;
        var candidates = 0;
        for (var i = 0; i < Blocks; i++)
        {
            var block = new byte[random.Next(2, 9) << 13];
            random.NextBytes(block);
            candidates += nes.Recognise(block) is { Certainty: Certainty.Candidate } ? 1 : 0;
        }

        Assert.InRange(candidates, Blocks * 7 / 1000, Blocks * 14 / 1000);
    }

    [Theory]
    [InlineData("SEGA")]
    [InlineData(" SEGA MEGA DRIVE")]
    [InlineData("SEGA MEGA DRIVE ")]
    public void A_text_about_a_console_is_none_of_its_images(string words)
    {
        var text = new StringBuilder("Notes on the cartridge of the tide table, and on what stands in its header.\n");
        while (text.Length < 0x100)
            text.Append("line of text\n");

        var file = Encoding.ASCII.GetBytes(text.ToString(0, 0x100) + words + " stands here.\n" + text);
        Assert.Empty(Ranked.Of(file));
    }

    [Theory]
    [InlineData("/usr/bin")]
    [InlineData("/usr/lib")]
    [InlineData("/usr/share")]
    public void Nothing_sure_is_said_of_ordinary_files(string folder)
    {
        Assert.SkipUnless(Directory.Exists(folder), $"There is no {folder} here.");
        var everything = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.ReparsePoint };
        var files = new DirectoryInfo(folder).EnumerateFiles("*", everything)
            .Where(static file => file.Length is > 0 and <= LargestFile)
            .Select(static file => file.FullName)
            .Order(StringComparer.Ordinal)
            .ToImmutableArray();
        // Evenly from the whole folder, so that not all are of one kind.
        var step = Math.Max(1, files.Length / FilesAFolder);
        for (var i = 0; i < files.Length; i += step)
        {
            if (TryRead(files[i]) is { } bytes)
                Ranked.AssertUnsure(bytes, files[i]);
        }
    }

    // Looking at a large file must not copy it.
    [Theory]
    [InlineData(64 << 20)]
    [InlineData(8 << 20)]
    public void Large_files_are_not_copied_to_look_at_them(int length)
    {
        var file = new byte[length];
        TestBytes.L(0x20000).CopyTo(file, 0);
        TestBytes.L(0x20000).CopyTo(file, length - 0x20000);
        // The mode of an SNES image whose banks were taken apart.
        file[0x7FD5] = 0x21;
        Ranked.Of(file);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Ranked.Of(file);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1 << 20);
    }

    private static byte[]? TryRead(string path)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
