namespace Cartwright.Saves;

/// <summary>What stands behind the contents of a memory that is larger than they are.</summary>
/// <param name="Fill">One value; null where the contents stand there again and again.</param>
public readonly record struct SavePad(byte? Fill)
{
    private static ReadOnlySpan<byte> Fillers => [0xFF, 0x00];

    /// <summary>The word for contents that repeat.</summary>
    public const string RepeatWord = "repeat";

    /// <summary>What is provably filler behind the first bytes of a memory: FF or 00 throughout, or the same bytes again; null where it is neither.</summary>
    /// <param name="memory">The memory.</param>
    /// <param name="size">Bytes that would be left, fewer than the memory has.</param>
    public static SavePad? Behind(ReadOnlySpan<byte> memory, int size)
    {
        foreach (var filler in Fillers)
        {
            if (!memory[size..].ContainsAnyExcept(filler))
                return new SavePad(filler);
        }

        return memory.Length % size == 0 && memory[size..].SequenceEqual(memory[..^size]) ? new SavePad(null) : null;
    }

    /// <summary>A larger memory; null where the contents do not repeat a whole number of times.</summary>
    /// <param name="memory">The contents.</param>
    /// <param name="size">Bytes of the larger memory.</param>
    public byte[]? Lengthen(ReadOnlySpan<byte> memory, int size)
    {
        if (Fill is null && size % memory.Length != 0)
            return null;

        var larger = new byte[size];
        larger.AsSpan().Fill(Fill ?? 0);
        for (var at = 0; at < (Fill is null ? size : memory.Length); at += memory.Length)
            memory.CopyTo(larger.AsSpan(at));

        return larger;
    }

    /// <summary>In words: <c>0xFF</c>, or <c>repeat</c>.</summary>
    public override string ToString() => Fill is { } value ? Manifests.Number.Hex(value, 2) : RepeatWord;
}
