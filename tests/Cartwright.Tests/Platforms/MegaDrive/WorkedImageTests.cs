using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>A whole image against worked values, all computed by two independent programs.</summary>
public sealed class WorkedImageTests
{
    private static CartView Build()
    {
        var body = TestBytes.L(0x20000);
        var bench = new RomBench(MegaDriveBench.Platform) { Title = "TEST CARTRIDGE" }
            .Program("rom", 0, body[..0x100])
            .Program("rom", 0x200, body[0x200..])
            .Header("copyright", "(C)TEST 2026.JAN")
            .Header("devices", "3-button-pad, 6-button-pad")
            .Header("saveMemory", "8KiB battery odd");
        var cart = bench.TryAssemble()!;
        // The bytes before the header are no vectors: entry $0C5EC68E, stack $3C5E81B4.
        Assert.Equal(["CW4231", "CW4233"], bench.Codes());
        return cart;
    }

    [Fact]
    public void The_header_has_the_worked_digest()
    {
        var header = Build().Bytes("rom").Slice(0x100, 0x100).ToArray();
        header.AsSpan(0x8E, 2).Clear();
        Assert.Equal("4DAF6B87", TestBytes.Crc(header));
    }

    [Fact]
    public void The_image_and_its_chips_have_the_worked_digests()
    {
        var cart = Build();
        var image = cart.Bytes("rom");
        Assert.Equal(0x9EF4UL, cart.Headers[0].Checksums[0].Stored);
        Assert.Equal("8FAC83B0", TestBytes.Crc(image));

        var even = new byte[image.Length / 2];
        var odd = new byte[image.Length / 2];
        Lanes.Split2(image, even, odd);
        Assert.Equal("3D344879", TestBytes.Crc(even));
        Assert.Equal("2F7232B5", TestBytes.Crc(odd));

        var swapped = new byte[image.Length];
        WordSwap.Swap16(image, swapped);
        Assert.Equal("90174E09", TestBytes.Crc(swapped));
    }

    // The layout of "ROM header reference" and "ROM Cartridge Data", byte by byte.
    [Theory]
    [InlineData(0x100, "SEGA MEGA DRIVE ")]
    [InlineData(0x110, "(C)TEST 2026.JAN")]
    [InlineData(0x120, "TEST CARTRIDGE                                  ")]
    [InlineData(0x150, "TEST CARTRIDGE                                  ")]
    [InlineData(0x180, "GM 00000000-00")]
    [InlineData(0x190, "J6              ")]
    [InlineData(0x1BC, "                                                    JUE             ")]
    public void Each_text_stands_at_its_place(int offset, string text) =>
        Assert.Equal(text, System.Text.Encoding.ASCII.GetString(Build().Bytes("rom").Slice(offset, text.Length)));

    [Theory]
    [InlineData(0x1A0, "00000000 0001FFFF 00FF0000 00FFFFFF")]
    [InlineData(0x1B0, "5241F820 00200001 00203FFF")]
    [InlineData(0x18E, "9EF4")]
    public void Each_number_stands_at_its_place(int offset, string digits)
    {
        var bytes = MegaDriveBench.Hex(digits);
        Assert.Equal(bytes, Build().Bytes("rom").Slice(offset, bytes.Length).ToArray());
    }

    [Fact]
    public void Every_byte_of_the_header_belongs_to_one_row()
    {
        var table = MegaDriveBench.Platform.Layouts[0].Headers[0];
        Assert.Equal(0x100, table.Fields.Sum(field => field.Length) + table.Checksums.Sum(row => row.Length));
        var start = 0;
        foreach (var (offset, length) in table.Fields.Select(field => (field.Offset, field.Length)).Concat(table.Checksums.Select(row => (row.Offset, row.Length))).Order())
        {
            Assert.Equal(start, offset);
            start += length;
        }
    }

    [Fact]
    public void The_header_reads_back_as_it_was_stated()
    {
        var cart = Build();
        var read = HeaderReader.Read(cart.Headers[0].Table, cart.Bytes("rom"), new HeaderContext(null, null, _ => cart.Rom.LengthOf("rom")))!;
        Assert.Equal("SEGA MEGA DRIVE", read["systemType"]);
        Assert.Equal("TEST CARTRIDGE", read["domesticTitle"]);
        Assert.Equal("TEST CARTRIDGE", read["overseasTitle"]);
        Assert.Equal("GM 00000000", read["serial"]);
        Assert.Equal("0", read["revision"]);
        Assert.Equal("3-button-pad, 6-button-pad", read["devices"]);
        Assert.Equal("0x00000000", read["romStart"]);
        Assert.Equal("0x0001FFFF", read["romEnd"]);
        Assert.Equal("0x00FF0000", read["ramStart"]);
        Assert.Equal("0x00FFFFFF", read["ramEnd"]);
        Assert.Equal("8KiB battery odd", read["saveMemory"]);
        Assert.Equal("japan americas europe", read["region"]);
        Assert.Equal("", read["modem"]);
        Assert.Equal("", read["memo"]);
        Assert.Equal("", read["reserved"]);
        Assert.True(read.Checksums[0].Right);
    }
}
