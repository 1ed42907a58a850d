using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Slots;

/// <summary>Writes the block by which a menu program finds the games.</summary>
/// <param name="directory">How the block is laid out.</param>
/// <param name="regions">The platform's regions, the first of them for fields that name none.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class DirectoryWriter(SlotDirectory directory, ImmutableArray<string> regions, FindingLog log)
{
    /// <summary>The bytes of the block.</summary>
    public byte[] Write(ImmutableArray<SlotGame> games, ImmutableArray<PlacedSlot> slots)
    {
        var records = games.Length + (directory.End is null ? 0 : 1);
        var block = new byte[Math.Max(directory.RecordsAt + (records * directory.RecordLength), (directory.CountAt ?? -1) + 1)];
        if (directory.CountAt is { } count)
        {
            block[count] = (byte)games.Length;
        }

        for (var index = 0; index < games.Length; index++)
        {
            WriteRecord(RecordOf(block, index), index, games[index], slots);
        }

        if (directory.End is { } end)
        {
            RecordOf(block, games.Length).Fill(end);
        }

        return block;
    }

    private Span<byte> RecordOf(byte[] block, int index) => block.AsSpan(directory.RecordsAt + (index * directory.RecordLength), directory.RecordLength);

    private void WriteRecord(Span<byte> record, int index, SlotGame game, ImmutableArray<PlacedSlot> slots)
    {
        foreach (var field in directory.Fields)
        {
            var slot = slots.FirstOrDefault(slot => slot.Index == index && string.Equals(slot.Region, field.Region ?? regions[0], StringComparison.OrdinalIgnoreCase));
            var (bytes, value) = Bytes(field, index, game, slot);
            if (bytes is not null)
            {
                bytes.CopyTo(record[(int)field.At..]);
                continue;
            }

            log.Add(SlotFindings.DoesNotFit, field.Place, $"The field `{ManifestWords.WordOf(ManifestWords.SlotFieldKinds, field.Kind)}` of `{game.Title}` would be {value}, which has no place in {field.Width} {(field.Width == 1 ? "byte" : "bytes")}.",
                field.Kind == SlotFieldKind.Title ? "printable ASCII letters, no more than the field has bytes" : field.Unit > 1 ? $"a multiple of {ByteSize.Words(field.Unit)} in range" : null);
        }
    }

    private static (byte[]? Bytes, string Value) Bytes(SlotField field, int index, SlotGame game, PlacedSlot? slot)
    {
        if (field.Kind == SlotFieldKind.Title)
        {
            return (FieldBytes.Text(game.Title, field.Width, field.Pad), $"`{game.Title}`");
        }

        // A game without this region has a start and a size of 0 there.
        var number = field.Kind switch
        {
            SlotFieldKind.Index => index,
            SlotFieldKind.Start => slot?.Start ?? 0,
            SlotFieldKind.Size => slot?.Size ?? 0,
            SlotFieldKind.Length => slot?.Bytes.Length ?? 0,
            _ => game.Values.GetValueOrDefault(field.Name!, 0),
        };
        var unit = field.Kind is SlotFieldKind.Start or SlotFieldKind.Size or SlotFieldKind.Length ? field.Unit : 1;
        return (number % unit == 0 ? FieldBytes.Number(number / unit, field.Width, field.LowByteFirst) : null, number.ToString(CultureInfo.InvariantCulture));
    }
}
