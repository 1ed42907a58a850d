using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>Tables of a processor's vectors, which a program brings along: read and shown, never written.</summary>
public static class VectorTable
{
    /// <summary>The table of some vectors.</summary>
    /// <param name="region">The region they lie in.</param>
    /// <param name="anchor">Where the first of them may lie.</param>
    /// <param name="length">Bytes of a vector.</param>
    /// <param name="order">Which of them comes first.</param>
    /// <param name="source">Where the places come from.</param>
    /// <param name="rows">Name, offset from the anchor, and meaning of each, by rising offset.</param>
    public static HeaderTable Of(string region, HeaderAnchor anchor, int length, ByteOrder order, string source, params ImmutableArray<(string Name, int Offset, string Meaning)> rows) =>
        new("processor vectors", region, anchor, rows[^1].Offset + length,
            [.. rows.Select(row => new HeaderField(row.Name, row.Offset, length, new NumberCodec(new BytesPlacement(length, order), new PlainNumber(length * 2)), row.Meaning, source))]);
}
