using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Commodore;
using Cartwright.Roms;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class CrtTests
{
    // Worked by two programs from the CRT file format: L(2000h) and L(4000h) named TESTCART.
    [Theory]
    [InlineData("8k", 0x2000, 8272, "0E4F3AFD")]
    [InlineData("16k", 0x4000, 16464, "850F1985")]
    public void Worked_containers(string mapping, int size, int length, string crc)
    {
        var file = Untouched(new RomBench(new C64Platform()) { Title = "TESTCART" }.Header("mapping", mapping).Program("rom", 0, TestBytes.L(size)), new C64Platform());
        Assert.Equal((length, crc), (file.Length, TestBytes.Crc(file)));
    }

    [Fact]
    public void The_packet_of_a_ROM_of_8_KiB() =>
        Assert.Equal("43484950000020100000000080002000", Convert.ToHexString(C64().Assemble().File(new C64Platform()).AsSpan(0x40, 0x10)));

    // Worked by two programs from the CRT file format.
    [Fact]
    public void A_container_of_the_VIC_20()
    {
        var file = Vic20().Assemble().File(new Vic20Platform());
        Assert.Equal(8272, file.Length);
        Assert.StartsWith("564943323020434152545249444745200000004002000000000000", Convert.ToHexString(file), StringComparison.Ordinal);
        Assert.Equal("434849500000201000000000A0002000", Convert.ToHexString(file.AsSpan(0x40, 0x10)));
    }

    [Theory]
    [InlineData("8k", 0x2000, "0:8000")]
    [InlineData("16k", 0x4000, "0:8000")]
    [InlineData("type-5", 0x8000, "0:8000 1:8000 2:8000 3:8000")]
    [InlineData("type-8", 0x10000, "0:8000 1:8000 2:8000 3:8000")]
    public void Packets(string mapping, int size, string packets) => Assert.Equal(packets, Words(C64(mapping, size).Assemble()));

    [Fact]
    public void Packets_for_the_top_of_the_addresses()
    {
        Assert.Equal("0:E000", Words(Ultimax().Assemble()));
        Assert.Equal("0:8000 0:E000", Words(Ultimax("ultimax-16k", 0x4000).Assemble()));
        Assert.StartsWith("0:8000 0:A000 1:8000 1:A000", Words(Ultimax("type-32", 0x100000).Assemble()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0x40000, 0xA000, 0, 0)]
    [InlineData(0x20000, 0x8000, 0, 1)]
    [InlineData(0x80000, 0x8000, 0, 1)]
    public void Only_with_256_KiB_the_upper_banks_are_at_A000(int size, int address, int exrom, int game)
    {
        var container = CrtFile.Read(C64("type-5", size).Assemble().File(new C64Platform()), "C64 CARTRIDGE")!;
        Assert.Equal((size / 0x2000, address, new CrtLines(exrom, game)), (container.Runs.Length, container.Runs[^1].Packet.Address, container.Lines));
        Assert.Equal((5, 0x8000), (container.Hardware, container.Runs[(container.Runs.Length / 2) - 1].Packet.Address));
    }

    [Fact]
    public void A_ROM_of_4_KiB_fills_its_packet_twice()
    {
        var cart = Ultimax(size: 0x1000).Assemble();
        var file = cart.File(new C64Platform());
        Assert.Equal(0x50 + 0x2000, file.Length);
        Assert.Equal([.. cart.Rom(), .. cart.Rom()], file[0x50..]);
    }

    // A packet that is not there reads as FF.
    [Fact]
    public void Blank_banks_have_no_packets()
    {
        var bench = new RomBench(new C64Platform()).Header("mapping", "type-32").Program("rom", 0, Noise(0x4000, 0x3FFA, "00E000E000E0")).Program("rom", 0x14000, [0x12]);
        var container = CrtFile.Read(bench.Assemble().File(new C64Platform()), "C64 CARTRIDGE")!;
        Assert.Equal("0:8000 0:A000 5:8000", string.Join(' ', container.Runs.Select(run => $"{run.Packet.Bank}:{run.Packet.Address:X4}")));
        Assert.All(container.Runs, run => Assert.Equal(CrtPacket.Flash, run.Packet.Kind));
    }

    [Theory]
    [InlineData("8k", 0x2000)]
    [InlineData("16k", 0x4000)]
    [InlineData("ultimax", 0x2000)]
    [InlineData("ultimax-16k", 0x4000)]
    [InlineData("type-5", 0x40000)]
    [InlineData("type-7", 0x20000)]
    [InlineData("type-8", 0x10000)]
    [InlineData("type-15", 0x80000)]
    [InlineData("type-17", 0x20000)]
    [InlineData("type-19", 0x100000)]
    [InlineData("type-32", 0x100000)]
    public void The_packets_at_their_addresses_are_the_ROM(string mapping, int size)
    {
        var own = C64Mappings.Named(mapping);
        var cart = (own.Vectors is null ? C64(mapping, size) : Ultimax(mapping, size)).Assemble();
        var file = cart.File(new C64Platform());
        var rom = TestBytes.All(0xFF, size);
        foreach (var run in CrtFile.Read(file, "C64 CARTRIDGE")!.Runs)
        {
            var place = own.Addresses.Locate(new ConsoleAddress(run.Packet.Bank > 0 ? run.Packet.Bank : null, run.Packet.Address), _ => null);
            file.AsSpan(run.Start, run.Length).CopyTo(rom.AsSpan((int)(place.Offset < 0 ? size + place.Offset : place.Offset)));
        }

        Assert.Equal(cart.Rom(), rom);
        Assert.Equal(mapping, new C64Platform().Recognise(file)!.Variant);
    }

    [Property]
    public void A_packet_is_read_as_it_was_written(ushort kind, ushort bank, ushort address, ushort size)
    {
        var packet = new CrtPacket(kind, bank, address, size);
        Assert.Equal(packet, CrtPacket.Read(packet.ToBytes(), out var total));
        Assert.Equal(CrtPacket.HeaderLength + size, total);
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_container(byte exrom, byte game, ushort version, byte reserved)
    {
        var file = C64().Header("exrom", $"0x{exrom:X2}").Header("game", $"0x{game:X2}").Header("version", $"0x{version:X4}").Header("reserved", $"{reserved:X2}0000000000").Assemble().File(new C64Platform());
        var again = C64();
        foreach (var entry in HeaderReader.Read(CrtHeader.ForC64(C64Mappings.Named("8k")), file, new HeaderContext(null, null, _ => 0x2000))!.Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(file, again.Assemble().File(new C64Platform()));
    }

    // Some files have 20 as the header's length and are as long as all others.
    [Fact]
    public void A_wrong_header_length_is_read()
    {
        var file = C64().Assemble().File(new C64Platform());
        file[0x13] = 0x20;
        Assert.Equal(0x2000, Assert.Single(CrtFile.Read(file, "C64 CARTRIDGE")!.Runs).Length);
    }

    [Theory]
    [InlineData(0x40, 0, 0)]
    [InlineData(0x4F, 0, 0)]
    [InlineData(0x50, 1, 0x2000)]
    [InlineData(0x1050, 1, 0x1000)]
    public void A_container_that_was_cut(int length, int packets, int missing)
    {
        var container = CrtFile.Read(C64().Assemble().File(new C64Platform()).AsSpan(0, length), "C64 CARTRIDGE")!;
        Assert.Equal((packets, missing), (container.Runs.Length, (int)container.Missing));
        Assert.Equal(missing > 0, container.Words.Contains("missing", StringComparison.Ordinal));
    }

    // It reads the two lines as levels, which is the reading that is in doubt.
    [Theory]
    [InlineData("8k", 0x2000, ", 8 KB game")]
    [InlineData("16k", 0x4000, ", 16 KB game")]
    [InlineData("ultimax", 0x2000, ", UltiMax mode")]
    [InlineData("ultimax-16k", 0x4000, ", UltiMax mode")]
    public void The_file_command_knows_the_container(string mapping, int size, string words)
    {
        using var folder = new TempFolder();
        var cart = (mapping.StartsWith('u') ? Ultimax(mapping, size) : C64(mapping, size)).Assemble();
        folder.Write("game.crt", cart.File(new C64Platform()));
        Assert.Equal($"Commodore 64 cartridge: \"LANTERN TIDE\"{words}", Tool.Succeed("file", folder.Path, "--brief", "game.crt").Trim());
    }

    [Fact]
    public void The_file_command_knows_the_containers_of_the_others()
    {
        using var folder = new TempFolder();
        folder.Write("c128.crt", C128().Assemble().File(new C128Platform()));
        folder.Write("vic20.crt", Vic20().Assemble().File(new Vic20Platform()));
        Assert.Contains("Commodore 128 cartridge: \"LANTERN TIDE\"", Tool.Succeed("file", folder.Path, "--brief", "c128.crt"), StringComparison.Ordinal);
        Assert.Contains("Commodore VIC-20 cartridge: \"LANTERN TIDE\"", Tool.Succeed("file", folder.Path, "--brief", "vic20.crt"), StringComparison.Ordinal);
    }

    private static string Words(CartView cart) =>
        string.Join(' ', CrtFile.Read(cart.File(new C64Platform()), "C64 CARTRIDGE")!.Runs.Select(run => $"{run.Packet.Bank}:{run.Packet.Address:X4}"));

    // The worked examples have no header in the ROM, which is an error and not in the way.
    private static byte[] Untouched(RomBench bench, Platform platform) => bench.TryAssemble()!.File(platform);
}
