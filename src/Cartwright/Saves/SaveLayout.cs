namespace Cartwright.Saves;

/// <summary>An order in which files hold a save memory, as a pure transform and its exact inverse.</summary>
/// <param name="Id">Its word: <c>odd-ff</c>.</param>
/// <param name="Meaning">What it means, in a few words.</param>
/// <param name="MemoryUnit">Bytes of the memory that are moved together.</param>
/// <param name="FileUnit">Bytes of a file they take.</param>
/// <param name="Write">Writes whole units of memory into a file of the size they take.</param>
/// <param name="Read">Reads a file of whole units back into memory. What a file has besides the memory is passed over.</param>
public sealed record SaveLayout(
    string Id,
    string Meaning,
    int MemoryUnit,
    int FileUnit,
    Action<ReadOnlySpan<byte>, Span<byte>> Write,
    Action<ReadOnlySpan<byte>, Span<byte>> Read)
{
    /// <summary>Bytes of a file for a memory; null where the memory has no whole number of units.</summary>
    /// <param name="memory">Bytes of the memory.</param>
    public long? FileSize(long memory) => memory % MemoryUnit == 0 ? memory / MemoryUnit * FileUnit : null;

    /// <summary>Bytes of the memory in a file; null where the file has no whole number of units.</summary>
    /// <param name="file">Bytes of the file.</param>
    public long? MemorySize(long file) => file % FileUnit == 0 ? file / FileUnit * MemoryUnit : null;

    /// <summary>The file for a memory.</summary>
    /// <param name="memory">Whole units.</param>
    public byte[] ToFile(ReadOnlySpan<byte> memory)
    {
        var file = new byte[FileSize(memory.Length) ?? throw new ArgumentException($"{memory.Length} bytes are no whole units of {MemoryUnit}.", nameof(memory))];
        Write(memory, file);
        return file;
    }

    /// <summary>The memory in a file.</summary>
    /// <param name="file">Whole units.</param>
    public byte[] ToMemory(ReadOnlySpan<byte> file)
    {
        var memory = new byte[MemorySize(file.Length) ?? throw new ArgumentException($"{file.Length} bytes are no whole units of {FileUnit}.", nameof(file))];
        Read(file, memory);
        return memory;
    }

    /// <summary>The first byte of a file that the layout could not have written; −1 where the file is just what it writes.</summary>
    /// <param name="file">Whole units.</param>
    public int FirstForeign(ReadOnlySpan<byte> file)
    {
        var again = ToFile(ToMemory(file));
        var same = file.CommonPrefixLength(again);
        return same == file.Length ? -1 : same;
    }
}
