using System.Collections.Immutable;

namespace Cartwright.Plans;

/// <summary>What has to be done to a chip so that it holds new contents, and what that costs.</summary>
/// <param name="Target">The chip.</param>
/// <param name="Figures">The typical times the estimates rest on.</param>
/// <param name="Steps">One a sector, page or chip, from address 0 upward; all of them, kept ones too.</param>
/// <param name="WholeChip">The same contents written after an erase of the whole chip.</param>
public sealed record WritePlan(WriteTarget Target, WriteFigures Figures, ImmutableArray<WriteStep> Steps, WriteStep WholeChip)
{
    /// <summary>True when the chip holds what it is to hold.</summary>
    public bool IsNothing => Steps.All(static step => step.Action == WriteAction.Keep);

    /// <summary>Number of sectors or pages with one action.</summary>
    /// <param name="action">The action.</param>
    public int Count(WriteAction action) => Steps.Count(step => step.Action == action);

    /// <summary>Units (bytes or words) that are programmed or overwritten.</summary>
    public long Programmed => Steps.Sum(static step => (long)step.Programmed);

    /// <summary>Units whose value changes.</summary>
    public long Changed => Steps.Sum(static step => (long)step.Changed);

    /// <summary>Pages or buffers that are written; 0 where the part has none, or no time for them is known.</summary>
    public long Bursts => Steps.Sum(static step => (long)step.Bursts);

    /// <summary>False for a chip that would have to be erased and cannot be.</summary>
    public bool IsPossible => Target.Method != WriteMethod.Once || Count(WriteAction.Erase) == 0;

    /// <summary>Typical time for erasing; null when not known. Ultraviolet light is not counted: it is no work of the writer.</summary>
    public TimeSpan? EraseTime => Target.Method switch
    {
        WriteMethod.Sectors => Times(Count(WriteAction.Erase), Figures.SectorMilliseconds * 1000),
        WriteMethod.WholeChip => Times(Count(WriteAction.Erase), Figures.ChipMilliseconds * 1000),
        _ => TimeSpan.Zero,
    };

    /// <summary>Typical time for programming; null when not known.</summary>
    public TimeSpan? ProgramTime => ProgramTimeOf(Programmed, Bursts);

    /// <summary>Typical time for erasing and programming; null when one of them is not known.</summary>
    public TimeSpan? Time => EraseTime + ProgramTime;

    /// <summary>Typical time for erasing the whole chip at once and programming everything; null when it is not known or the part has no such erase.</summary>
    public TimeSpan? WholeChipTime => Target.Method == WriteMethod.Sectors
        ? Times(1, Figures.ChipMilliseconds * 1000) + ProgramTimeOf(WholeChip.Programmed, WholeChip.Bursts)
        : null;

    private TimeSpan? ProgramTimeOf(long units, long bursts) =>
        Figures.BurstBytes > 0 ? Times(bursts, Figures.BurstMicroseconds) : Times(units, Figures.UnitMicroseconds);

    private static TimeSpan? Times(long count, double? microseconds) =>
        count == 0 ? TimeSpan.Zero : microseconds is { } each ? TimeSpan.FromMicroseconds(count * each) : null;
}
