using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>A header as it stands in the ROM, or in front of it.</summary>
/// <param name="Table">Its table.</param>
/// <param name="Entries">Its fields in the table's order.</param>
/// <param name="Checksums">Its checksums in the table's order.</param>
/// <param name="Container">The bytes of a container; empty for a header inside the ROM.</param>
public sealed record HeaderImage(
    HeaderTable Table,
    ImmutableArray<HeaderEntry> Entries,
    ImmutableArray<ChecksumEntry> Checksums,
    ImmutableArray<byte> Container)
{
    /// <summary>The text of a field; null when this header has none of that name.</summary>
    /// <param name="field">The field's name.</param>
    public string? this[string field] =>
        Entries.FirstOrDefault(entry => string.Equals(entry.Field.Name, field, StringComparison.OrdinalIgnoreCase))?.Text;
}
