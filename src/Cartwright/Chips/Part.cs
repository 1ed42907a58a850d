using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>A kind of memory chip, as one row of the catalogue describes it.</summary>
public sealed record Part
{
    /// <summary>The name of the row, for example <c>MX29F400T/B</c>; unique in a catalogue.</summary>
    public required string Name { get; init; }

    /// <summary>Orderable names the row stands for besides its own, for example <c>MX29F400B</c>.</summary>
    public required ImmutableArray<string> Aliases { get; init; }

    /// <summary>Who makes or made it.</summary>
    public required string Makers { get; init; }

    /// <summary>Its technology.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Capacity in bytes, also for a 16-bit part.</summary>
    public required long CapacityBytes { get; init; }

    /// <summary>Its data lines.</summary>
    public required PartDataBus DataBus { get; init; }

    /// <summary>Packages it comes in, in words.</summary>
    public required string Packages { get; init; }

    /// <summary>What it needs at its supply pin and what its inputs stand.</summary>
    public required PartSupply Supply { get; init; }

    /// <summary>What it erases at once.</summary>
    public required PartSectors Sectors { get; init; }

    /// <summary>How it is written.</summary>
    public required PartProgramming Programming { get; init; }

    /// <summary>What it answers when asked for its identity.</summary>
    public required PartIdentity Identity { get; init; }

    /// <summary>Maximum access times of its speed grades, in nanoseconds, fastest first; empty when unknown or serial.</summary>
    public required ImmutableArray<int> AccessNanoseconds { get; init; }

    /// <summary>The same with the table's remarks on revisions and cycle times, in nanoseconds.</summary>
    public required string AccessText { get; init; }

    /// <summary>How often it can be rewritten.</summary>
    public required PartEndurance Endurance { get; init; }

    /// <summary>What all this rests on.</summary>
    public required PartEvidence Evidence { get; init; }

    /// <summary>Peculiarities; may be blank.</summary>
    public required string Notes { get; init; }

    /// <summary>Names of its pin-outs, one a package; empty when none is known well enough.</summary>
    public required ImmutableArray<string> Pinouts { get; init; }

    /// <summary>True when it can carry a program: it keeps its contents without power and has a parallel bus.</summary>
    public bool IsRom => Kind is not (PartKind.Sram or PartKind.Fram) && DataBus != PartDataBus.Serial;

    /// <summary>True when its inputs are known to stand 5 V; unknown counts as no.</summary>
    public bool ToleratesFiveVolts => Supply.FiveVoltTolerantInputs == FiveVoltTolerance.Yes;

    /// <summary>True when it can drive that many data lines.</summary>
    /// <param name="width">Data lines of the site: 8 or 16.</param>
    public bool Supports(int width) => width switch
    {
        8 => DataBus is PartDataBus.Eight or PartDataBus.Selectable,
        16 => DataBus is PartDataBus.Sixteen or PartDataBus.Selectable,
        _ => false,
    };
}
