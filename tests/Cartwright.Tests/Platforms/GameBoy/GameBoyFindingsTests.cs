using Cartwright.Findings;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyFindingsTests
{
    [Fact]
    public void Codes_are_in_order_and_in_range()
    {
        var codes = GameBoyFindings.All.Select(rule => rule.Code).ToList();
        Assert.Equal(codes.Order(StringComparer.Ordinal).Distinct(), codes);
        Assert.All(codes, code => Assert.InRange(int.Parse(code[2..]), 4190, 4229));
    }

    [Theory]
    [InlineData(0x8000, "rom", "0")]
    [InlineData(0x200000, "mbc5-ram-battery", "32KiB")]
    [InlineData(0x40000, "mbc2-battery", "0")]
    [InlineData(0x80000, "mbc1-ram-battery", "32KiB")]
    [InlineData(0x200000, "mbc3-timer-ram-battery", "32KiB")]
    [InlineData(0x200000, "mbc3-timer-battery", "0")]
    [InlineData(0x800000, "mbc5-ram-battery", "128KiB")]
    public void A_clean_cart_has_none(int size, string type, string ram)
    {
        var bench = Programs.Bench().Size("rom", size).Header("cartridgeType", type).Header("saveRam", ram).Header("newLicensee", "QS");
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void A_clean_colour_cart_has_none()
    {
        var bench = Programs.Bench(title: "TIDE").Header("cgbFlag", "only").Header("manufacturerCode", "QLTA").Header("sgbFlag", "sgb").Header("newLicensee", "QS").Header("destination", "overseas");
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    public static TheoryData<string, int, string> Stated { get; } = new()
    {
        { "CW4201", 0x400000, "cartridgeType=mbc1" },
        { "CW4201", 0x80000, "cartridgeType=mbc2" },
        { "CW4201", 0x800000, "cartridgeType=mbc3" },
        { "CW4201", 0x200000, "cartridgeType=mbc6" },
        { "CW4201", 0x400000, "cartridgeType=mbc7-sensor-rumble-ram-battery" },
        { "CW4202", 0x100000, "cartridgeType=mbc1-ram-battery;saveRam=32KiB" },
        { "CW4203", 0x400000, "cartridgeType=mbc3" },
        { "CW4203", 0x8000, "cartridgeType=mbc3-ram-battery;saveRam=64KiB" },
        { "CW4203", 0x400000, "cartridgeType=huc1-ram-battery;saveRam=32KiB" },
        { "CW4203", 0x800000, "cartridgeType=mbc5-ram-battery;saveRam=8KiB;destination=0xE1" },
        { "CW4204", 0x8000, "cartridgeType=mbc1-ram-battery;saveRam=64KiB" },
        { "CW4204", 0x8000, "cartridgeType=mbc3-ram-battery;saveRam=128KiB" },
        { "CW4204", 0x8000, "cartridgeType=mbc5-rumble-ram-battery;saveRam=128KiB" },
        { "CW4205", 0x8000, "cartridgeType=mbc5-ram-battery" },
        { "CW4206", 0x8000, "cartridgeType=mbc5;saveRam=8KiB" },
        { "CW4206", 0x8000, "saveRam=8KiB" },
        { "CW4207", 0x8000, "cartridgeType=mbc2-battery;saveRam=8KiB" },
        { "CW4207", 0x8000, "cartridgeType=mbc7-sensor-rumble-ram-battery;saveRam=8KiB" },
        { "CW4208", 0x8000, "cartridgeType=mbc5-ram-battery;saveRam=2KiB" },
        { "CW4209", 0x8000, "cartridgeType=mbc5-ram;saveRam=8KiB" },
        { "CW4212", 0x8000, "cartridgeType=0x77" },
        { "CW4213", 0x8000, "cartridgeType=rom-ram-battery;saveRam=8KiB" },
        { "CW4214", 0x8000, "cartridgeType=mbc1;cgbFlag=compatible" },
        { "CW4214", 0x8000, "cartridgeType=mbc3;cgbFlag=only" },
        { "CW4216", 0x8000, "oldLicensee=see-new-licensee" },
        { "CW4217", 0x8000, "sgbFlag=0x58" },
        { "CW4217", 0x8000, "destination=0x33" },
        { "CW4217", 0x8000, "version=255" },
        { "CW4218", 0x8000, "cgbFlag=0x84" },
        { "CW4219", 0x8000, "title=" },
        { "CW4220", 0x8000, "title=Lantern" },
        { "CW4221", 0x8000, "title=TIDE " },
        { "CW4223", 0x8000, "title=ABCDEFGHIJK;manufacturerCode=QLTA" },
        { "CW4223", 0x8000, "title=TIDE;manufacturerCode=ab" },
    };

    [Theory]
    [MemberData(nameof(Stated))]
    public void A_setting_raises_its_finding_and_no_other(string code, int size, string settings)
    {
        var bench = Programs.Bench().Size("rom", size);
        foreach (var setting in settings.Split(';'))
            bench.Header(setting.Split('=')[0], setting.Split('=')[1]);

        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
    }

    [Fact]
    public void A_title_that_is_no_text()
    {
        var bench = Programs.Bench().Header("title", "hex 0102030405060708090A0B0C0D0E0F10");
        bench.Assemble();
        Assert.Equal(["CW4222"], bench.Codes());
    }

    // The raw value is the way out, and is told of by the header itself too.
    [Fact]
    public void The_flags_need_the_old_licensee()
    {
        var bench = Programs.Bench().Header("sgbFlag", "sgb").Header("newLicensee", "QS").Header("oldLicensee", "0x01");
        bench.Assemble();
        Assert.Equal(["CW4007", "CW4215", "CW4216"], bench.Codes());
    }

    [Fact]
    public void Nothing_at_the_entry()
    {
        var bench = Bench().Program("rom", 0x150, TestBytes.L(16));
        bench.TryAssemble();
        Assert.Equal(["CW4190"], bench.Codes());
        Assert.Contains("00C35001", Assert.Single(bench.Log.ToSorted()).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_entry_is_enough()
    {
        var bench = Bench().Program("rom", 0x150, TestBytes.L(16)).Header("entry", "00C35001");
        Assert.Equal(Programs.Entry, bench.Assemble().Bytes("rom").Slice(0x100, 4));
        Assert.Empty(bench.Codes());
    }

    [Theory]
    [InlineData("00000000", "CW4191")]
    [InlineData("FFFFFFFF", "CW4192")]
    [InlineData("00C35002", "CW4193")] // jp $0250: no program there
    [InlineData("F3C30040", "CW4193")] // di; jp $4000
    [InlineData("C300C000", "CW4193")] // jp $C000: RAM
    [InlineData("18FC0000", "CW4193")] // jr back to $00FE: no program there
    [InlineData("0018004E", "CW4193")] // jr on to $0103
    [InlineData("C3500100", null)]
    [InlineData("F3C35001", null)]
    [InlineData("184E0000", null)] // jr to $0150
    [InlineData("3E01E000", null)] // other code
    public void Entries(string entry, string? code)
    {
        var bench = Bench().Program("rom", 0x150, TestBytes.L(16)).Header("entry", entry);
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Theory]
    [InlineData(0x104, "CW4194")]
    [InlineData(0x11B, "CW4194")]
    [InlineData(0x11C, "CW4195")]
    [InlineData(0x133, "CW4195")]
    public void A_wrong_byte_of_the_bitmap(int at, string code)
    {
        var bench = Programs.Changed(0x104, Damaged(at)).Keep(true);
        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
    }

    [Theory]
    [InlineData(0x104, "no model that compares it starts")]
    [InlineData(0x133, "colour models start")]
    public void A_wrong_bitmap_kept_as_stated(int at, string words)
    {
        var bench = Programs.Changed(0x104, Damaged(at)).Header("bitmap", "keep");
        bench.Assemble();
        Assert.Equal(["CW4196"], bench.Codes());
        Assert.Contains(words, Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_bitmap_stated_in_digits_is_an_error()
    {
        var bench = Programs.Bench().Header("bitmap", Convert.ToHexString(Damaged(0x120)));
        bench.TryAssemble();
        Assert.Equal(["CW4195"], bench.Codes());
    }

    [Fact]
    public void More_than_32_KiB_without_a_controller()
    {
        var bench = Programs.Bench(0x10000);
        bench.TryAssemble();
        Assert.Equal(["CW4197"], bench.Codes());
        Assert.Equal("one of mbc1, mbc1-ram, mbc1-ram-battery, mbc3-timer-battery, mbc3-timer-ram-battery, mbc3, mbc3-ram, mbc3-ram-battery, mbc5, mbc5-ram, mbc5-ram-battery", Assert.Single(bench.Log.ToSorted()).Expected);
    }

    [Theory]
    [InlineData("rom", 0, false, "CW4198")]
    [InlineData("rom", 0xD1, true, "CW4197")]
    [InlineData("latch-32k", 0xD1, false, null)]
    [InlineData("latch-32k", 0xD1, true, "CW4199")]
    [InlineData("latch-32k", 0x00, false, "CW4200")]
    public void Banks_of_a_latch_board(string type, byte destination, bool damaged, string? code)
    {
        var program = TestBytes.GameBoy(0x20000);
        for (var bank = 0; bank < program.Length; bank += 0x8000)
        {
            var header = program.AsSpan(bank + 0x100, 0x50);
            header.Clear();
            Programs.Entry.CopyTo(header);
            BootBitmap.Bytes.CopyTo(header[4..]);
            header[0x4D] = GameBoyChecksums.Header(header);
        }

        program.AsSpan(0x14D, 1).Clear();
        program[0x1014D + (damaged ? 0 : 1)]++;
        var bench = Bench().Program("rom", 0, program).Header("cartridgeType", type).Header("destination", $"0x{destination:X2}");
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Theory]
    [InlineData(0x80000, null)]
    [InlineData(0x100000, "A program is in bank $20.")]
    [InlineData(0x200000, "A program is in banks $20, $40, $60.")]
    public void Banks_MBC1_does_not_show(int length, string? message)
    {
        var bench = Programs.Bench(length).Header("cartridgeType", "mbc1");
        bench.Assemble();
        Assert.Equal(message is null ? [] : [message], bench.Log.ToSorted().Select(finding => finding.Message));
        Assert.Equal(message is null ? [] : ["CW4210"], bench.Codes());
    }

    [Fact]
    public void The_MMM01_menu_needs_an_entry()
    {
        var bench = Programs.Bench().Size("rom", 0x20000).Header("cartridgeType", "mmm01");
        bench.TryAssemble();
        Assert.Equal(["CW4211"], bench.Codes());
        Assert.Equal("The last 32 KiB begin at 0x018000 (98304), and there is no entry at $0100-$014F of them.", Assert.Single(bench.Log.ToSorted()).Message);
    }

    [Fact]
    public void The_MMM01_menu_of_a_program_that_holds_the_type_is_checked_too()
    {
        var program = Programs.Whole(0x20000);
        program[0x147] = 0x0B;
        var bench = Bench().Program("rom", 0, program).Keep(null, "cartridgeType");
        bench.TryAssemble();
        Assert.Equal(["CW4211"], bench.Codes());
    }

    [Fact]
    public void Facts_from_memory_are_no_errors() => Assert.Equal(FindingSeverity.Warning, GameBoyFindings.UncertainLimit.Severity);

    private static RomBench Bench() => new(new GameBoyPlatform()) { Title = "LANTERN TIDE" };

    private static byte[] Damaged(int at)
    {
        var bitmap = BootBitmap.Bytes.ToArray();
        bitmap[at - 0x104] ^= 0x10;
        return bitmap;
    }
}
