using System.Collections.Immutable;

namespace Cartwright.Programs;

/// <summary>What one program file holds: its segments in ascending order of address, none overlapping another.</summary>
/// <param name="File">The file as the user wrote it.</param>
/// <param name="Format">The format it was read as.</param>
/// <param name="Segments">The runs of bytes.</param>
/// <param name="Entry">The start address the file names; null when it names none.</param>
/// <param name="Machine">For ELF, the machine in words ("68000, big-endian"); null otherwise.</param>
public sealed record ProgramFile(
    string File,
    ProgramFormat Format,
    ImmutableArray<Segment> Segments,
    long? Entry = null,
    string? Machine = null)
{
    /// <summary>True when the file's own addresses say where its bytes belong.</summary>
    public bool HasAddresses => Format != ProgramFormat.Raw;
}
