using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

public sealed class ElfReaderTests
{
    [Theory]
    [InlineData(true, 4, "68000, big-endian")]
    [InlineData(false, 40, "ARM, little-endian")]
    [InlineData(true, 42, "SuperH, big-endian")]
    [InlineData(false, 42, "SuperH, little-endian")]
    [InlineData(true, 8, "MIPS, big-endian")]
    [InlineData(false, 220, "Z80, little-endian")]
    [InlineData(true, 4660, "machine 4660, big-endian")]
    public void Both_byte_orders_are_read_and_the_machine_is_named(bool bigEndian, ushort machine, string words)
    {
        var file = new ElfBuilder { BigEndian = bigEndian, Machine = machine, Entry = 0x8001 }.Load(0x8000, 0x8000, [1, 2, 3]).Build();
        var program = Reading.Of("game", file).Program!;
        Assert.Equal((ProgramFormat.Elf, words, 0x8001L), (program.Format, program.Machine, program.Entry));
        Assert.Equal("00008000: 010203", Reading.Show(program.Segments));
    }

    [Fact]
    public void Bytes_lie_at_the_load_address_and_cleared_memory_is_not_stored()
    {
        var file = new ElfBuilder().Load(0x8000, 0x8000, [1, 2], 2).Load(0x200, 0x9000, [3, 4], memorySize: 0x1000).Header(1, 0, 0x1200, 0x1200, 0, 0x400).Build();
        Assert.Equal("00008000: 0102; 00009000: 0304", Reading.Show(Reading.Clean("game.elf", file)));
    }

    [Fact]
    public void The_run_address_counts_when_it_is_asked_for()
    {
        var file = new ElfBuilder().Load(0x8000, 0x18000, [1]).Build();
        var reading = Reading.Of("game.elf", file, null, new ProgramReadOptions { ElfLoad = ElfLoad.Virtual });
        Assert.Equal("00008000: 01", Reading.Show(reading.Program!.Segments));
    }

    [Fact]
    public void Load_addresses_that_are_all_0_give_way_to_run_addresses_with_a_note()
    {
        var reading = Reading.Of("game.elf", new ElfBuilder().Load(0x8000, 0, [1]).Load(0x9000, 0, [2]).Build());
        Assert.Equal("00008000: 01; 00009000: 02", Reading.Show(reading.Program!.Segments));
        Assert.Equal([ProgramFindings.ElfNoLoadAddress.Code], reading.Codes);
    }

    [Fact]
    public void One_load_address_that_is_not_0_keeps_them_all()
    {
        var file = new ElfBuilder().Load(0x8000, 0, [1]).Load(0x200, 0x10, [2]).Build();
        Assert.Equal("00000000: 01; 00000010: 02", Reading.Show(Reading.Clean("game.elf", file)));
    }

    [Fact]
    public void Only_load_segments_count()
    {
        var file = new ElfBuilder().Header(4, 0, 0x100, 0x100, 1, 1).Load(0x8000, 0x8000, [1]).Header(6, 0, 0, 0, 9999, 1).Build();
        Assert.Equal("00008000: 01", Reading.Show(Reading.Clean("game.elf", file)));
    }

    [Fact]
    public void The_stride_of_the_table_is_the_one_the_file_gives()
    {
        const int stride = 0x28;
        var narrow = new ElfBuilder().Load(0x8000, 0x8000, [1]).Load(0x9000, 0x9000, [2]).Build();
        var wide = new byte[narrow.Length + 0x100];
        narrow.CopyTo(wide, 0);
        Array.Clear(wide, ElfBuilder.HeaderSize + ElfBuilder.EntrySize, ElfBuilder.EntrySize);
        var second = narrow.AsSpan(ElfBuilder.HeaderSize + ElfBuilder.EntrySize, ElfBuilder.EntrySize);
        second.CopyTo(wide.AsSpan(ElfBuilder.HeaderSize + stride));
        wide[0x2A] = stride;
        wide[ElfBuilder.HeaderSize + 4] = 0xF0;
        wide[ElfBuilder.HeaderSize + stride + 4] = 0xF1;
        (wide[0xF0], wide[0xF1]) = (0x11, 0x22);
        Assert.Equal("00008000: 11; 00009000: 22", Reading.Show(Reading.Clean("game.elf", wide)));
    }

    [Fact]
    public void A_count_of_FFFF_is_looked_up_in_section_header_0()
    {
        var plain = new ElfBuilder().Load(0x8000, 0x8000, [1]).Build();
        var file = new byte[plain.Length + 0x28];
        plain.CopyTo(file, 0);
        file[0x20] = (byte)plain.Length;
        (file[0x2C], file[0x2D]) = (0xFF, 0xFF);
        file[plain.Length + 0x1C] = 1;
        Assert.Equal("00008000: 01", Reading.Show(Reading.Clean("game.elf", file)));
    }

    [Fact]
    public void Neighbouring_segments_are_joined_and_repeated_bytes_are_a_warning()
    {
        var reading = Reading.Of("game.elf", new ElfBuilder().Load(0x8002, 0x8002, [3, 4]).Load(0x8000, 0x8000, [1, 2, 3]).Build());
        Assert.Equal("00008000: 01020304", Reading.Show(reading.Program!.Segments));
        Assert.Equal([ProgramFindings.OverlapSame.Code], reading.Codes);
    }

    [Fact]
    public void A_64_bit_file_is_told_what_to_do()
    {
        var file = new ElfBuilder { Machine = 62 }.Load(0x8000, 0x8000, [1]).Change(4, 2, 1).Build();
        var finding = Assert.Single(Reading.Of("game.elf", file).Findings);
        Assert.Equal(ProgramFindings.ElfClass.Code, finding.Code);
        Assert.Contains("x86-64", finding.Message, StringComparison.Ordinal);
        Assert.Contains("cross compiler", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_cut_anywhere_gives_a_finding()
    {
        var file = new ElfBuilder { BigEndian = true }.Load(0x8000, 0x8000, [1, 2, 3]).Load(0x9000, 0x9000, [4]).Build();
        for (var length = 0; length < file.Length; length++)
        {
            Assert.Null(Reading.Of("game.elf", file.AsMemory(0, length)).Program);
        }
    }

    [Fact]
    public void Segments_that_name_the_same_bytes_over_and_over_are_refused_early()
    {
        var builder = new ElfBuilder().Load(0x8000, 0x8000, new byte[60_000]);
        for (var i = 1U; i < 1500; i++) builder.Header(1, 0, i * 60_000, i * 60_000, 60_000, 60_000);
        Assert.Equal([ProgramFindings.SpanTooLarge.Code], Reading.Of("game.elf", builder.Build()).Codes);
    }
}
