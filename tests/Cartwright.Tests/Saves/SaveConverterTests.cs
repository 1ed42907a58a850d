using Cartwright.Findings;
using Cartwright.Saves;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveConverterTests
{
    private static readonly byte[] Memory = TestBytes.L(0x2000);

    [Fact]
    public void Every_two_layouts_of_a_kind_lead_to_each_other_and_back()
    {
        foreach (var kind in SaveKinds.All)
        {
            var memory = kind.Layouts.Contains("nibbles-low") ? [.. TestBytes.L(kind.Sizes[0]).Select(value => (byte)(value | 0xF0))] : TestBytes.L(kind.Sizes[0]);
            foreach (var (from, to) in kind.Layouts.SelectMany(from => kind.Layouts.Select(to => (from, to))))
            {
                var file = SaveLayouts.Find(from)!.ToFile(memory);
                var there = Convert(file, kind.Platforms[0], from, to);
                Assert.Equal(SaveLayouts.Find(to)!.ToFile(memory), there);
                Assert.Equal(file, Convert(there, kind.Platforms[0], to, from));
            }
        }
    }

    [Theory]
    [InlineData(0, 44)]
    [InlineData(0, 48)]
    [InlineData(44, 48)]
    [InlineData(48, 44)]
    [InlineData(48, 48)]
    public void A_clock_is_added_kept_and_given_another_length(int before, int after)
    {
        byte[] file = [.. Memory, .. Clock(before)];
        var there = Convert(file, "gb", Form(before), Form(after));
        Assert.Equal([.. Memory, .. Clock(after, known: before > 0)], there);
        Assert.Equal(file, before == 0 ? Convert(there, "gb", Form(after), Form(before), request => request with { DropClock = true }) : Convert(there, "gb", Form(after), Form(before)));
    }

    [Fact]
    public void A_clock_goes_only_when_that_is_said()
    {
        byte[] file = [.. Memory, .. Clock(44)];
        Assert.Equal("CW9508", Refused(file, "gb", "packed+clock44", "packed"));
        Assert.Equal(Memory, Convert(file, "gb", "packed+clock44", "packed", request => request with { DropClock = true }));
    }

    // A time after 2106 needs more than 32 bits.
    [Fact]
    public void A_time_that_has_no_room_is_refused()
    {
        byte[] file = [.. Memory, .. Clock(48)];
        file[^4] = 1;
        Assert.Equal("CW9517", Refused(file, "gb", "packed+clock48", "packed+clock44"));
    }

    [Fact]
    public void A_high_half_byte_that_has_no_room_is_refused() => Assert.Equal("CW9517", Refused(new byte[512], "gb", "packed", "nibbles-low"));

    [Theory]
    [InlineData(0xFF)]
    [InlineData(0x00)]
    public void Filler_is_cut_and_comes_back(byte filler)
    {
        byte[] file = [.. Memory, .. TestBytes.All(filler, 0x6000)];
        Assert.Equal(Memory, Convert(file, "snes", "packed", "packed", request => request with { Size = 0x2000 }));
        Assert.Equal(file, Convert(Memory, "snes", "packed", "packed", request => request with { Size = 0x8000, Pad = new SavePad(filler) }));
    }

    [Fact]
    public void A_repetition_is_cut_and_comes_back()
    {
        byte[] file = [.. Memory, .. Memory, .. Memory, .. Memory];
        Assert.Equal(Memory, Convert(file, "snes", "packed", "packed", request => request with { Size = 0x2000 }));
        Assert.Equal(file, Convert(Memory, "snes", "packed", "packed", request => request with { Size = 0x8000, Pad = new SavePad(null) }));
        Assert.Equal("CW9519", Refused(Memory, "snes", "packed", "packed", request => request with { Size = 0x3000, Pad = new SavePad(null) }));
    }

    [Fact]
    public void Nothing_else_is_cut()
    {
        byte[] file = [.. Memory, .. TestBytes.All(0xFF, 0x5FFF), 0xFE];
        Assert.Equal("CW9507", Refused(file, "snes", "packed", "packed", request => request with { Size = 0x2000 }));
    }

    [Fact]
    public void Lines_of_one_board_are_undone_and_those_of_another_done()
    {
        var board = new SaveWiring(SaveWiring.Lines("1,0,2,3,4,5,6,7,8,9,10,12,11"), SaveWiring.Lines("7 6 5 4 3 2 1 0"));
        var chip = Convert(Memory, "nes", "packed", "packed", request => request with { ToWiring = board });
        Assert.Equal(Reversed(Memory[1]), chip[2]);
        Assert.Equal(Reversed(Memory[0x800]), chip[0x1000]);
        Assert.Equal(Memory, Convert(chip, "nes", "packed", "packed", request => request with { FromWiring = board }));
    }

    [Theory]
    [InlineData("0,1,2", null)]
    [InlineData(null, "0,1,2,3")]
    public void Lines_of_another_memory_are_refused(string? address, string? data) =>
        Assert.Equal("CW9516", Refused(Memory, "nes", "packed", "packed", request => request with { ToWiring = new SaveWiring(SaveWiring.Lines(address ?? ""), SaveWiring.Lines(data ?? "")) }));

    [Theory]
    [InlineData(0, "md", "packed", "odd-ff", "CW9500")]
    [InlineData(1, "md", "odd-ff", "packed", "CW9502")]
    [InlineData(8191, "n64", "packed", "swap32", "CW9502")]
    [InlineData(16 << 20, "md", "packed", "odd-ff", "CW9503")]
    [InlineData(8192, "snes", "packed", "odd-ff", "CW9505")]
    [InlineData(8192, "nes", "packed+clock44", "packed+clock44", "CW9505")]
    [InlineData(8192, "md", "odd-ff", "packed", "CW9506")]
    [InlineData(40, "gb", "packed+clock44", "packed+clock48", "CW9502")]
    [InlineData(8192, "coleco", "packed", "packed", "CW9518")]
    [InlineData(8192, "md", "packed", "packed", "CW9519", 1 << 30)]
    public void What_cannot_be_is_refused(int length, string platform, string from, string to, string code, int? size = null) =>
        Assert.Equal(code, Refused(new byte[length], platform, from, to, request => request with { Size = size }));

    [Fact]
    public void A_size_no_kind_has_is_told_and_done()
    {
        var log = new FindingLog();
        Assert.NotNull(new SaveConverter("game.sav", new SaveConversion("md", SaveForm.Find("packed")!, SaveForm.Find("odd-00")!), log).Convert(new byte[100]));
        Assert.Equal("CW9501", Assert.Single(log.ToSorted()).Code);
    }

    private static byte Reversed(byte value) => (byte)Enumerable.Range(0, 8).Sum(bit => ((value >> bit) & 1) << (7 - bit));

    private static string Form(int clock) => clock == 0 ? "packed" : $"packed+clock{clock}";

    // The five times of the clock, the five latched ones, and the Unix time 0x65000000 or the value of writers without a clock.
    private static byte[] Clock(int length, bool known = true)
    {
        var record = new byte[length];
        if (length == 0)
            return record;

        if (known)
            "\x1E\0\0\0\x0F"u8.CopyTo(record);

        byte[] time = known ? [0, 0, 0, 0x65, 0, 0, 0, 0] : [0xFF, 0xFF, 0xFF, 0x7F, 0xFF, 0xFF, 0xFF, 0x7F];
        time.AsSpan(0, length - 40).CopyTo(record.AsSpan(40));
        return record;
    }

    private static byte[] Convert(byte[] file, string platform, string from, string to, Func<SaveConversion, SaveConversion>? change = null)
    {
        var log = new FindingLog();
        var made = new SaveConverter("game.sav", Request(platform, from, to, change), log).Convert(file);
        Assert.Empty(log.ToSorted().Where(finding => finding.Code != "CW9501"));
        return made!.Bytes.ToArray();
    }

    private static string Refused(byte[] file, string platform, string from, string to, Func<SaveConversion, SaveConversion>? change = null)
    {
        var log = new FindingLog();
        Assert.Null(new SaveConverter("game.sav", Request(platform, from, to, change), log).Convert(file));
        return Assert.Single(log.ToSorted().Select(finding => finding.Code).Distinct());
    }

    private static SaveConversion Request(string platform, string from, string to, Func<SaveConversion, SaveConversion>? change) =>
        (change ?? (request => request))(new SaveConversion(platform, SaveForm.Find(from)!, SaveForm.Find(to)!));
}
