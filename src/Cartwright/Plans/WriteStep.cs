namespace Cartwright.Plans;

/// <summary>What becomes of one sector, page or chip, and what it costs.</summary>
/// <param name="Start">Its first byte on the chip.</param>
/// <param name="Length">Its size in bytes.</param>
/// <param name="Action">What is done.</param>
/// <param name="Changed">Units of the chip (bytes or words) whose value changes.</param>
/// <param name="Programmed">Units that are programmed or overwritten.</param>
/// <param name="Bursts">Pages or buffers that are written, where the part has any; else 0.</param>
public readonly record struct WriteStep(int Start, int Length, WriteAction Action, int Changed, int Programmed, int Bursts)
{
    /// <summary>The byte after its last.</summary>
    public int End => Start + Length;
}
