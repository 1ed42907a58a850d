using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Production;

namespace Cartwright.Saves;

/// <summary>Makes the first contents of a save memory.</summary>
/// <param name="size">Bytes of the memory.</param>
/// <param name="fill">Value of bytes nothing else covers.</param>
public sealed class NewSave(int size, byte fill)
{
    // The seed of a save is that of a field of this name; a field of a run may have it too, and is the same bytes then.
    private const string SeedName = "save";

    /// <summary>Only filler.</summary>
    public byte[] Blank()
    {
        var memory = new byte[size];
        memory.AsSpan().Fill(fill);
        return memory;
    }

    /// <summary>Contents at the start, filler behind them; null where they do not fit.</summary>
    /// <param name="file">Their file as the user wrote it.</param>
    /// <param name="contents">The contents.</param>
    /// <param name="log">Receives that they do not fit.</param>
    public byte[]? With(string file, ReadOnlySpan<byte> contents, FindingLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (contents.Length > size)
        {
            log.Add(SaveFindings.NoRoom, new SourcePlace(file), $"The contents have {ByteSize.Describe(contents.Length)}.", $"at most {ByteSize.Describe(size)}");
            return null;
        }

        var memory = Blank();
        contents.CopyTo(memory);
        return memory;
    }

    /// <summary>Bytes of their own for each unit of a run, the same whenever they are made.</summary>
    /// <param name="cart">The cart's name.</param>
    /// <param name="serial">The unit's serial number.</param>
    /// <param name="seedBytes">Bytes of the seed, from the start of the memory on.</param>
    /// <param name="log">Receives that the seed does not fit.</param>
    public byte[]? Seeded(string cart, long serial, int seedBytes, FindingLog log)
    {
        var field = new UnitField(SeedName, UnitFieldKind.Seed, 0, seedBytes, SourcePlace.None);
        return With("--seed", new UnitValues(cart, [field]).Of(RunUnit.Numbered(serial), log)[0], log);
    }
}
