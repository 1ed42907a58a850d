using System.Text;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;
using static Cartwright.Cli.Tests.Examples.Example;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>The example carts, whole: what they build to, and what tools from outside say of it.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Names => Example.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_record_is_the_approved_one(string name)
    {
        using var example = Build(name);
        Approved.Equal($"tests/cases/examples/{example.RecordName}", Encoding.UTF8.GetString(example.Read(example.RecordName)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Two_builds_give_the_same_bytes(string name)
    {
        using var first = Build(name);
        using var second = Build(name);
        Assert.Empty(Snapshot.Of(first.Output).Differences(Snapshot.Of(second.Output), new Redaction(first.Output)));
    }

    // Digests by coreutils, and the CRC-32 that a gzip file ends with (RFC 1952).
    [Theory]
    [MemberData(nameof(Names))]
    public void Digests_are_those_of_general_tools(string name)
    {
        using var example = Build(name);
        foreach (var file in example.Files)
        {
            var path = Text(file, "file");
            Assert.Equal(Text(file, "sha256"), Tool.Succeed("sha256sum", example.Output, path)[..64]);
            Tool.Succeed("gzip", example.Output, "--keep", "--no-name", path);
            var trailer = example.Read(path + ".gz").AsSpan()[^8..];
            Assert.Equal(Convert.ToUInt32(Text(file, "crc32"), 16), BitConverter.ToUInt32(trailer));
            Assert.Equal(file.GetProperty("size").GetInt64(), BitConverter.ToUInt32(trailer[4..]));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Text_formats_hold_the_chip_image_by_objcopy(string name)
    {
        using var example = Build(name);
        foreach (var file in example.Files.Where(static file => Text(file, "format") != "raw"))
        {
            var path = Text(file, "file");
            Tool.Succeed("objcopy", example.Output, "-I", Text(file, "format") == "s-record" ? "srec" : "ihex", "-O", "binary", path, "back.bin");
            Assert.Equal(example.Read(Path.ChangeExtension(path, "bin")), example.Read("back.bin"));
        }
    }

    // The lanes of a 16-bit big-endian bus: even bytes on the high lane.
    [Theory]
    [MemberData(nameof(Names))]
    public void Chips_side_by_side_hold_the_bytes_objcopy_takes_apart(string name)
    {
        using var example = Build(name);
        foreach (var chip in example.Chips.Where(static chip => Text(chip, "lane") != "word"))
        {
            var lane = Text(chip, "lane") == "high" ? 0 : 1;
            Tool.Succeed("objcopy", example.Output, "-I", "binary", "-O", "binary", "--interleave=2", $"--byte={lane}", example.RomFile, "lane.bin");
            Assert.Equal(example.Read("lane.bin"), example.Read(ChipFile(name, chip)));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_chip_larger_than_its_contents_repeats_them(string name)
    {
        using var example = Build(name);
        foreach (var chip in example.Chips.Where(static chip => Text(chip, "fill") == "repeat"))
        {
            var bytes = example.Read(ChipFile(name, chip));
            var contents = (int)chip.GetProperty("contents").GetInt64();
            Assert.Equal(chip.GetProperty("capacity").GetInt64(), bytes.Length);
            Assert.All(bytes.Chunk(contents), part => Assert.Equal(bytes[..contents], part));
        }
    }

    [Theory]
    [InlineData("lantern-tide-32x", "Sega 32X ROM image: \"LANTERN TIDE")]
    [InlineData("lantern-tide-vectrex", "Vectrex ROM image: \"LANTERN TIDE")]
    [InlineData("lantern-tide-gb", "Game Boy ROM image: \"LANTERN TIDE\" (Rev.00) [MBC5], ROM: 256Kbit")]
    [InlineData("lantern-tide-gba", "Game Boy Advance ROM image: \"LANTERN TIDE\" (ALTEQM, Rev.00)")]
    [InlineData("lantern-tide-gg", "Sega Game Gear ROM image: 2026 (Rev.00) (32 KB)")]
    [InlineData("lantern-tide-md", "Sega Mega Drive / Genesis ROM image: \"LANTERN TIDE")]
    [InlineData("lantern-tide-msx", "MSX ROM, init=0x4010")]
    [InlineData("lantern-tide-sms", "Sega Master System ROM image: 1126 (Rev.00) (32 KB)")]
    [InlineData("lantern-tide-nes", "NES ROM image (iNES) (NES 2.0): 1x16k PRG, 1x8k CHR [V-mirror]")]
    public void The_file_command_recognises_the_ROM(string name, string words)
    {
        using var example = Build(name);
        Assert.Contains(words, Tool.Succeed("file", example.Output, "--brief", example.RomFile), StringComparison.Ordinal);
    }

    private static string ChipFile(string name, System.Text.Json.JsonElement chip) => $"{name}.{Text(chip, "site")}.bin";
}
