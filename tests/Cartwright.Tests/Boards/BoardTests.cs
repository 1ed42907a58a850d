using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Xunit;

namespace Cartwright.Tests.Boards;

public sealed class BoardTests
{
    public static TheoryData<string> Ids => [.. BoardCatalog.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_board_of_the_catalogue_loads_and_says_what_it_is(string id)
    {
        var board = BoardCatalog.Find(id.ToUpperInvariant());
        Assert.NotNull(board);
        Assert.Equal(id, board.Id);
        Assert.NotEmpty(board.Description);
        Assert.NotEmpty(board.Source ?? "");
        Assert.NotEmpty(board.Sites);
        Assert.All(board.Sites, site => Assert.False(string.IsNullOrEmpty(site.Meaning)));
    }

    [Fact]
    public void The_catalogue_is_sorted_and_knows_no_others()
    {
        Assert.Equal(BoardCatalog.Ids.Order(StringComparer.Ordinal), BoardCatalog.Ids);
        Assert.Contains("md-double-8bit", BoardCatalog.Ids);
        Assert.Equal(BoardCatalog.Ids, BoardCatalog.All.Select(board => board.Id));
        Assert.Null(BoardCatalog.Find("md-double"));
    }

    [Fact]
    public void A_board_described_in_the_manifest_has_every_key()
    {
        var bench = new BoardBench("""
            "name": "bench-board", "platform": "bench", "description": "d", "source": "s", "busWidth": 16, "byteOrder": "little-endian", "busVolts": 3.3,
            "expects": { "mapper": [ "a", "b" ], "speed": "fast" },
            "sites": [ { "site": "U1", "region": "prg", "lane": "low", "start": "1KiB", "length": "2KiB", "fill": "top", "largest": "4KiB", "meaning": "m" } ]
            """);
        Assert.Empty(bench.Findings);
        var board = bench.Board!;
        Assert.Equal(("bench-board", "bench", 16, ByteOrder.LittleEndian, 3.3), (board.Id, board.Platform, board.BusWidth, board.ByteOrder, board.BusVolts));
        Assert.Equal(["a", "b"], board.Expects["MAPPER"]);
        Assert.Equal(["fast"], board.Expects["speed"]);
        var site = Assert.Single(board.Sites);
        Assert.Equal(new Site("U1", "prg", 8, Lane.Low, 1024, 2048, ChipFill.Top) { Largest = 4096, Meaning = "m" }, site);
        Assert.Equal((3072, 2), (site.End, site.Stride));
    }

    [Theory]
    [InlineData(ByteOrder.BigEndian, Lane.High, 0)]
    [InlineData(ByteOrder.BigEndian, Lane.Low, 1)]
    [InlineData(ByteOrder.LittleEndian, Lane.High, 1)]
    [InlineData(ByteOrder.LittleEndian, Lane.Low, 0)]
    public void The_even_byte_is_high_on_a_big_endian_bus(ByteOrder order, Lane lane, int index) =>
        Assert.Equal(index, new Board("x", null, 16, order, 5, []).ByteOf(lane));

    [Theory]
    [InlineData(ByteOrder.BigEndian, Lane.Fourth, 0)]
    [InlineData(ByteOrder.BigEndian, Lane.Low, 3)]
    [InlineData(ByteOrder.LittleEndian, Lane.Fourth, 3)]
    [InlineData(ByteOrder.LittleEndian, Lane.High, 1)]
    public void A_bus_of_32_lines_has_four_lanes(ByteOrder order, Lane lane, int index) =>
        Assert.Equal(index, new Board("x", null, 32, order, 5, []).ByteOf(lane));

    [Theory]
    [InlineData("\"busWidth\": 12, \"sites\": [ { \"site\": \"U1\" } ]")]
    [InlineData("\"busWidth\": 4294967304, \"sites\": [ { \"site\": \"U1\" } ]")]
    [InlineData("\"busWidth\": 8")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"lane\": \"low\" } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"width\": 16 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"width\": 4294967304 } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\" } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16, \"lane\": \"high\" } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"high\", \"start\": 1 } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16, \"length\": 3 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"length\": 0 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"length\": 4 }, { \"site\": \"u1\", \"start\": 4 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\" }, { \"site\": \"U2\", \"start\": 4 } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16 }, { \"site\": \"U2\", \"lane\": \"low\" } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"restAt\": 3 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"restAt\": \"512MiB\" } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"blocks\": 256 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"blockStep\": 512 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"blocks\": 0, \"blockStep\": 512 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"blocks\": 1048576, \"blockStep\": \"1KiB\" } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16, \"blocks\": 256, \"blockStep\": 511 } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"restAt\": \"1KiB\", \"blocks\": 256, \"blockStep\": 512 } ]")]
    [InlineData("\"busWidth\": 32, \"sites\": [ { \"site\": \"U1\" } ]")]
    [InlineData("\"busWidth\": 32, \"sites\": [ { \"site\": \"U1\", \"width\": 16, \"lane\": \"low\" } ]")]
    [InlineData("\"busWidth\": 32, \"sites\": [ { \"site\": \"U1\", \"lane\": \"low\", \"start\": 2 } ]")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"d16-d23\" } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\" } ], \"joins\": [ { \"name\": \"both\" } ]")]
    [InlineData("\"sites\": [ { \"site\": \"U1\" } ], \"joins\": [ { \"name\": \"both\", \"parts\": [ { \"region\": \"prg\", \"at\": \"512MiB\" } ] } ]")]
    [InlineData("\"use\": \"md-double-8bit\", \"sites\": [ { \"site\": \"U1\" } ]")]
    [InlineData("\"use\": \"md-double-8bit\", \"busVolts\": 3.3")]
    public void A_board_that_contradicts_itself_is_told(string members)
    {
        var bench = new BoardBench(members);
        Assert.Equal([BoardFindings.Contradiction.Code], bench.Codes.Distinct());
        Assert.Equal(members.Contains("use", StringComparison.Ordinal), bench.Board is not null);
    }

    [Theory]
    [InlineData("\"sites\": [ { } ]", "CW1004")]
    [InlineData("\"sites\": [ { \"site\": \"U 1\" } ]", "CW1009")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"lane\": \"hihg\" } ]", "CW1006")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"length\": [ 1 ] } ]", "CW1005")]
    [InlineData("\"busVolts\": \"five\", \"sites\": [ { \"site\": \"U1\" } ]", "CW1005")]
    public void A_board_with_a_bad_value_is_none(string members, string code)
    {
        var bench = new BoardBench(members);
        Assert.Null(bench.Board);
        Assert.Contains(code, bench.Codes);
    }

    [Fact]
    public void A_number_of_volts_without_end_is_no_number() =>
        Assert.Contains("CW1005", new BoardBench($"\"busVolts\": \"{new string('9', 400)}\", \"sites\": [ {{ \"site\": \"U1\" }} ]").Codes);

    [Fact]
    public void No_board_is_only_a_note() => Assert.Equal(FindingSeverity.Note, Assert.Single(new BoardBench("").Findings).Severity);

    [Fact]
    public void An_unknown_board_is_told_with_the_nearest()
    {
        var finding = Assert.Single(new BoardBench("\"use\": \"md-duble-8bit\"").Findings);
        Assert.Equal(BoardFindings.Unknown.Code, finding.Code);
        Assert.Contains("md-double-8bit", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_of_another_platform_or_another_wiring_is_told()
    {
        var wrong = new BoardBench("\"use\": \"nes-plain\"");
        wrong.Check("md", field => field == "mapper" ? "uxrom" : null);
        Assert.Equal([BoardFindings.OtherPlatform.Code, BoardFindings.NotWiredFor.Code], wrong.Codes);
        var right = new BoardBench("\"use\": \"nes-plain\"");
        right.Check("NES", _ => "NROM");
        Assert.Empty(right.Codes);
    }

    [Fact]
    public void A_board_may_name_its_platform_by_an_alias()
    {
        var bench = new BoardBench("\"platform\": \"ALIAS\", \"sites\": [ { \"site\": \"U1\" } ]");
        bench.Check("md", _ => null);
        Assert.Empty(bench.Codes);
    }
}
