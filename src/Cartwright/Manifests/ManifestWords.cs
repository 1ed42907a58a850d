using System.Collections.Immutable;
using Cartwright.Ordering;
using Cartwright.Programs;

namespace Cartwright.Manifests;

/// <summary>The words the manifest uses for choices, each list once.</summary>
public static class ManifestWords
{
    /// <summary>Program formats.</summary>
    public static ImmutableSortedDictionary<string, ProgramFormat> ProgramFormats { get; } = Words(
        ("raw", ProgramFormat.Raw), ("intel-hex", ProgramFormat.IntelHex), ("s-record", ProgramFormat.SRecord), ("elf", ProgramFormat.Elf));

    /// <summary>Formats of chip files.</summary>
    public static ImmutableSortedDictionary<string, ImageFormat> ImageFormats { get; } = Words(
        ("raw", ImageFormat.Raw), ("intel-hex", ImageFormat.IntelHex), ("s-record", ImageFormat.SRecord));

    /// <summary>Word orders of files for 16-bit chips.</summary>
    public static ImmutableSortedDictionary<string, WordOrder> WordOrders { get; } = Words(
        ("bus", WordOrder.Bus), ("programmer", WordOrder.Programmer));

    /// <summary>Orders of the bytes of an image.</summary>
    public static ImmutableSortedDictionary<string, ImageOrder> ImageOrders { get; } = Words(
        ("console", ImageOrder.Console), ("byte-swapped", ImageOrder.ByteSwapped), ("word-swapped", ImageOrder.WordSwapped),
        ("halfword-swapped", ImageOrder.HalfwordSwapped), ("bit-reversed", ImageOrder.BitReversed), ("odd-even-blocks", ImageOrder.OddEvenBlocks),
        ("even-odd-blocks", ImageOrder.EvenOddBlocks), ("odd-even-halves", ImageOrder.OddEvenHalves), ("upper-lower-halves", ImageOrder.UpperLowerHalves));

    /// <summary>Kinds of fields that differ from unit to unit.</summary>
    public static ImmutableSortedDictionary<string, UnitFieldKind> UnitFieldKinds { get; } = Words(
        ("serial", UnitFieldKind.Serial), ("seed", UnitFieldKind.Seed), ("text", UnitFieldKind.Text));

    /// <summary>Which byte of a number comes first: true for the low one.</summary>
    internal static ImmutableSortedDictionary<string, bool> LowByteFirst { get; } = Words(("big-endian", false), ("little-endian", true));

    /// <summary>What a field of a slot's directory record holds.</summary>
    public static ImmutableSortedDictionary<string, SlotFieldKind> SlotFieldKinds { get; } = Words(
        ("index", SlotFieldKind.Index), ("start", SlotFieldKind.Start), ("size", SlotFieldKind.Size),
        ("length", SlotFieldKind.Length), ("title", SlotFieldKind.Title), ("value", SlotFieldKind.Value));

    /// <summary>What guards a serial number.</summary>
    public static ImmutableSortedDictionary<string, CheckDigit> CheckDigits { get; } = Words(
        ("none", CheckDigit.None), ("luhn", CheckDigit.Luhn), ("mod-97", CheckDigit.Mod97));

    /// <summary>How check values of saves are worked out.</summary>
    public static ImmutableSortedDictionary<string, SaveCheckKind> SaveCheckKinds { get; } = Words(
        ("sum8", SaveCheckKind.Sum8), ("sum16", SaveCheckKind.Sum16), ("sum32", SaveCheckKind.Sum32), ("word-sum", SaveCheckKind.WordSum),
        ("word-xor", SaveCheckKind.WordXor), ("crc16", SaveCheckKind.Crc16), ("crc32", SaveCheckKind.Crc32), ("adler32", SaveCheckKind.Adler32));

    /// <summary>The word for the way a check value is worked out.</summary>
    /// <param name="kind">The way.</param>
    public static string Word(SaveCheckKind kind) => WordOf(SaveCheckKinds, kind);

    /// <summary>The word for an order of bytes.</summary>
    /// <param name="order">The order.</param>
    public static string Word(ImageOrder order) => WordOf(ImageOrders, order);

    /// <summary>The word for a program format.</summary>
    /// <param name="format">The format.</param>
    public static string Word(ProgramFormat format) => WordOf(ProgramFormats, format);

    /// <summary>The word for a format of chip files.</summary>
    /// <param name="format">The format.</param>
    public static string Word(ImageFormat format) => WordOf(ImageFormats, format);

    /// <summary>The word for a word order.</summary>
    /// <param name="order">The order.</param>
    public static string Word(WordOrder order) => WordOf(WordOrders, order);

    /// <summary>The first word of a list that stands for a meaning.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="words">The words.</param>
    /// <param name="meaning">The meaning, which is in the list.</param>
    internal static string WordOf<T>(ImmutableSortedDictionary<string, T> words, T meaning)
        where T : struct, Enum => words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, meaning)).Key;

    internal static ImmutableSortedDictionary<string, T> Words<T>(params (string Word, T Meaning)[] rows) =>
        rows.ToImmutableSortedDictionary(static row => row.Word, static row => row.Meaning, StringComparer.OrdinalIgnoreCase);
}
