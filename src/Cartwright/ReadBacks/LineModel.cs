using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Wiring between reader and chip: what it makes of an image.</summary>
/// <param name="Address">The faults on address lines, from the reader to the chip.</param>
/// <param name="Data">The faults on data lines, from the chip to the reader.</param>
/// <param name="World">How the chip was written.</param>
internal sealed record LineModel(ImmutableArray<LineOp> Address, ImmutableArray<LineOp> Data, WritingWorld World)
{
    /// <summary>Whether it only exchanges and inverts address lines.</summary>
    public bool IsExchange => Data.IsEmpty && Address.All(static op => op.Kind is LineOpKind.Swapped or LineOpKind.Permuted or LineOpKind.Inverted);

    /// <summary>The chip's address that meets the reader's; beyond the image where the image is no power of two.</summary>
    public uint ChipAddress(uint reader)
    {
        var address = reader;
        foreach (ref readonly var op in Address.AsSpan())
        {
            address = op.Apply(address, reader);
        }

        return address;
    }

    /// <summary>The read-back of a whole image; null when the wiring leads outside the image.</summary>
    public ushort[]? Rebuild(ReadOnlySpan<ushort> image, ushort ones)
    {
        var cells = World == WritingWorld.WrittenElsewhere ? image : Write(image, ones);
        if (cells.IsEmpty)
        {
            return null;
        }

        var read = new ushort[image.Length];
        for (var a = 0; a < read.Length; a++)
        {
            var chip = ChipAddress((uint)a);
            if (chip >= (uint)cells.Length)
            {
                return null;
            }

            read[a] = ToReader(cells[(int)chip], (uint)a);
        }

        return read;
    }

    private ushort ToReader(uint word, uint reader)
    {
        foreach (ref readonly var op in Data.AsSpan())
        {
            word = op.Apply(word, reader);
        }

        return (ushort)word;
    }

    private ushort ToChip(uint word, uint reader)
    {
        for (var i = Data.Length - 1; i >= 0; i--)
        {
            word = Data[i].Backwards().Apply(word, reader);
        }

        return (ushort)word;
    }

    // From erased cells: what lands on a cell that has been written already leaves only the ones of both.
    private ReadOnlySpan<ushort> Write(ReadOnlySpan<ushort> image, ushort ones)
    {
        var cells = new ushort[image.Length];
        Array.Fill(cells, ones);
        for (var x = 0; x < image.Length; x++)
        {
            var chip = ChipAddress((uint)x);
            if (chip >= (uint)cells.Length)
            {
                return [];
            }

            var word = ToChip(image[x], (uint)x);
            cells[chip] = World == WritingWorld.RamInPlace ? word : (ushort)(cells[chip] & word);
        }

        return cells;
    }

    /// <summary>The word read at one address, as <see cref="Rebuild"/> has it.</summary>
    /// <returns>The word, or -1 when the wiring leads outside the image.</returns>
    public int At(ReadOnlySpan<ushort> image, ushort ones, uint reader)
    {
        var chip = ChipAddress(reader);
        if (chip >= (uint)image.Length)
        {
            return -1;
        }

        return World == WritingWorld.WrittenElsewhere ? ToReader(image[(int)chip], reader) : ToReader(Cell(image, ones, reader, chip), reader);
    }

    // Every address that lands on this cell differs from the reader's in lines that a fault touches.
    private uint Cell(ReadOnlySpan<ushort> image, ushort ones, uint reader, uint chip)
    {
        var touched = 0u;
        foreach (ref readonly var op in Address.AsSpan())
        {
            touched |= op.Mask;
        }

        var cell = (uint)ones;
        var part = 0u;
        do
        {
            var x = (reader & ~touched) | part;
            if (x < image.Length && ChipAddress(x) == chip)
            {
                var word = ToChip(image[(int)x], x);
                cell = World == WritingWorld.RamInPlace ? word : cell & word;
            }

            part = (part - touched) & touched;
        }
        while (part != 0);
        return cell;
    }
}
