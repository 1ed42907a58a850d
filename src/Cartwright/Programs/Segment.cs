namespace Cartwright.Programs;

/// <summary>A run of bytes of a program at an address.</summary>
/// <param name="Address">The address the file gives for the first byte; 0 for raw binaries.</param>
/// <param name="Bytes">The bytes.</param>
/// <param name="Place">Where in the file the run begins: line for text formats, offset for binary ones.</param>
public sealed record Segment(long Address, ReadOnlyMemory<byte> Bytes, Findings.SourcePlace Place)
{
    /// <summary>Length in bytes.</summary>
    public int Length => Bytes.Length;

    /// <summary>The address of the byte after the last one.</summary>
    public long End => Address + Bytes.Length;
}
