using System.Globalization;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Programs;

/// <summary>Our ELF reading against GNU binutils.</summary>
public sealed class ElfOracleTests
{
    private const string Source =
        """
        .section .text
        .globl _start
        _start: .ascii "lantern"
        .section .rodata,"a"
        .ascii "tide"
        .section .data
        .ascii "ship"
        .section .bss
        .space 64
        .section .far,"a"
        .ascii "harbour"

        """;

    private const string Script =
        """
        ENTRY(_start)
        MEMORY { rom : ORIGIN = 0x8000, LENGTH = 32K  ram : ORIGIN = 0x200, LENGTH = 1K }
        SECTIONS {
          .text : { *(.text) } > rom
          .rodata : ALIGN(64) { *(.rodata) } > rom
          .data : { *(.data) } > ram AT > rom
          .bss : { *(.bss) } > ram
          .far 0xC000 : AT(0xC000) { *(.far) } > rom
        }

        """;

    [Fact]
    public void A_linked_program_flattens_as_objcopy_flattens_it()
    {
        using var folder = new TempFolder();
        var elf = Link(folder);
        Tool.Succeed("objcopy", folder.Path, "-O", "binary", "--gap-fill=0", "game.elf", "game.bin");
        var program = Reading.Of("game.elf", elf).Program!;
        Assert.Equal(folder.Read("game.bin"), Reading.Flatten(program.Segments, 0));
        Assert.Equal((0x8000, 0x8000L, "80386, little-endian"), (program.Segments[0].Address, program.Entry, program.Machine));
    }

    [Theory]
    [InlineData("ihex")]
    [InlineData("srec")]
    public void The_text_forms_of_a_linked_program_hold_what_the_ELF_file_holds(string format)
    {
        using var folder = new TempFolder();
        var elf = Link(folder);
        Tool.Succeed("objcopy", folder.Path, "-O", format, "game.elf", "game.txt");
        var text = Reading.Clean("game.txt", folder.Read("game.txt"));
        Assert.Equal(Reading.Flatten(Reading.Clean("game.elf", elf), 0), Reading.Flatten(text, 0));
    }

    [Fact]
    public void An_object_file_is_refused()
    {
        using var folder = new TempFolder();
        Link(folder);
        Assert.Equal(["CW2055"], Reading.Of("game.o", folder.Read("game.o")).Codes);
    }

    // The other byte order cannot be linked by every installation, so readelf reads what the tests themselves build.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Readelf_sees_the_load_segments_we_see(bool bigEndian)
    {
        using var folder = new TempFolder();
        var elf = new ElfBuilder { BigEndian = bigEndian, Machine = 8 }.Load(0x8000, 0xBFC08000, Records.Count(9)).Load(0x200, 0xBFC09000, Records.Count(5), 99).Build();
        folder.Write("game.elf", elf);
        var rows = Tool.Succeed("readelf", folder.Path, "-lW", "game.elf").Split('\n').Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(words => words is ["LOAD", ..]);
        var theirs = rows.Select(words => (Number(words[1]), Number(words[3]), Number(words[4])));
        Assert.Equal(theirs, Reading.Clean("game.elf", elf).Select(s => (s.Place.Offset!.Value, s.Address, (long)s.Length)));
    }

    private static byte[] Link(TempFolder folder)
    {
        folder.Write("game.s", System.Text.Encoding.ASCII.GetBytes(Source));
        folder.Write("game.ld", System.Text.Encoding.ASCII.GetBytes(Script));
        if (!Tool.Run("ld", folder.Path, "-V").Output.Contains("elf_i386", StringComparison.Ordinal)) Assert.Skip("This linker makes no 32-bit files.");
        Tool.Succeed("as", folder.Path, "--32", "-o", "game.o", "game.s");
        Tool.Succeed("ld", folder.Path, "-m", "elf_i386", "-n", "-T", "game.ld", "-o", "game.elf", "game.o");
        return folder.Read("game.elf");
    }

    private static long Number(string hex) => long.Parse(hex.AsSpan(2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
