namespace Cartwright.Programs;

/// <summary>Bytes at an address before they become a segment: a piece of a store, not a copy of it.</summary>
/// <param name="Address">Address of the first byte.</param>
/// <param name="Start">Index of the first byte in the store.</param>
/// <param name="Length">Length in bytes.</param>
internal readonly record struct ProgramRun(long Address, int Start, int Length)
{
    /// <summary>The address of the byte after the last one.</summary>
    public long End => Address + Length;

    /// <summary>What is left when the first <paramref name="count"/> bytes are taken away.</summary>
    public ProgramRun Skip(int count) => new(Address + count, Start + count, Length - count);
}
