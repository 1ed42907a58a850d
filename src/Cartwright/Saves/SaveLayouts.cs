using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Ordering;

namespace Cartwright.Saves;

/// <summary>The layouts files of save memory are met in.</summary>
public static class SaveLayouts
{
    /// <summary>The layout that is the memory itself: what a chip's programmer wants.</summary>
    public static SaveLayout Packed { get; } = new("packed", "the memory's bytes and nothing else", 1, 1, static (from, to) => from.CopyTo(to), static (from, to) => from.CopyTo(to));

    /// <summary>All that have a word of their own.</summary>
    public static ImmutableArray<SaveLayout> All { get; } =
    [
        Packed,
        Filled(OddLane, 0xFF), Filled(OddLane, 0x00), Doubled(OddLane),
        Filled(EvenLane, 0xFF), Filled(EvenLane, 0x00), Doubled(EvenLane),
        Itself("swap16", "the two bytes of each 16-bit word exchanged", sizeof(ushort), static (from, to) => WordSwap.Swap16(from, to)),
        Itself("swap32", "the four bytes of each 32-bit word reversed", sizeof(uint), static (from, to) => WordSwap.Swap32(from, to)),
        Itself("reversed8", "the eight bytes of each block reversed", BlockBytes, ReverseBlocks),
        HalfBytes("nibbles-low", "two half-bytes a byte, the first in the low half; high halves are F", 0),
        HalfBytes("nibbles-high", "two half-bytes a byte, the first in the high half; high halves are F", 1),
    ];

    private const int BlockBytes = 8;
    private const int EvenLane = 0;
    private const int OddLane = 1;

    /// <summary>The layout of a word; null where there is none.</summary>
    /// <param name="word">A word of <see cref="All"/>, or <c>odd-</c> or <c>even-</c> and the filler's two hexadecimal digits.</param>
    public static SaveLayout? Find(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return All.FirstOrDefault(layout => string.Equals(layout.Id, word, StringComparison.OrdinalIgnoreCase))
            ?? (word.Split('-') is [var lane, { Length: 2 } digits] && byte.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var filler)
                ? lane.ToUpperInvariant() switch { "ODD" => Filled(OddLane, filler), "EVEN" => Filled(EvenLane, filler), _ => null }
                : null);
    }

    /// <summary>True for a layout that a kind's files are met in; the filler's value does not count.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="layout">The layout.</param>
    public static bool IsOf(SaveKind kind, SaveLayout layout)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(layout);
        return kind.Layouts.Contains(layout.Id, StringComparer.Ordinal)
            || kind.Layouts.Any(known => Find(known) is { } other && other.FileUnit == layout.FileUnit && other.Id.Split('-') is [var lane, _] && layout.Id.StartsWith(lane + "-", StringComparison.Ordinal));
    }

    private static string Word(int lane) => lane == OddLane ? "odd" : "even";

    private static SaveLayout Filled(int lane, byte filler) => new(
        string.Create(CultureInfo.InvariantCulture, $"{Word(lane)}-{filler:x2}"),
        string.Create(CultureInfo.InvariantCulture, $"the memory at the {Word(lane)} bytes, {filler:X2} at the others"),
        1,
        2,
        (from, to) =>
        {
            to.Fill(filler);
            Lanes.Insert(from, lane, 2, to);
        },
        (from, to) => Lanes.Split(from, lane, 2, to));

    private static SaveLayout Doubled(int lane) => new(
        Word(lane) + "-doubled", $"the memory at the {Word(lane)} bytes, and again at the others", 1, 2, static (from, to) => Lanes.Merge(from, from, to), (from, to) => Lanes.Split(from, lane, 2, to));

    private static SaveLayout Itself(string id, string meaning, int unit, Action<ReadOnlySpan<byte>, Span<byte>> swap) => new(id, meaning, unit, unit, swap, swap);

    private static void ReverseBlocks(ReadOnlySpan<byte> from, Span<byte> to)
    {
        from.CopyTo(to);
        for (var at = 0; at < from.Length; at += BlockBytes)
            to.Slice(at, BlockBytes).Reverse();
    }

    private static SaveLayout HalfBytes(string id, string meaning, int firstIsHigh) => new(
        id,
        meaning,
        2,
        1,
        (from, to) =>
        {
            for (var i = 0; i < to.Length; i++)
                to[i] = (byte)((from[(2 * i) + firstIsHigh] & 0x0F) | ((from[(2 * i) + 1 - firstIsHigh] & 0x0F) << 4));
        },
        (from, to) =>
        {
            for (var i = 0; i < from.Length; i++)
            {
                to[(2 * i) + firstIsHigh] = (byte)(0xF0 | (from[i] & 0x0F));
                to[(2 * i) + 1 - firstIsHigh] = (byte)(0xF0 | (from[i] >> 4));
            }
        });
}
