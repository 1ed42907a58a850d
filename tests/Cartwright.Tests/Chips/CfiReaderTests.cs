using Cartwright.Chips;
using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class CfiReaderTests
{
    // Offsets 2C-3C and 40-46: M29FxxxFT/FB data sheet, device geometry; 10-1F: ES29LV160F and ES29LV160D data sheets; 20-2B from memory.
    private static readonly byte[] BottomBoot = Table("""
        10 51 52 59 02 00 40 00 00 00 00 00 27 36 00 00 04
        20 00 0A 00 05 00 04 00 15 02 00 00 00 04 00 00 40
        30 00 01 00 20 00 00 00 80 00 1E 00 00 01
        40 50 52 49 31 30 00 02
        """);

    [Fact]
    public void The_table_of_a_bottom_boot_part_of_2_MiB_is_decoded()
    {
        var query = Read(BottomBoot, null, "CW5553")!;
        Assert.Equal((2, 0x200000L, PartDataBus.Selectable), (query.CommandSet, query.CapacityBytes, query.DataBus));
        Assert.Equal((2.7, 3.6), query.SupplyVolts);
        Assert.Null(query.ProgrammingVolts);
        Assert.Equal(new CfiTime(16, 512), query.UnitMicroseconds);
        Assert.Equal(new CfiTime(1024, 16384), query.SectorMilliseconds);
        Assert.Null(query.BufferMicroseconds);
        Assert.Null(query.ChipMilliseconds);
        Assert.Equal(0, query.BufferBytes);
        Assert.Equal([new SectorGroup(1, 16384), new SectorGroup(2, 8192), new SectorGroup(1, 32768), new SectorGroup(31, 65536)], query.Map);
        Assert.Equal(("1.0", null), (query.ExtendedVersion, query.Boot));
        Assert.Equal("single bytes", query.Spacing);
    }

    // The same data sheet: 0E, 06 and 02 at 39h for the sisters of 1 MiB, 512 KiB and 256 KiB.
    [Theory]
    [InlineData(0x14, 0x0E, 15)]
    [InlineData(0x13, 0x06, 7)]
    [InlineData(0x12, 0x02, 3)]
    public void Its_sisters_differ_in_one_region(byte power, byte last, int sectors)
    {
        var table = BottomBoot.ToArray();
        (table[0x27], table[0x39]) = (power, last);
        Assert.Equal(new SectorGroup(sectors, 65536), Read(table, null, "CW5553")!.Map[^1]);
    }

    [Theory]
    [InlineData(2, true, false, "16-bit words, low byte first")]
    [InlineData(2, false, false, "16-bit words, high byte first")]
    [InlineData(2, true, true, "16-bit words, each byte doubled")]
    [InlineData(1, true, false, "single bytes")]
    public void The_bytes_may_lie_as_the_bus_was(int stride, bool lowFirst, bool doubled, string spacing)
    {
        var dump = new byte[BottomBoot.Length * stride];
        for (var i = 0; i < BottomBoot.Length; i++)
        {
            dump[(i * stride) + (lowFirst ? 0 : 1)] = BottomBoot[i];
            dump[(i * stride) + (doubled ? 1 : 0)] = doubled ? BottomBoot[i] : dump[i * stride];
        }

        Assert.Equal(spacing, Read(dump, null, "CW5553")!.Spacing);
        Assert.Equal(Read(BottomBoot, null, "CW5553")!.Map, Read(dump, null, "CW5553")!.Map);
        Assert.Equal(Read(BottomBoot, null, "CW5553")!.Map, Read(dump[(0x10 * stride)..], null, "CW5553")!.Map);
    }

    [Fact]
    public void Sectors_of_a_top_boot_part_that_stand_the_other_way_are_turned_round()
    {
        var table = BottomBoot.ToArray();
        Array.Resize(ref table, 0x50);
        (table[0x44], table[0x4F]) = ((byte)'1', 3);
        Assert.Equal(("31x64KiB 32KiB 2x8KiB 16KiB", BootEnd.Top), (Map(table, null, "CW5554"), Read(table, null, "CW5554")!.Boot));
        Assert.Equal("16KiB 2x8KiB 32KiB 31x64KiB", Map(table, BootEnd.Bottom, ""));
        table[0x4F] = 2;
        Assert.Equal("16KiB 2x8KiB 32KiB 31x64KiB", Map(table, null, ""));
        table[0x4F] = 7;
        Assert.Equal("16KiB 2x8KiB 32KiB 31x64KiB", Map(table, null, "CW5553"));
        Assert.Equal("31x64KiB 32KiB 2x8KiB 16KiB", Map(BottomBoot, BootEnd.Top, "CW5554"));
    }

    [Fact]
    public void Sectors_of_a_top_boot_part_that_stand_right_stay()
    {
        var table = BottomBoot.ToArray();
        Array.Resize(ref table, 0x50);
        (table[0x44], table[0x4F]) = ((byte)'1', 3);
        for (var region = 0; region < 4; region++)
        {
            BottomBoot.AsSpan(0x2D + (region * 4), 4).CopyTo(table.AsSpan(0x2D + ((3 - region) * 4)));
        }

        Assert.Equal("31x64KiB 32KiB 2x8KiB 16KiB", Map(table, null, ""));
    }

    [Fact]
    public void A_chip_with_a_buffer_and_a_programming_voltage_is_decoded()
    {
        var table = BottomBoot.ToArray();
        (table[0x13], table[0x14], table[0x1D], table[0x1E], table[0x20], table[0x22], table[0x24], table[0x2A]) = (1, 7, 0xB5, 0xC5, 8, 15, 3, 5);
        var query = Read(table, BootEnd.Bottom, "CW5555")!;
        Assert.Equal((11.5, 12.5), query.ProgrammingVolts);
        Assert.Equal((32, new CfiTime(256, 2048)), (query.BufferBytes, query.BufferMicroseconds));
        Assert.Equal(new CfiTime(32768, null), query.ChipMilliseconds);
    }

    [Fact]
    public void A_region_size_of_zero_stands_for_128_bytes_and_no_region_for_the_whole_chip()
    {
        var table = BottomBoot.ToArray();
        (table[0x27], table[0x2C], table[0x2D], table[0x2F]) = (9, 1, 3, 0);
        Assert.Equal("4x128", Map(table, null, ""));
        table[0x2C] = 0;
        Assert.Equal("", Map(table, null, ""));
    }

    [Theory]
    [InlineData(0x27, 0x16)]
    [InlineData(0x27, 0xFF)]
    [InlineData(0x27, 0x00)]
    [InlineData(0x2C, 0x03)]
    [InlineData(0x39, 0xFF)]
    [InlineData(0x3C, 0xFF)]
    public void A_size_that_is_not_that_of_the_sectors_is_refused(int at, byte value)
    {
        var table = BottomBoot.ToArray();
        table[at] = value;
        Assert.Null(Read(table, null, "CW5552"));
    }

    [Fact]
    public void A_dump_that_ends_in_the_table_is_refused_wherever_it_ends()
    {
        for (var length = 0; length < 0x3D; length++)
        {
            Assert.Null(Read(BottomBoot[..length], null, length < 0x13 ? "CW5550" : "CW5551"));
        }
    }

    [Theory]
    [InlineData("", "It is empty.")]
    [InlineData("FF FF FF FF", "Every byte is 0xFF.")]
    [InlineData("35 31 20 35 32 20 35 39 0A", "It is text; raw bytes are needed.")]
    [InlineData("00 01 02 51 52 59", "words.")]
    public void Something_else_is_said_to_be_no_answer(string bytes, string why)
    {
        var log = new FindingLog();
        Assert.Null(CfiReader.Read(Convert.FromHexString(bytes.Replace(" ", "", StringComparison.Ordinal)), "dump", null, log));
        Assert.EndsWith(why, Assert.Single(log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_dump_makes_the_reader_fail()
    {
        var random = new Random(1);
        for (var round = 0; round < 3000; round++)
        {
            var table = BottomBoot.ToArray();
            Array.Resize(ref table, random.Next(0x10, 0x120));
            for (var change = 0; change < 6; change++)
            {
                table[random.Next(0x10, Math.Max(0x11, table.Length)) % table.Length] = (byte)random.Next(256);
            }

            var log = new FindingLog();
            var query = CfiReader.Read(table, "dump", round % 3 == 2 ? null : (BootEnd)(round % 3), log);
            Assert.Equal(log.HasErrors, query is null);
        }
    }

    private static string Map(byte[] table, BootEnd? end, string codes) => SectorMapText.Format(Read(table, end, codes)!.Map);

    private static CfiQuery? Read(byte[] table, BootEnd? end, string codes)
    {
        var log = new FindingLog();
        var query = CfiReader.Read(table, "dump", end, log);
        Assert.Equal(codes, string.Join(' ', log.ToSorted().Select(static finding => finding.Code)));
        return query;
    }

    // Lines of an offset and the bytes from there on.
    private static byte[] Table(string lines)
    {
        var table = new byte[0x47];
        foreach (var line in lines.Split('\n'))
        {
            var bytes = Convert.FromHexString(line.Replace(" ", "", StringComparison.Ordinal));
            bytes.AsSpan(1).CopyTo(table.AsSpan(bytes[0]));
        }

        return table;
    }
}
