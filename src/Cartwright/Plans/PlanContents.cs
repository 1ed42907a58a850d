namespace Cartwright.Plans;

/// <summary>Contents of a chip, and what to call them.</summary>
/// <param name="Name">Name for findings, such as that of the file.</param>
/// <param name="Bytes">The bytes, from address 0 upward.</param>
public sealed record PlanContents(string Name, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>A chip that is blank: every cell reads 0xFF.</summary>
    /// <param name="length">Its size in bytes.</param>
    public static PlanContents Blank(int length)
    {
        var bytes = new byte[length];
        bytes.AsSpan().Fill(CellCompare.Erased);
        return new PlanContents("a blank chip", bytes);
    }
}
