using Cartwright.Platforms;
using Cartwright.Platforms.MegaDrive;
using Cartwright.Roms;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Platforms.Sega32X;

public sealed class Sega32XCheckTests
{
    // ROM header reference for the header; 32X start-up code for the entry.
    [Fact]
    public void A_clean_cart_has_no_findings_and_the_Mega_Drives_header()
    {
        var bench = Sega32XPrograms.Bench();
        var cart = bench.Assemble();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("SEGA 32X        "u8, cart.Bytes("rom").Slice(0x100, 16));
        Assert.Equal("0x0001FFFF", cart["romEnd"]);
        Assert.Equal(MegaDriveChecksum.Compute(cart.Bytes("rom")), cart.Headers[1].Checksums[0].Stored);
        Assert.True(cart.Headers[1].Checksums[0].Right);
        Assert.Equal(("MARS CHECK MODE", "0x00001000", "0x06000240"), (cart["moduleName"], cart["codeSource"], cart["masterStart"]));
    }

    [Fact]
    public void The_rows_of_the_Mega_Drive_are_shared() =>
        Assert.Equal(
            new MegaDrivePlatform().Layouts[0].Headers[0].Fields.Select(field => (field.Name, field.Offset, field.Length, field.Codec.GetType())),
            new Sega32XPlatform().Layouts[0].Headers[1].Fields.Select(field => (field.Name, field.Offset, field.Length, field.Codec.GetType())));

    [Theory]
    [InlineData(null)]
    [InlineData(true)]
    [InlineData(false)]
    public void The_module_header_and_the_start_up_block_stay_as_they_are(bool? keep)
    {
        var program = Sega32XPrograms.Program();
        var rom = Sega32XPrograms.Bench(program).Keep(keep).Assemble().Rom();
        Assert.Equal(program[0x200..], rom[0x200..]);
        Assert.Equal(program[..0x100], rom[..0x100]);
    }

    [Fact]
    public void Nothing_is_made_where_no_program_is()
    {
        var bench = Sega32XPrograms.Empty().Program("rom", 0, Sega32XPrograms.Program()[..0x100]).Program("rom", 0x800, TestBytes.L(0x100));
        var rom = bench.Assemble().Rom();
        Assert.Equal(TestBytes.All(0xFF, 0x600), rom[0x200..0x800]);
        Assert.Equal(["CW4590", "CW4594"], bench.Codes());
    }

    [Theory]
    [InlineData(0x00)]
    [InlineData(0xFF)]
    public void A_blank_start_up_block(byte value)
    {
        var program = Sega32XPrograms.Program();
        program.AsSpan(0x3F0, 0x410).Fill(value);
        Only("CW4590", Sega32XPrograms.Bench(program));
    }

    [Fact]
    public void A_start_up_block_with_a_hole() =>
        Only("CW4591", Sega32XPrograms.Empty().Program("rom", 0, Sega32XPrograms.Program()[..0x7F0]).Program("rom", 0x800, TestBytes.L(0x100)));

    // The user's own copy beside the program's: equal bytes are told, a difference stops the build.
    [Theory]
    [InlineData(0x00)]
    [InlineData(0x01)]
    public void A_second_copy_is_compared(byte change)
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        var copy = Sega32XPrograms.Program()[0x3F0..0x800];
        copy[0x200] ^= change;
        bench.Write("main.bin", Sega32XPrograms.Program());
        bench.Write("copy.bin", copy);
        bench.Manifest("""
            {
              "cart": { "name": "lantern-tide", "platform": "32x" },
              "programs": [ { "file": "main.bin", "offset": "0" }, { "file": "copy.bin", "as": "startUp" } ]
            }
            """);
        var expected = change == 0 ? RomFindings.SameTwice.Code : RomFindings.Overlap.Code;
        Assert.Contains(expected, bench.Build().Findings.Select(finding => finding.Code));
        Assert.Equal(change != 0, bench.Build().HasErrors);
    }

    [Fact]
    public void A_block_of_two_programs()
    {
        var bench = Sega32XPrograms.Empty().Program("rom", 0, Sega32XPrograms.Program()[..0x3F0]).Program("rom", 0x800, TestBytes.L(0x100));
        bench.Program("rom", 0x3F0, TestBytes.L(0x210), "first.bin").Program("rom", 0x600, TestBytes.L(0x200), "second.bin");
        Only("CW4591", bench);
    }

    [Theory]
    [InlineData(0x004, "00000800", "CW4592")]
    [InlineData(0x004, "FF0003F0", null)]
    [InlineData(0x078, "00000202", null)]
    [InlineData(0x078, "00000000", null)]
    [InlineData(0x078, "00880A00", "CW4593")]
    [InlineData(0x0FC, "000003C0", "CW4593")]
    [InlineData(0x3C0, "4C414E5445524E20", "CW4595")]
    [InlineData(0x3D4, "0001E000", null)]
    [InlineData(0x3D4, "0001E004", "CW4596")]
    [InlineData(0x3DC, "FFFFFFFF", "CW4596")]
    [InlineData(0x3E0, "06000241", "CW4597")]
    [InlineData(0x3E4, "02020000", "CW4597")]
    [InlineData(0x3E4, "0201FFFE", null)]
    public void Bytes(int at, string digits, string? code) => Only(code, Sega32XPrograms.Bench(Sega32XPrograms.Changed((at, digits))));

    [Fact]
    public void No_module_header()
    {
        var program = Sega32XPrograms.Program();
        program.AsSpan(0x3C0, 0x30).Clear();
        Only("CW4594", Sega32XPrograms.Bench(program));
    }

    [Fact]
    public void A_blank_module_header_may_be_stated()
    {
        var program = Sega32XPrograms.Program();
        program.AsSpan(0x3C0, 0x30).Clear();
        var bench = Sega32XPrograms.Bench(program).Header("moduleName", "MARS CHECK MODE").Header("codeSource", "0x1000").Header("codeLength", "0x2000")
            .Header("masterStart", "$06000240").Header("slaveStart", "$06000244").Header("masterVectors", "$06000000").Header("slaveVectors", "$06000120");
        var cart = bench.Assemble();
        Assert.Equal(Sega32XPrograms.Program()[0x3C0..0x3F0], cart.Rom()[0x3C0..0x3F0]);
        // The checksum covers what was just written.
        Assert.Equal(MegaDriveChecksum.Compute(cart.Bytes("rom")), cart.Headers[1].Checksums[0].Stored);
        Assert.Empty(bench.Log.ToSorted());
    }

    [Fact]
    public void Nothing_behind_the_start_up_block() => Only("CW4598", Sega32XPrograms.Empty().Program("rom", 0, Sega32XPrograms.Changed((0x3DC, "00000000"))[..0x800]));

    [Theory]
    [InlineData("SEGA GENESIS", "CW4599")]
    [InlineData("SEGA 32X", null)]
    [InlineData("QUILLMOOR", "CW4234")]
    public void System_types(string text, string? code) => Only(code, Sega32XPrograms.Bench().Header("systemType", text));

    // The Mega Drive's own checks hold here too.
    [Theory]
    [InlineData(0x000, "00200000", "CW4233")]
    [InlineData(0x1B0, "5241F8200020000000203FFF", "CW4246")]
    public void Checks_of_the_Mega_Drive(int at, string digits, string code) => Only(code, Sega32XPrograms.Bench(Sega32XPrograms.Changed((at, digits))));

    [Theory]
    [InlineData("$000800", 0x800)]
    [InlineData("$3FFFFE", 0x3FFFFE)]
    [InlineData("$880800", 0x800)]
    [InlineData("$8FFFFF", 0x7FFFF)]
    [InlineData("00:900000", 0)]
    [InlineData("03:9FFFFF", 0x3FFFFF)]
    [InlineData("$02000000", 0)]
    [InlineData("$023FFFFF", 0x3FFFFF)]
    public void Addresses(string text, long offset) => Assert.Equal(("rom", offset), (Locate(text).Region, Locate(text).Offset));

    [Theory]
    [InlineData("$900000", "say which")]
    [InlineData("04:900000", "pieces go from 00 to 03")]
    [InlineData("00:880000", "pieces go from 00 to 03")]
    [InlineData("$06000000", "SH-2 processors' RAM")]
    [InlineData("$FF0000", "work RAM")]
    [InlineData("$400000", "expansion side")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData(0x7FE, false)]
    [InlineData(0x800, true)]
    [InlineData(0x801, false)]
    [InlineData(3 << 20, true)]
    [InlineData((4 << 20) + 2, false)]
    public void Sizes(long size, bool isLegal) => Assert.Equal(isLegal, new Sega32XPlatform().Layouts[0].Regions[0].Sizes.Allows(size));

    [Fact]
    public void A_general_tool_recognises_a_build()
    {
        Tool.Require("file");
        using var folder = new TempFolder();
        folder.Write("lantern-tide.32x", Sega32XPrograms.Bench().Assemble().Rom());
        Assert.Contains("32X", Tool.Succeed("file", folder.Path, "--brief", "lantern-tide.32x"), StringComparison.Ordinal);
    }

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new Sega32XPlatform().Layouts[0].Addresses.Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes().Distinct());
    }
}
