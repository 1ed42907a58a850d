using Cartwright.Headers;
using Cartwright.Platforms.ColecoVision;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.ColecoVision;

public sealed class ColecoHeaderTests
{
    [Fact]
    public void Blank_slots_are_written_as_returns()
    {
        var bench = ColecoPrograms.Bench();
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("55AA" + "0000000000000000" + "0081" + "C90000C90000C90000C90000C90000C90000" + "FBED4D" + "C30082", Convert.ToHexString(rom.AsSpan(0, ColecoHeader.Title)));
    }

    [Fact]
    public void A_header_is_made_from_the_manifest()
    {
        var bench = new RomBench(new ColecoPlatform()).Program("rom", 0x100, TestBytes.L(0x1000))
            .Header("start", "$8100").Header("nmi", "$8200").Header("rst08", "$8300").Header("titleScreen", "LANTERN TIDE/QUILLMOOR PRESENTS/2026");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal(0x2000, rom.Length);
        Assert.Equal("AA55", Convert.ToHexString(rom.AsSpan(0, 2)));
        Assert.Equal("C30083C90000", Convert.ToHexString(rom.AsSpan(0x0C, 6)));
        Assert.Equal("LANTERN TIDE/QUILLMOOR PRESENTS/2026"u8, rom.AsSpan(0x24, 36));
    }

    // Cartridge header technical information: code may follow the year's last digit at once.
    [Fact]
    public void What_follows_the_title_is_the_programs()
    {
        var bench = ColecoPrograms.Bench(0x24, Convert.ToHexString("A/B/1983"u8) + "C30081", "AA55");
        var cart = bench.Assemble();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("A/B/1983", cart["titleScreen"]);
        Assert.Equal("C30081", Convert.ToHexString(cart.Bytes("rom").Slice(0x2C, 3)));
    }

    [Theory]
    [InlineData("A/B/1983", 8)]
    [InlineData("TITLE/PRESENTS/1983\u0000", 19)]
    [InlineData("\u001D 1983 X/TITLE/1983Z", 19)]
    [InlineData("A/B/C/1983", null)]
    [InlineData("A/B/198", null)]
    [InlineData("A/B/198X", null)]
    [InlineData("A/B", null)]
    [InlineData("A\u0001/B/1983", null)]
    [InlineData("", null)]
    public void Titles_are_known_by_strokes_and_year(string text, int? length) =>
        Assert.Equal(length, TitleScreenCodec.LengthOf(System.Text.Encoding.Latin1.GetBytes(text)));

    [Theory]
    [InlineData("\u00A9 QUILLMOOR/LANTERN TIDE\u2122/2026", "1D205155494C4C4D4F4F522F4C414E5445524E20544944451E1F2F32303236")]
    public void Signs_are_written_as_letters(string text, string digits)
    {
        var field = new byte[TitleScreenCodec.Longest];
        Assert.Null(new TitleScreenCodec().Write(text, field));
        Assert.StartsWith(digits, Convert.ToHexString(field), StringComparison.Ordinal);
        Assert.Equal(text, new TitleScreenCodec().Read(field));
    }

    [Theory]
    [InlineData("LANTERN TIDE")]
    [InlineData("LANTERN TIDE/QUILLMOOR/26")]
    [InlineData("L\u00C4NTERN/QUILLMOOR/2026")]
    [InlineData("LANTERN TIDE LANTERN TIDE LANTERN TIDE LANTERN TIDE LANTERN TIDE/X/2026")]
    public void No_titles(string text) => Assert.NotNull(new TitleScreenCodec().Write(text, new byte[TitleScreenCodec.Longest]));

    // ColecoVision specifications: a slot is a jump, one of two returns, or any code.
    [Theory]
    [InlineData("C30000", "$0000")]
    [InlineData("C33412", "$1234")]
    [InlineData("C90000", "return")]
    [InlineData("FBED4D", "return-from-interrupt")]
    [InlineData("F5C5D5", "hex F5C5D5")]
    public void Slots(string digits, string text)
    {
        var field = new byte[3];
        Assert.Equal(text, new JumpSlotCodec().Read(Convert.FromHexString(digits)));
        Assert.Null(new JumpSlotCodec().Write(text, field));
        Assert.Equal(digits, Convert.ToHexString(field));
    }

    [Theory]
    [InlineData("$10000")]
    [InlineData("back")]
    [InlineData("hex F5C5")]
    public void No_slots(string text) => Assert.NotNull(new JumpSlotCodec().Write(text, new byte[3]));

    [Fact]
    public void A_routine_through_several_slots_stays()
    {
        const string slots = "F5000000C5000000000000000000000000000000F1";
        var rom = ColecoPrograms.Bench(ColecoHeader.FirstSlot, slots).Assemble().Rom();
        Assert.Equal(slots, Convert.ToHexString(rom.AsSpan(ColecoHeader.FirstSlot, 21)));
    }

    [Fact]
    public void The_header_of_a_banked_cart_lies_in_its_last_bank()
    {
        var bench = ColecoPrograms.Banked();
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("55AA", Convert.ToHexString(rom.AsSpan(0x1C000, 2)));
        Assert.Equal("C90000", Convert.ToHexString(rom.AsSpan(0x1C00C, 3)));
    }

    [Property(MaxTest = 100)]
    public Property What_a_reader_finds_builds_the_same_ROM() => Prop.ForAll(Settings().ToArbitrary(), settings =>
    {
        var first = Apply(settings);
        var rom = first.Assemble().Rom();
        var again = Blank();
        var table = ColecoHeader.Plain;
        foreach (var entry in HeaderReader.Read(table, rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(rom, again.Assemble().Rom());
    });

    private static RomBench Blank() => new RomBench(new ColecoPlatform()).Program("rom", 0x100, TestBytes.L(0x1F00));

    private static RomBench Apply((string Field, string Value)[] settings)
    {
        var bench = Blank();
        foreach (var (field, value) in settings)
            bench.Header(field, value);
        return bench;
    }

    private static Gen<(string Field, string Value)[]> Settings()
    {
        var slot = Gen.Elements("return", "return-from-interrupt", "$8123", "$9FFF", "hex F5C5D5");
        var pointer = Gen.Choose(0, 0xFFFF).Select(number => $"${number:X4}");
        return from rst in slot
               from irq in slot
               from sprites in pointer
               from map in pointer
               from start in Gen.Choose(0x8100, 0x9FFF)
               from title in Gen.Elements(null, "LANTERN TIDE/QUILLMOOR/2026", "\u00A9/\u2122/0000")
               select new[] { ("rst18", rst), ("irq", irq), ("nmi", "$8200"), ("spriteTable", sprites), ("controllerMap", map), ("start", $"${start:X4}") }
                   .Concat(title is null ? [("mark", "at-once")] : new[] { ("titleScreen", title) }).ToArray();
    }
}
