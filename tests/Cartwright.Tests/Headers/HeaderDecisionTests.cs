using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms;
using Xunit;

namespace Cartwright.Tests.Headers;

/// <summary>Whose bytes win, by what the program holds, what is kept, and where the header's own value comes from.</summary>
public sealed class HeaderDecisionTests
{
    private const string Over = "CW4006";
    private const string KeptWrong = "CW4007";
    private const string KeptOther = "CW4008";
    private const string Clash = "CW4005";

    // The field each origin is tried on, the byte the header would hold, and another legal byte.
    private static readonly Dictionary<EntryOrigin, (string Field, int Offset, byte Ours, byte Other)> Fields = new()
    {
        [EntryOrigin.Manifest] = ("saveRam", 15, 3, 5),
        [EntryOrigin.Cart] = ("revision", 12, 7, 9),
        [EntryOrigin.WorkedOut] = ("romSize", 14, 1, 4),
        [EntryOrigin.Default] = ("speed", 13, 0, 0x20),
    };

    public static TheoryData<EntryOrigin, string, string, bool, string?> Decisions()
    {
        var rows = new TheoryData<EntryOrigin, string, string, bool, string?>();
        foreach (var origin in Fields.Keys)
        {
            foreach (var keep in (string[])["unset", "true", "false", "list", "other"])
            {
                rows.Add(origin, "uncovered", keep, false, null);
                rows.Add(origin, "zero", keep, false, null);
                rows.Add(origin, "fill", keep, false, null);
                rows.Add(origin, "equal", keep, false, null);
                // A default nobody stated gives way to the program, and nothing is said, unless the program's bytes are not to be kept.
                var kept = keep is "true" or "list" || (origin == EntryOrigin.Default && keep != "false");
                string? code = (kept, origin) switch
                {
                    (true, EntryOrigin.Default) => null,
                    (true, EntryOrigin.WorkedOut) => KeptWrong,
                    (true, _) => KeptOther,
                    (false, EntryOrigin.WorkedOut) => Over,
                    _ => keep == "false" ? Over : Clash,
                };
                rows.Add(origin, "different", keep, kept, code);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Decisions))]
    public void The_table_of_decisions(EntryOrigin origin, string program, string keep, bool isKept, string? code)
    {
        var (name, offset, ours, other) = Fields[origin];
        var bench = Bench(program, offset, ours, other).Header("saveRam", "8KiB");
        bench = keep switch
        {
            "true" => bench.Keep(true),
            "false" => bench.Keep(false),
            "list" => bench.Keep(null, name.ToUpperInvariant()),
            "other" => bench.Keep(null, "maker"),
            _ => bench,
        };
        var cart = bench.TryAssemble();
        Assert.NotNull(cart);
        Assert.Equal(code is null ? [] : [code], bench.Codes());
        var entry = Entry(cart, name);
        Assert.Equal(isKept ? EntryOrigin.Image : origin, entry.Origin);
        Assert.Equal(isKept ? other : ours, cart.Bytes("rom")[TestPlatform.LowStart + offset] & (name == "speed" ? 0x30 : 0xFF));
    }

    [Theory]
    [InlineData("256", null, 1)]
    [InlineData("raw 0x01", null, 1)]
    [InlineData("512", "CW4004", 2)]
    [InlineData("0x200", "CW4004", 2)]
    [InlineData("raw 0x02", "CW4007", 2)]
    [InlineData("3KiB", "CW4003", 1)]
    public void What_is_stated_is_held_against_what_is_worked_out(string stated, string? code, byte written)
    {
        var bench = new RomBench(new TestPlatform()).Program("rom", 0x80, [1]).Header("romSize", stated);
        var cart = bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
        if (code != "CW4003") Assert.Equal(written, cart!.Bytes("rom")[TestPlatform.LowStart + 14]);
    }

    [Fact]
    public void A_program_s_wrong_value_that_is_kept_is_warned_of_though_the_right_one_is_stated()
    {
        var bench = Bench("different", 14, 1, 4).Header("romSize", "256").Keep(true);
        Assert.NotNull(bench.TryAssemble());
        Assert.Equal([KeptWrong], bench.Codes());
    }

    [Fact]
    public void A_program_s_right_value_that_is_kept_against_a_raw_one_is_only_noted()
    {
        var bench = Bench("equal", 14, 1, 4).Header("romSize", "raw 0x02").Keep(true);
        Assert.NotNull(bench.TryAssemble());
        Assert.Equal([KeptWrong, KeptOther], bench.Codes());
    }

    [Fact]
    public void A_field_nobody_gives_a_value_stays_as_the_program_has_it()
    {
        var cart = new RomBench(new TestPlatform()).Program("rom", TestPlatform.LowStart + 16, [0xBE, 0xEF]).Assemble();
        Assert.Equal("BEEF", cart["maker"]);
        Assert.Equal(EntryOrigin.Image, Entry(cart, "maker").Origin);
    }

    [Fact]
    public void A_required_field_without_a_value_is_missed_unless_the_program_has_it()
    {
        var without = new RomBench(new TestPlatform()) { Title = null }.Program("rom", 0x80, [1]);
        without.TryAssemble();
        Assert.Equal(["CW4002"], without.Codes());
        var cart = new RomBench(new TestPlatform()) { Title = null }.Program("rom", TestPlatform.LowStart, [.. "OWN         "u8]).Assemble();
        Assert.Equal("OWN", cart["title"]);
    }

    [Fact]
    public void A_field_is_there_only_when_the_fields_before_it_say_so()
    {
        Assert.Null(new RomBench(new TestPlatform()).Program("rom", 0x80, [1]).Assemble()["entry"]);
        Assert.Equal("0x8000", new RomBench(new TestPlatform()).Program("rom", 0x80, [1]).Header("battery", "true").Header("entry", "$8000").Assemble()["entry"]);
    }

    [Fact]
    public void Fields_of_one_byte_leave_each_other_alone()
    {
        var cart = new RomBench(new TestPlatform()).Program("rom", 0x80, [1]).Size("rom", null, fill: 0).Header("battery", "true").Header("speed", "turbo").Assemble();
        Assert.Equal(0x21, cart.Bytes("rom")[TestPlatform.LowStart + 13]);
    }

    internal static HeaderEntry Entry(CartView cart, string name) => cart.Headers.SelectMany(header => header.Entries).Single(entry => entry.Field.Name == name);

    private static RomBench Bench(string program, int offset, byte ours, byte other)
    {
        var bench = new RomBench(new TestPlatform()) { Title = "OWN", Revision = "7" }.Program("rom", 0x80, [1]);
        byte? held = program switch { "zero" => 0, "fill" => 0xFF, "equal" => ours, "different" => other, _ => null };
        return held is { } value ? bench.Program("rom", TestPlatform.LowStart + offset, [value]) : bench;
    }
}
