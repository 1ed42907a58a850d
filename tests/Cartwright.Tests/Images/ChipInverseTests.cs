using Cartwright.Boards;
using Cartwright.Images;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Chip images of random boards, put back together by the inverses alone.</summary>
public sealed class ChipInverseTests
{
    private const int Cases = 1000;

    [Fact]
    public void The_chips_of_any_board_are_the_ROM_again()
    {
        var random = new Random(31);
        for (var i = 0; i < Cases; i++)
        {
            var bytes = new byte[2 * random.Next(1, 300)];
            random.NextBytes(bytes);
            var bench = new BoardBench(Members(random, bytes.Length), random.Next(2) == 0 ? "\"wordOrder\": \"programmer\"" : "");
            Assert.Empty(bench.Codes);
            var chips = bench.Chips(BoardBench.Region((byte[])bytes.Clone()));
            Assert.False(bench.Log.HasErrors);
            Assert.Equal(bytes, Merge(bench.Board!, chips, bytes.Length));
        }
    }

    private static string Members(Random random, int length)
    {
        var wide = random.Next(2) == 0;
        var edges = Enumerable.Range(0, random.Next(0, 3)).Select(_ => 2 * random.Next(1, Math.Max(2, length / 2))).Where(edge => edge < length).Append(0).Distinct().Order().ToList();
        var (sites, chips) = (new List<string>(), new List<string>());
        for (var i = 0; i < edges.Count; i++)
        {
            var slice = $"\"start\": {edges[i]}" + (i + 1 < edges.Count ? $", \"length\": {edges[i + 1] - edges[i]}" : "") + $", \"fill\": \"{((string[])["erased", "repeat", "top"])[random.Next(3)]}\"" + (random.Next(4) == 0 ? ", \"dataLines\": \"reversed\"" : "");
            string[] kinds = !wide ? ["\"width\": 8"] : random.Next(2) == 0 ? ["\"width\": 16"] : ["\"lane\": \"low\"", "\"lane\": \"high\""];
            foreach (var kind in kinds)
            {
                var name = $"U{sites.Count + 1}";
                sites.Add($"{{ \"site\": \"{name}\", {kind}, {slice} }}");
                if (random.Next(2) == 0) chips.Add($"\"{name}\": {{ \"capacity\": {2048 + (2 * random.Next(100))}{(random.Next(2) == 0 ? ", \"wordOrder\": \"bus\"" : "")} }}");
            }
        }

        var order = random.Next(2) == 0 ? "big-endian" : "little-endian";
        return $"\"busWidth\": {(wide ? 16 : 8)}, \"byteOrder\": \"{order}\", \"sites\": [ {string.Join(", ", sites)} ], \"chips\": {{ {string.Join(", ", chips)} }}";
    }

    private static byte[] Merge(Board board, IEnumerable<ChipImage> chips, int length)
    {
        var rom = new byte[length];
        foreach (var chip in chips)
        {
            Assert.Equal(chip.ContentLength, ChipMerger.ContentOf(chip.Site, rom));
            new ChipMerger(board).PutBack(chip.Site, chip.Bytes.Span, chip.WordOrder, rom);
        }

        return rom;
    }
}
