using Cartwright.Headers;
using Cartwright.Platforms.GameBoy;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyChecksumTests
{
    private static readonly byte[] WorkedFields = Convert.FromHexString("434152545752494748540000000000803030031B000201" + "3300");

    // Worked value, two independent programs: byte i = 5 i + (i >> 8), the entry and fields as here, no bitmap.
    [Fact]
    public void The_worked_image_without_bitmap_has_the_worked_sums()
    {
        var rom = Worked();
        Assert.Equal(0xB4, GameBoyChecksums.Header(rom.AsSpan(0x100)));
        rom[0x14D] = 0xB4;
        Assert.Equal(0xA4F3, GameBoyChecksums.Global(rom));
    }

    // The same with the bitmap, built from settings.
    [Fact]
    public void The_worked_image_with_bitmap_comes_out_of_its_settings()
    {
        var rom = Worked();
        rom.AsSpan(0x134, 0x1C).Clear();
        var cart = new RomBench(new GameBoyPlatform()) { Title = "CARTWRIGHT" }.Program("rom", 0, rom)
            .Header("cgbFlag", "compatible").Header("newLicensee", "00").Header("sgbFlag", "sgb").Header("cartridgeType", "mbc5-ram-battery")
            .Header("saveRam", "8KiB").Header("destination", "overseas").Assemble();
        Assert.Equal(WorkedFields, cart.Bytes("rom").Slice(0x134, WorkedFields.Length));
        Assert.Equal([0xB4, 0xBA, 0x39], cart.Bytes("rom").Slice(0x14D, 3).ToArray());
    }

    // Worked values, two independent programs.
    [Theory]
    [InlineData(0x00, 0xE7)]
    [InlineData(0xFF, 0x00)]
    public void Headers_that_are_all_alike_have_the_worked_checksums(byte value, byte expected) =>
        Assert.Equal(expected, GameBoyChecksums.Header(TestBytes.All(value, 0x50)));

    // The loop as Pan Docs (The Cartridge Header) gives it.
    [Property]
    public void The_header_checksum_is_the_documented_loop(byte[] noise)
    {
        var header = new byte[0x50];
        noise.AsSpan(0, Math.Min(noise.Length, header.Length)).CopyTo(header);
        var x = (byte)0;
        for (var address = 0x34; address <= 0x4C; address++)
            x = unchecked((byte)(x - header[address] - 1));

        Assert.Equal(x, GameBoyChecksums.Header(header));
    }

    // The definition: every byte but the two at 0x14E, added one by one.
    [Property]
    public void The_global_checksum_is_the_sum_of_all_other_bytes(int seed)
    {
        var rom = new byte[0x8000];
        new Random(seed).NextBytes(rom);
        var sum = (ushort)0;
        for (var i = 0; i < rom.Length; i++)
            sum += i is 0x14E or 0x14F ? (byte)0 : rom[i];

        Assert.Equal(sum, GameBoyChecksums.Global(rom));
    }

    [Theory]
    [InlineData(0x8000)]
    [InlineData(0x20000)]
    public void What_is_stored_is_what_is_computed(int length)
    {
        var bench = Programs.Bench(length);
        var cart = length == 0x8000 ? bench.Assemble() : bench.Header("cartridgeType", "mbc5").Assemble();
        Assert.All(Read(cart.Bytes("rom").ToArray()).Checksums, entry => Assert.True(entry.Right, entry.Row.Name));
    }

    [Property]
    public void Any_changed_byte_shows(ushort at, byte change)
    {
        var rom = Programs.Bench().Assemble().Bytes("rom").ToArray();
        at &= 0x7FFF;
        rom[at] ^= (byte)(change | 1);
        var checksums = Read(rom).Checksums;
        Assert.False(checksums.Single(entry => entry.Row.Name == "globalChecksum").Right);
        Assert.Equal(at is < 0x134 or > 0x14D, checksums.Single(entry => entry.Row.Name == "headerChecksum").Right);
    }

    [Property]
    public void Any_changed_header_byte_shows_in_the_enforced_checksum(byte at, byte change)
    {
        var rom = Programs.Bench().Assemble().Bytes("rom").ToArray();
        rom[0x134 + (at % 26)] ^= (byte)(change | 1);
        Assert.False(Read(rom).Checksums.Single(entry => entry.Row.Enforced).Right);
    }

    [Fact]
    public void A_stale_checksum_of_the_program_is_written_over_with_a_note()
    {
        var bench = Programs.Changed(0x14D, 0x12, 0x34, 0x56);
        var rom = bench.Assemble().Bytes("rom").ToArray();
        Assert.Equal([HeaderFindings.WrittenOver.Code, HeaderFindings.WrittenOver.Code], bench.Codes());
        Assert.All(Read(rom).Checksums, entry => Assert.True(entry.Right));
    }

    internal static HeaderImage Read(byte[] rom) => HeaderReader.Read(GameBoyHeader.Main, rom, new HeaderContext(null, null, _ => rom.Length))!;

    private static byte[] Worked()
    {
        var rom = TestBytes.GameBoy(0x8000);
        rom.AsSpan(0x104, 0x4C).Clear();
        Programs.Entry.CopyTo(rom.AsSpan(0x100));
        WorkedFields.CopyTo(rom, 0x134);
        return rom;
    }
}
