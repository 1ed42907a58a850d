using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>What the command makes of the examples, held against general-purpose tools.</summary>
public sealed class ExampleOutputTests
{
    public static TheoryData<string> Names => ExampleCart.Names;

    [Fact]
    public void There_is_one_example_a_platform() =>
        Assert.Equal(["lantern-tide-gb", "lantern-tide-md", "lantern-tide-nes", "lantern-tide-snes"], Names.Select(static row => row.Data));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_record_is_as_approved(string name)
    {
        using var temp = new TempFolder();
        ExampleCart.Build(name, temp.Path);
        var record = Encoding.UTF8.GetString(temp.Read(name + ".record.json"));
        Approved.Equal($"tests/cases/examples/{name}.record.json", new Redaction(temp.Path).Text(record));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Two_builds_are_the_same_to_the_byte(string name)
    {
        using var first = new TempFolder();
        using var second = new TempFolder();
        ExampleCart.Build(name, first.Path);
        ExampleCart.Build(name, second.Path);
        var tree = Snapshot.Of(first.Path);
        Assert.NotEmpty(tree.ChangedSince(Snapshot.Of(ExampleCart.Folder(name))));
        Assert.Empty(Snapshot.Of(second.Path).Differences(tree, new Redaction(second.Path)));
    }

    // coreutils sha256sum; the CRC-32 and the size that gzip writes behind its data (RFC 1952, 2.3.1).
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_digest_is_that_of_other_tools(string name)
    {
        Tool.Require("sha256sum");
        Tool.Require("gzip");
        using var temp = new TempFolder();
        var files = ExampleCart.Build(name, temp.Path);
        var sums = Tool.Succeed("sha256sum", temp.Path, [.. files.Keys]).Split('\n', StringSplitOptions.RemoveEmptyEntries).ToDictionary(static line => line[66..], static line => line[..64]);
        Tool.Succeed("gzip", temp.Path, ["--fast", "--keep", .. files.Keys]);
        foreach (var (file, stated) in files)
        {
            var trailer = temp.Read(file + ".gz").AsSpan()[^8..];
            Assert.Equal(sums[file], stated.GetProperty("sha256").GetString());
            Assert.Equal(BinaryPrimitives.ReadUInt32LittleEndian(trailer).ToString("X8", CultureInfo.InvariantCulture), stated.GetProperty("crc32").GetString());
            Assert.Equal(BinaryPrimitives.ReadUInt32LittleEndian(trailer[4..]), stated.GetProperty("size").GetUInt32());
        }
    }

    // `file` (libmagic) knows three of the four kinds; the SNES header is looked at in the next test.
    [Theory]
    [InlineData("lantern-tide-gb", "Game Boy ROM image: \"LANTERN TIDE\" (Rev.00) [MBC5], ROM: 256Kbit")]
    [InlineData("lantern-tide-md", "Sega Mega Drive / Genesis ROM image: \"LANTERN TIDE    \" (GM 00000000-00, (C)QLMR 2026.NOV)")]
    [InlineData("lantern-tide-nes", "NES ROM image (iNES) (NES 2.0): 1x16k PRG, 1x8k CHR [V-mirror] [NTSC]")]
    public void Another_tool_recognises_the_rom(string name, string words)
    {
        Tool.Require("file");
        using var temp = new TempFolder();
        ExampleCart.Build(name, temp.Path);
        Assert.Equal(words, Tool.Succeed("file", temp.Path, "--brief", Path.GetFileName(ExampleCart.Rom(temp.Path))).TrimEnd());
    }

    // SNESdev Wiki, ROM header: title at $FFC0; checksum and complement are each other's inverse, and the sum counts every byte.
    [Fact]
    public void The_snes_rom_shows_its_title_and_sums_to_its_checksum()
    {
        using var temp = new TempFolder();
        ExampleCart.Build("lantern-tide-snes", temp.Path);
        var rom = File.ReadAllBytes(ExampleCart.Rom(temp.Path));
        var sum = 0;
        foreach (var value in rom)
        {
            sum += value;
        }

        Assert.Equal("LANTERN TIDE         ", Encoding.ASCII.GetString(rom, 0x7FC0, 21));
        Assert.Equal(sum & 0xFFFF, BinaryPrimitives.ReadUInt16LittleEndian(rom.AsSpan(0x7FDE)));
        Assert.Equal(~sum & 0xFFFF, BinaryPrimitives.ReadUInt16LittleEndian(rom.AsSpan(0x7FDC)));
    }
}
